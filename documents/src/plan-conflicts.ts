import { type DecisionInputs, normalGravity, type Rocket, rocketIssues, thrustIssues } from "@delaywright/engine";
import { stepsOf } from "./forms/field-path.js";
import { type Issue, show } from "./issue.js";
import type { Kind } from "./kinds/kinds.js";
import { si } from "./kinds/si.js";
import { countsSeconds, toolToEngine } from "./kinds/tool/to-engine.js";
import type { Placed, PlanParts } from "./load-plan.js";
import { motorTooLarge } from "./mount-fit.js";
import { formatQuantity } from "./quantity/format.js";

/** Most by which the depths per second of motor and tool may differ. */
const SAME_GRAIN = 0.02;

/** A place beyond the rocket's ends is a warning here: see `doubtRocket`. */
const UNLIKELY = "off-body";

/**
 * What the documents of a plan say against each other, so that no flight can be computed.
 *
 * @param parts the documents
 * @param inputs the engine's inputs, once they could be made; left out: only what must hold before
 */
export function planConflicts(parts: PlanParts, inputs?: DecisionInputs): Issue[] {
  return inputs === undefined
    ? beforehand(parts)
    : [...mount(parts, inputs), ...lift(parts, inputs), ...engineIssues(parts, inputs)];
}

/** An issue of a document wherever it stands. */
export function placeOfIssue(
  part: Pick<Placed<Kind>, "file" | "path">,
  path: string,
  code: string,
  found: unknown,
  accepted: string,
  example = "",
): Issue {
  return {
    file: part.file,
    path: part.path === "" ? path : `${part.path}.${path}`,
    code,
    found: show(found),
    accepted,
    example,
  };
}

function beforehand(parts: PlanParts): Issue[] {
  const { rocket, readyWith, plan, motor, motorInHand } = parts;
  const issues: Issue[] = [...toolConflicts(parts)];
  const { massReady } = rocket.document;
  if (massReady !== undefined && readyWith !== undefined) {
    if (si(massReady, "mass") <= si(readyWith.document.loadedMass, "mass")) {
      const accepted = `more than the motor it was weighed with (${readyWith.document.loadedMass})`;
      issues.push(placeOfIssue(rocket, "massReady", "mass-not-above-motor", massReady, accepted));
    }
  }
  const { delay } = motor.document;
  const choice = plan.document.choice?.delay;
  if (choice !== undefined && delay.kind === "adjustable" && si(choice, "time") > si(delay.longest, "time")) {
    issues.push(
      placeOfIssue(plan, "choice.delay", "beyond-longest", choice, `no more than the longest delay, ${delay.longest}`),
    );
  }
  const readings = motorInHand?.document.readings ?? [];
  const first = readings.find((reading) => reading.before !== undefined)?.before;
  const last = readings.findLastIndex((reading) => reading.after !== undefined);
  const after = readings[last]?.after;
  if (
    motorInHand !== undefined &&
    first !== undefined &&
    after !== undefined &&
    si(after, "length") < si(first, "length")
  ) {
    const accepted = `no less than the depth before the first cut (${first}): nothing can be put back`;
    issues.push(placeOfIssue(motorInHand, `readings[${last}].after`, "after-above-before", after, accepted));
  }
  return issues;
}

function toolConflicts({ tool, motor }: PlanParts): Issue[] {
  if (tool === undefined) return [];
  const cutter = toolToEngine(tool.document);
  const { delay } = motor.document;
  const grain = delay.kind === "adjustable" ? delay.depthPerSecond : undefined;
  const own = tool.document.depthPerSecond;
  if (grain === undefined && own === undefined && delay.kind === "adjustable") {
    const accepted = "the depth of grain for one second, since neither tool nor motor gives it";
    return [placeOfIssue(motor, "delay.depthPerSecond", "missing", undefined, accepted, '"1/32 in"')];
  }
  if (grain === undefined || own === undefined || !countsSeconds(cutter)) return [];
  if (Math.abs(si(own, "length") / si(grain, "length") - 1) <= SAME_GRAIN) return [];
  const accepted = `${JSON.stringify(grain)} within 2 %, as the motor has it, or removals given as depths: the tool's seconds are for another grain`;
  return [placeOfIssue(tool, "depthPerSecond", "tool-for-another-grain", own, accepted, '"removes": "3.2 mm"')];
}

