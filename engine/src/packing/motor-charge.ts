import { type BaySize, bayVolume, endForce, pressureOfCharge, usualPressures } from "./ejection-charge.js";
import type { NeededCharge, Separation } from "./separation.js";

/** The ejection charge that comes with a motor. */
export interface MotorCharge {
  /** Mass of the charge [kg], ≥ 0; left out: not stated. */
  readonly mass?: number;
  /** Most powder that the well holds [kg], ≥ 0; left out: not stated. */
  readonly wellHolds?: number;
}

/** What is to be said of a motor's charge in a bay. */
export type MotorChargeCode =
  | "charge-not-stated"
  | "well-not-stated"
  | "holding-not-known"
  | "does-not-separate"
  | "separates-below-margin"
  | "below-usual-pressure"
  | "above-usual-pressure"
  | "charge-below-needed"
  | "charge-above-well"
  | "needed-above-well"
  | "needed-above-usual-pressure";

/** One finding with its figures; both null where something is not stated. */
export interface MotorChargeFinding {
  readonly code: MotorChargeCode;
  /** What was found: a factor, a pressure [Pa] or a mass [kg], as the code says. */
  readonly value: number | null;
  /** In the same unit. */
  readonly limit: number | null;
}

/** A motor's own charge in a bay. */
export interface MotorChargeJudgement {
  /** Rise that it makes [Pa]; null where its mass is not stated. */
  readonly pressure: number | null;
  /** Push on the bay's end [N]. */
  readonly endForce: number | null;
  /** Push over the holding force: below 1 the bay stays shut; null also where nothing holds it. */
  readonly factor: number | null;
  readonly findings: readonly MotorChargeFinding[];
}

/**
 * The charge that comes with a motor, against what a bay needs and what the well holds.
 *
 * Holds as `pressureOfCharge` does. Nothing found is no promise: a ground test decides.
 *
 * @param known the bay, the motor's charge, what the bay needs, and what parts it (null: holding force not known)
 * @source usual range: `usualPressures`; common practice, no source
 * @example
 * const bay = { diameter: 0.072, length: 0.25 };
 * const separation = separationOf({ bay, holding: 257.54 });
 * judgeMotorCharge({ bay, motorCharge: { mass: 0.001 }, needed: neededCharge(bay, separation), separation }).factor; // 3.40318
 */
export function judgeMotorCharge({
  bay,
  motorCharge: { mass, wellHolds },
  needed,
  separation,
}: {
  readonly bay: BaySize;
  readonly motorCharge: MotorCharge;
  readonly needed: NeededCharge;
  readonly separation: Separation | null;
}): MotorChargeJudgement {
  const findings: MotorChargeFinding[] = [];
  const add = (when: boolean, code: MotorChargeCode, value: number | null = null, limit: number | null = null) => {
    if (when) findings.push({ code, value, limit });
  };

  add(mass === undefined, "charge-not-stated");
  add(separation === null, "holding-not-known");
  add(wellHolds === undefined, "well-not-stated");
  add(needed.pressure > usualPressures.most, "needed-above-usual-pressure", needed.pressure, usualPressures.most);
  if (wellHolds !== undefined) add(needed.charge > wellHolds, "needed-above-well", needed.charge, wellHolds);
  if (mass === undefined) return { pressure: null, endForce: null, factor: null, findings };

  const pressure = pressureOfCharge({ charge: mass, volume: bayVolume(bay) });
  const force = endForce({ pressure, diameter: bay.diameter });
  const factor = separation === null || separation.holding === 0 ? null : force / separation.holding;
  if (factor !== null && separation !== null) {
    add(factor < 1, "does-not-separate", factor, 1);
    add(factor >= 1 && factor < separation.margin, "separates-below-margin", factor, separation.margin);
  }
  add(pressure < usualPressures.least, "below-usual-pressure", pressure, usualPressures.least);
  add(pressure > usualPressures.most, "above-usual-pressure", pressure, usualPressures.most);
  add(mass < needed.charge, "charge-below-needed", mass, needed.charge);
  if (wellHolds !== undefined) add(mass > wellHolds, "charge-above-well", mass, wellHolds);
  return { pressure, endForce: force, factor, findings };
}
