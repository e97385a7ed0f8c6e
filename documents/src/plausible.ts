import { type DecisionInputs, descentSpeed, labelCheck, standardAirAt, standardGravityAt } from "@delaywright/engine";
import type { Fault, Issue } from "./issue.js";
import type { Kind } from "./kinds/kinds.js";
import { doubtMotor } from "./kinds/motor/plausible.js";
import { learnedNames } from "./kinds/plan/learned-to-engine.js";
import { doubtPlan } from "./kinds/plan/plausible.js";
import { RawView } from "./kinds/raw.js";
import { doubtRocket } from "./kinds/rocket/plausible.js";
import { doubtTool } from "./kinds/tool/plausible.js";
import type { LoadedNode } from "./load.js";
import type { Placed, PlanParts } from "./load-plan.js";
import { placeOfIssue } from "./plan-conflicts.js";
import { formatQuantity } from "./quantity/format.js";

/** Something unlikely. It blocks nothing. */
export interface Doubt {
  readonly file: string;
  readonly path: string;
  readonly code: string;
  readonly found: string;
  /** What would be expected, in words. */
  readonly expected: string;
}

/** Most by which a station pressure strays from the standard's at its elevation [Pa]. */
const PRESSURE_RANGE = 6_000;

const doubters: Readonly<Partial<Record<Kind, (view: RawView) => void>>> = Object.freeze({
  plan: doubtPlan,
  rocket: doubtRocket,
  motor: doubtMotor,
  tool: doubtTool,
});

/**
 * What is unlikely in one document by itself.
 *
 * @param kind its kind
 * @param document as typed, right or wrong
 * @param place the file, and where in it the document stands
 */
export function documentDoubts(
  kind: Kind,
  document: unknown,
  place: { readonly file: string; readonly path: string },
): Doubt[] {
  const faults: Fault[] = [];
  doubters[kind]?.(new RawView(document, faults));
  return faults.map((fault) => ({
    file: place.file,
    path: place.path === "" ? fault.path : `${place.path}.${fault.path}`,
    code: fault.code,
    found: fault.found,
    expected: fault.accepted,
  }));
}

/** What is unlikely in a document and in those it refers to, each by itself. */
export function nodeDoubts(node: LoadedNode): Doubt[] {
  const own = node.kind === undefined ? [] : documentDoubts(node.kind, node.raw, node);
  return [...own, ...Object.values(node.children).flatMap(nodeDoubts)];
}

/**
 * What is unlikely in a plan: in each of its documents, and between them.
 *
 * @param parts the documents
 * @param inputs what the engine is given
 */
export function planDoubts(parts: PlanParts, inputs: DecisionInputs): Doubt[] {
  const { plan, rocket, motor, motorInHand, tool, field } = parts;
  const placed: readonly (readonly [Kind, Placed<Kind> | undefined])[] = [
    ["plan", plan],
    ["rocket", rocket],
    ["motor", motor],
    ["motor-in-hand", motorInHand],
    ["tool", tool],
    ["field", field],
  ];
  return [
    ...placed.flatMap(([kind, part]) => (part === undefined ? [] : documentDoubts(kind, part.document, part))),
    ...learnedDoubts(parts),
    ...labelDoubts(parts, inputs),
    ...pressureDoubts(parts, inputs),
    ...motorDoubts(parts, inputs),
    ...canopyDoubts(parts, inputs),
  ];
}

function doubt(part: Placed<Kind>, path: string, code: string, found: unknown, expected: string): Doubt {
  const { accepted, example: _, ...issue }: Issue = placeOfIssue(part, path, code, found, expected);
  return { ...issue, expected: accepted };
}

/** What was learned of another rocket, motor type or lot is not reckoned with. */
function learnedDoubts(parts: PlanParts): Doubt[] {
  const { plan } = parts;
  const { learned } = plan.document;
  if (learned === undefined) return [];
  const now = learnedNames(parts);
  const doubts: Doubt[] = [];
  if (learned.rocket !== now.rocket)
    doubts.push(
      doubt(
        plan,
        "learned.rocket",
        "learned-of-another-rocket",
        learned.rocket,
        `the plan's, ${now.rocket}; the drag that it holds is not reckoned with`,
      ),
    );
  if (learned.motor !== now.motor)
    doubts.push(
      doubt(
        plan,
        "learned.motor",
        "learned-of-another-motor",
        learned.motor,
        `the plan's, ${now.motor}; impulse and delay that it holds are not reckoned with`,
      ),
    );
  else if (learned.lot !== undefined && learned.delay !== undefined && learned.lot !== now.lot)
    doubts.push(
      doubt(
        plan,
        "learned.lot",
        "learned-of-another-lot",
        learned.lot,
        `the motor in hand's${now.lot === undefined ? "" : `, ${now.lot}`}; the lot's own share is not reckoned with`,
      ),
    );
  return doubts;
}

function labelDoubts({ motor }: PlanParts, inputs: DecisionInputs): Doubt[] {
  return labelCheck(inputs.motor).map((finding) => {
    const path = finding.path.replace(/^motor\./, "");
    const found = typeof finding.found === "number" ? String(Number(finding.found.toPrecision(4))) : finding.found;
    return { ...doubt(motor, path, finding.code, undefined, `${finding.accepted}, as on the label`), found };
  });
}

