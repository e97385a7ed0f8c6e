import { afterSteps } from "./after-steps.js";
import { benchSteps } from "./bench-steps.js";
import { branchSteps } from "./branch-steps.js";
import type { PrepFacts } from "./facts.js";
import { packingSteps } from "./packing-steps.js";
import { countdownSteps, padSteps, weatherStep } from "./pad-steps.js";
import type { Precondition, PrepBranch, PrepPhase, PrepStep, PrepStepId, StepText } from "./step.js";

const phases: readonly (readonly [PrepPhase, readonly StepText[]])[] = [
  ["bench", benchSteps],
  ["packing", packingSteps],
  ["pad", [...branchSteps, weatherStep, ...padSteps]],
  ["countdown", countdownSteps],
  ["after", afterSteps],
];

const allSteps = phases.flatMap(([phase, texts]) => texts.map((text) => ({ phase, text })));

/** Names of all steps of all plans, in their order. */
export const prepStepIds: readonly PrepStepId[] = Object.freeze(allSteps.map(({ text }) => text.id));

/**
 * The prep sheet of a plan: its steps in the order in which they are done, each with what must be signed before it.
 *
 * Every precondition stands earlier in the list. What rests on a step that this plan does not have rests on that step's own
 * preconditions. The steps of both branches are among them: `prepState` tells which of them are asked for.
 *
 * @param facts of the plan
 * @returns codes and identifiers only; their words are made elsewhere
 * @source order and branches: common practice, no source; figures of the safety code as their rules say
 * @example
 * prepSteps(facts).map(({ id }) => id); // ["motor-label", "instructions", "airframe", …, "motor-out"]
 */
export function prepSteps(facts: PrepFacts): readonly PrepStep[] {
  const steps = allSteps.map(({ phase, text }) => stepOf(phase, text, facts));
  const applies = new Set(allSteps.filter(({ text }) => text.applies?.(facts) !== false).map(({ text }) => text.id));
  return withoutSteps(steps, (step) => !applies.has(step.id));
}

/**
 * The steps without some of them: what rested on one that is gone rests on its preconditions.
 *
 * @param steps in their order
 * @param gone which of them are left out
 */
export function withoutSteps(steps: readonly PrepStep[], gone: (step: PrepStep) => boolean): readonly PrepStep[] {
  const left: PrepStep[] = [];
  const instead = new Map<PrepStepId, readonly Precondition[]>();
  for (const step of steps) {
    const preconditions = inherited(step.preconditions, instead);
    if (gone(step)) instead.set(step.id, preconditions);
    else left.push({ ...step, preconditions });
  }
  return left;
}

/**
 * The steps without those of a branch that is not walked: nothing rests on them.
 *
 * @param steps in their order
 * @param walked the branches that are
 */
export function onBranches(steps: readonly PrepStep[], walked: readonly PrepBranch[]): readonly PrepStep[] {
  const left = steps.filter(({ branch }) => branch === null || walked.includes(branch));
  const ids = new Set(left.map(({ id }) => id));
  return left.map((step) => ({ ...step, preconditions: step.preconditions.filter((each) => ids.has(each.step)) }));
}

/** Through a gate everything is a gate; where both ways lead to a step, it is needed. */
function inherited(
  preconditions: readonly Precondition[],
  instead: ReadonlyMap<PrepStepId, readonly Precondition[]>,
): readonly Precondition[] {
  const kinds = new Map<PrepStepId, Precondition["kind"]>();
  for (const { step, kind } of preconditions) {
    for (const each of instead.get(step) ?? [{ step, kind: "needs" as const }]) {
      if (kind === "needs" && each.kind === "needs") kinds.set(each.step, "needs");
      else if (!kinds.has(each.step)) kinds.set(each.step, "gates");
    }
  }
  return [...kinds].map(([step, kind]) => ({ step, kind }));
}

function stepOf(phase: PrepPhase, text: StepText, facts: PrepFacts): PrepStep {
  const { needs = [], gates = [], restsOn } = text;
  return {
    id: text.id,
    phase,
    why: text.why,
    hazards: text.hazards ?? [],
    preconditions: [
      ...needs.map((step) => ({ step, kind: "needs" as const })),
      ...gates.map((step) => ({ step, kind: "gates" as const })),
    ],
    optional: text.applies !== undefined,
    branch: text.branch ?? null,
    undoneBy: text.branch === undefined ? (text.undoneBy ?? []) : [text.branch],
    takesBack: text.takesBack ?? null,
    wait: text.wait ?? null,
    rule: text.rule ?? null,
    rests: restsOn === undefined ? null : JSON.stringify(restsOn.map((each) => facts.basis[each])),
  };
}