function mount({ motor, rocket, field }: PlanParts, inputs: DecisionInputs): Issue[] {
  const { diameter, motorAftAt } = inputs.rocket.mount;
  const issues = motorTooLarge(
    { ...motor, diameter: motor.document.diameter, outer: inputs.motor.diameter },
    { mount: rocket.document.mount.diameter, inner: diameter },
  );
  if (motorAftAt - inputs.motor.length < 0) {
    const accepted = `no longer than its place in the rocket, ${rocket.document.mount.motorAftAt}`;
    issues.push(placeOfIssue(motor, "length", "motor-longer-than-rocket", motor.document.length, accepted));
  }
  const { ceiling } = inputs.fieldLimits;
  if (field !== undefined && ceiling !== undefined && ceiling <= 0) {
    const accepted = "a ceiling above the pad";
    issues.push(placeOfIssue(field, "ceiling", "ceiling-below-pad", field.document.ceiling, accepted, '"900 m"'));
  }
  return issues;
}

function lift({ motor, rocket }: PlanParts, inputs: DecisionInputs): Issue[] {
  const mass = inputs.rocket.mass + inputs.motor.loadedMass + inputs.ballast.mass;
  const weight = mass * normalGravity(inputs.air.latitude, inputs.air.elevation) * Math.cos(inputs.guide.tilt);
  const peak = Math.max(...inputs.motor.thrust.thrusts);
  if (peak > weight) return [];
  const accepted = `a thrust above the weight of ${rocket.document.name} with this motor, ${formatQuantity(weight, "force", "N")}`;
  return [
    {
      ...placeOfIssue(motor, "thrust", "never-lifts", undefined, accepted),
      found: `${formatQuantity(peak, "force", "N")} at most`,
    },
  ];
}

/** What the engine itself refuses, in the documents' words for its paths. */
function engineIssues({ rocket, motor }: PlanParts, inputs: DecisionInputs): Issue[] {
  return [
    ...rocketConflicts(rocket, inputs.rocket),
    ...thrustIssues(inputs.motor.thrust, "thrust").map((issue) => ({
      ...placeOfIssue(motor, issue.path, issue.code, undefined, issue.accepted),
      found: String(issue.found),
    })),
  ];
}

/**
 * What makes a rocket impossible by itself, at the fields of its document.
 *
 * @param placed the document
 * @param rocket the same in SI units
 */
export function rocketConflicts(placed: Placed<"rocket">, rocket: Rocket): Issue[] {
  const ready = placed.document.massReady !== undefined;
  return rocketIssues(rocket)
    .filter((issue) => issue.code !== UNLIKELY)
    .map((issue) => {
      const path = issue.path
        .replace(/^rocket\.(finSets|transitions)?/, (_, list?: string) => lists[list ?? ""] ?? "")
        .replace(/\.shape\./, ".");
      const field = masses[path]?.[ready ? 1 : 0] ?? path;
      const at = placeOfIssue(placed, field, issue.code, typedAt(placed.document, field), issue.accepted);
      const found = at.found === show(undefined) ? shortNumber(issue.found) : at.found;
      return { ...at, found, example: examples[issue.code]?.(rocket) ?? "" };
    });
}

/** What was typed in a field: a text or a number; undefined where it holds more, or nothing. */
function typedAt(document: object, field: string): string | number | undefined {
  const typed = stepsOf(field)?.reduce<unknown>(
    (here, step) =>
      typeof here === "object" && here !== null && Object.hasOwn(here, step)
        ? (here as Record<string | number, unknown>)[step]
        : undefined,
    document,
  );
  return typeof typed === "string" || typeof typed === "number" ? typed : undefined;
}

function shortNumber(found: number | string): string {
  return String(typeof found === "number" && Number.isFinite(found) ? Number(found.toPrecision(4)) : found);
}

/** What would be right, where the words alone leave one reckoning. */
const examples: Readonly<Record<string, (rocket: Rocket) => string>> = {
  "ogive-too-blunt": ({ diameter }) => JSON.stringify(formatQuantity(diameter, "length", "mm")),
};

/** Where the document has another name than the engine. */
const lists: Readonly<Record<string, string>> = { finSets: "fins", transitions: "sections" };
const masses: Readonly<Record<string, readonly [withoutMotor: string, ready: string]>> = {
  mass: ["massWithoutMotor", "massReady"],
  balance: ["balanceWithoutMotor", "balanceReady"],
  inertia: ["inertiaWithoutMotor", "inertiaWithoutMotor"],
};