function pressureDoubts({ plan, field }: PlanParts, inputs: DecisionInputs): Doubt[] {
  const { pressure, elevation } = inputs.air;
  if (pressure === undefined) return [];
  const off = (height: number) => Math.abs(pressure - standardAirAt(height).pressure);
  if (off(elevation) <= PRESSURE_RANGE) return [];
  if (
    field !== undefined &&
    /\dm\b|\d m\b/.test(field.document.elevation) &&
    off(elevation * 0.3048) < PRESSURE_RANGE / 2
  ) {
    return [
      doubt(
        field,
        "elevation",
        "elevation-in-feet",
        field.document.elevation,
        "an elevation that fits the pressure; was it meant in feet?",
      ),
    ];
  }
  const weather = plan.document.weather;
  const path = weather?.pressure === undefined ? "weather.seaLevelPressure" : "weather.pressure";
  const near = formatQuantity(standardAirAt(elevation).pressure, "pressure", "hPa");
  const word = `within 60 hPa of ${near}, the standard's at this elevation; was it reduced to sea level?`;
  return [doubt(plan, path, "pressure-unlikely", weather?.pressure ?? weather?.seaLevelPressure, word)];
}

/** Steady speed below which a canopy is unlikely to be meant [m/s]. */
const SLOW_DESCENT = 2;

/** Canopies under which the rocket would hardly come down. */
function canopyDoubts({ rocket }: PlanParts, inputs: DecisionInputs): Doubt[] {
  const { recovery, motor, ballast, air } = inputs;
  const mass = inputs.rocket.mass + motor.loadedMass - motor.propellantMass + ballast.mass;
  return (["drogue", "main"] as const).flatMap((which) => {
    const canopy = recovery[which]?.canopy;
    if (canopy === undefined) return [];
    const { density } = standardAirAt(air.elevation);
    const speed = descentSpeed({ mass, density, canopy, gravity: standardGravityAt(air.elevation) });
    if (speed >= SLOW_DESCENT) return [];
    const typed = rocket.document.recovery[which]?.canopy.diameter;
    const feet = /\d\s*m$/u.test(typed ?? "") ? "; was it meant in ft?" : "";
    const word = `a canopy under which it comes down at 2 m/s or faster, not at ${formatQuantity(Number(speed.toPrecision(2)), "speed", "m/s")}${feet}`;
    return [doubt(rocket, `recovery.${which}.canopy.diameter`, "descent-slow", typed, word)];
  });
}

function motorDoubts({ motor, rocket, plan, motorInHand }: PlanParts, inputs: DecisionInputs): Doubt[] {
  const doubts: Doubt[] = [];
  if (inputs.motor.diameter < 0.9 * inputs.rocket.mount.diameter) {
    doubts.push(
      doubt(
        motor,
        "diameter",
        "motor-loose-in-mount",
        motor.document.diameter,
        `about the mount's ${rocket.document.mount.diameter}, or an adapter`,
      ),
    );
  }
  const { length } = inputs.rocket.mount;
  if (length !== undefined && inputs.motor.length > 1.5 * length) {
    doubts.push(
      doubt(
        motor,
        "length",
        "motor-longer-than-mount",
        motor.document.length,
        `about the mount's length, ${rocket.document.mount.length}`,
      ),
    );
  }
  const { ballast } = inputs;
  const { travel } = inputs.guide;
  const { balance, length: tail } = inputs.rocket;
  if (rocket.document.balanceReady !== undefined && (balance < 0 || balance > tail)) {
    const word = `a balance point that lies on the rocket without its motor; it would lie at ${formatQuantity(balance, "length", "m")}`;
    doubts.push(doubt(rocket, "balanceReady", "off-rocket-without-motor", rocket.document.balanceReady, word));
  }
  if (ballast.mass > 0 && ballast.at > tail) {
    doubts.push(doubt(plan, "ballast.at", "behind-tail", plan.document.ballast?.at, "a place before the tail"));
  }
  if (ballast.mass > inputs.rocket.mass / 2) {
    doubts.push(
      doubt(plan, "ballast.mass", "ballast-heavy", plan.document.ballast?.mass, "less than half of the rocket's mass"),
    );
  }
  if (plan.document.guide.travel === undefined && travel < 0.5) {
    doubts.push(
      doubt(
        plan,
        "guide.rail",
        "travel-unlikely",
        plan.document.guide.rail,
        "at least 0.5 m of travel until the forward fitting leaves",
      ),
    );
  }
  const { delay } = inputs.motor;
  const removed = inputs.cutSoFar?.removedDepth;
  if (
    motorInHand !== undefined &&
    removed !== undefined &&
    delay.kind === "adjustable" &&
    delay.depthPerSecond !== undefined
  ) {
    if (removed > delay.longest * delay.depthPerSecond) {
      const most = formatQuantity(delay.longest * delay.depthPerSecond, "length", "mm");
      doubts.push({
        ...doubt(motorInHand, "readings", "cut-beyond-element", undefined, `at most the whole element, ${most}`),
        found: formatQuantity(removed, "length", "mm"),
      });
    }
  }
  return doubts;
}
