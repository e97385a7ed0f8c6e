import type { Issue } from "../issues.js";
import { burnOf } from "./burn.js";
import { type Designation, parseDesignation } from "./designation.js";
import type { DelayElement, Motor } from "./motor.js";
import { classLimits, motorClass } from "./motor-class.js";

/** Most by which the average thrust may be off its label. NFPA 1125 (2012/2017), from memory. */
const THRUST_TOLERANCE = 0.2;

/** Labels print whole seconds: closer than this is the same delay [s]. */
const DELAY_ROUNDING = 0.5;

/** One disagreement between a motor and its label. */
export interface LabelFinding extends Issue {
  readonly code: "label-unreadable" | "label-class" | "label-average-thrust" | "label-delay";
  /**
   * How far off: `label-class` the impulse beyond the nearer limit of the label's class [N s], `label-average-thrust`
   * the part of the label's thrust, `label-delay` seconds; each with its sign. Null where no number can say it.
   */
  readonly difference: number | null;
}

function classFinding(label: Designation, totalImpulse: number): LabelFinding[] {
  const { above, upTo } = classLimits(label.letter)!;
  if (totalImpulse > above && totalImpulse <= upTo) return [];
  const difference = totalImpulse - (totalImpulse > upTo ? upTo : above);
  return [
    { code: "label-class", path: "motor.thrust", found: motorClass(totalImpulse), accepted: label.letter, difference },
  ];
}

function thrustFinding(label: Designation, averageThrust: number): LabelFinding[] {
  const difference = averageThrust / label.averageThrust - 1;
  if (Math.abs(difference) <= THRUST_TOLERANCE) return [];
  const accepted = `${label.averageThrust} N ± ${100 * THRUST_TOLERANCE} %`;
  return [{ code: "label-average-thrust", path: "motor.thrust", found: averageThrust, accepted, difference }];
}

function delayFinding(label: Designation, delay: DelayElement): LabelFinding[] {
  if (label.delay === null) return [];
  const path = "motor.delay";
  const seconds = delay.kind === "adjustable" ? delay.longest : delay.kind === "fixed" ? delay.seconds : null;
  if (seconds === null || label.delay === "plugged") {
    if (seconds === null && label.delay === "plugged") return [];
    const accepted = label.delay === "plugged" ? "none" : `${label.delay} s`;
    return [{ code: "label-delay", path, found: seconds ?? "none", accepted, difference: null }];
  }
  const difference = seconds - label.delay;
  if (Math.abs(difference) < DELAY_ROUNDING) return [];
  return [{ code: "label-delay", path, found: seconds, accepted: `${label.delay} s`, difference }];
}

/**
 * Holds a motor's thrust curve and delay against its label: class, average thrust within 20 %, delay.
 *
 * @param motor its thrust curve without issues (`thrustIssues`)
 * @returns every disagreement; empty where all agrees or there is no designation
 * @source NFPA 1125 (2012/2017); the 20 % from memory
 * @example
 * const thrust = { times: [0, 2], thrusts: [100, 100] };
 * const size = { diameter: 0.038, length: 0.25, loadedMass: 0.3, propellantMass: 0.1 };
 * labelCheck({ ...size, thrust, delay: { kind: "none" }, designation: "H150-P" })[0]?.code; // "label-average-thrust"
 */
export function labelCheck(motor: Motor): LabelFinding[] {
  const { designation } = motor;
  if (designation === undefined) return [];
  const label = parseDesignation(designation);
  if (!label || label.averageThrust === 0) {
    const path = "motor.designation";
    return [{ code: "label-unreadable", path, found: designation, accepted: "H150-14", difference: null }];
  }
  const { totalImpulse, averageThrust } = burnOf(motor.thrust);
  return [
    ...classFinding(label, totalImpulse),
    ...thrustFinding(label, averageThrust),
    ...delayFinding(label, motor.delay),
  ];
}
