import {
  type PrepBranch,
  type PrepPhase,
  type PrepStep,
  type PrepStepId,
  type PrepStepState,
  prepSteps,
  type SafetyCodeRule,
} from "@delaywright/engine";
import type { PrepData } from "../answer/prep-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { benchWords, type StepWords } from "./prep-bench.en.js";
import { prepHazardWords } from "./prep-hazards.en.js";
import { packingWords } from "./prep-packing.en.js";
import { afterWords, padWords } from "./prep-pad.en.js";
import { prepDueWords, prepHindranceWords, prepReasonWords } from "./prep-reasons.en.js";

const steps: Readonly<Record<PrepStepId, StepWords>> = Object.freeze({
  ...benchWords,
  ...packingWords,
  ...padWords,
  ...afterWords,
});

const phases: Readonly<Record<PrepPhase, string>> = Object.freeze({
  bench: "At the bench",
  packing: "Packing",
  pad: "At the pad",
  countdown: "Countdown",
  after: "After the flight",
});

const ruleWords: Readonly<Record<SafetyCodeRule["id"], string>> = Object.freeze({
  "misfire-wait": "interlock or battery out, then wait 60 s",
  countdown: "countdown of 5 s",
  "heat-distance": "no smoking, flame or heat within 25 ft (7.6 m) of motors",
  "igniter-at-pad": "igniter only at the pad, or in a place set apart for it",
});

/** Said above every sheet. */
export const prepAuthority =
  "The motor's own instructions, the safety code, the range safety officer and local law come before this sheet.";

/** One step of a prep sheet in words. */
export interface PrepLine {
  readonly id: PrepStepId;
  readonly phase: PrepPhase;
  readonly status: PrepStepState["status"];
  readonly title: string;
  /** How it is done, with the plan's own figures. */
  readonly how: readonly string[];
  /** Why it stands here. */
  readonly reason: string;
  readonly hazards: readonly string[];
  /** What the safety code says of it, with its source; null: nothing of its own. */
  readonly code: string | null;
  /** Why it cannot be signed now, or is due again; empty where neither. */
  readonly waits: readonly string[];
  /** Initials and time of the signature that counts; null: none. */
  readonly signed: { readonly by: string; readonly when: string } | null;
}

/** The heading over the steps of a phase. */
export function prepPhaseWords(phase: PrepPhase): string {
  return phases[phase];
}

/** What a step is called. */
export function prepTitle(id: PrepStepId): string {
  return steps[id].title;
}

/**
 * A plan's prep sheet in words, in the order in which it is done.
 *
 * @param data the sheet as it stands
 * @param units the flyer's own
 * @example
 * prepLines(data).find(({ id }) => id === "cut")?.how[0]; // "Cut to 9 s, end A with the ring: 4.0 mm (5/32 in). …"
 */
export function prepLines(data: PrepData, units: UnitSystem = "metric"): readonly PrepLine[] {
  return data.state.steps.map((state) => lineOf(state.step, state, data, units));
}

/** A branch of the sheet, for a page that is printed before anybody knows whether it is needed. */
export interface PrepBranchLines {
  readonly steps: readonly PrepLine[];
  /** Titles of the steps whose signatures it takes back, to be done again after it. */
  readonly again: readonly string[];
}

/** The steps of a scrub or a misfire, whether it has come about or not. */
export function prepBranchLines(data: PrepData, branch: PrepBranch, units: UnitSystem = "metric"): PrepBranchLines {
  const steps = prepSteps(data.facts);
  return {
    steps: steps
      .filter((step) => step.branch === branch)
      .map((step) =>
        lineOf(
          step,
          data.state.steps.find((each) => each.step.id === step.id),
          data,
          units,
        ),
      ),
    again: steps
      .filter((step) => step.branch === null && step.undoneBy.includes(branch))
      .map(({ id }) => prepTitle(id)),
  };
}

/** What a branch is called. */
export function prepBranchWords(branch: PrepBranch): string {
  return branch === "scrub" ? "If the flight is called off" : "If it does not light";
}

function lineOf(
  { id, phase, why, hazards, rule }: PrepStep,
  state: PrepStepState | undefined,
  { figures, setting }: PrepData,
  units: UnitSystem,
): PrepLine {
  const { title, how } = steps[id];
  const signature = state?.status === "signed" ? state.signature : null;
  return {
    id,
    phase,
    status: state?.status ?? "blocked",
    title,
    how: how({ figures, setting, units }),
    reason: prepReasonWords(why),
    hazards: hazards.map(prepHazardWords),
    code: rule === null ? null : `${rule.source}, ${rule.edition}: ${ruleWords[rule.id]}.`,
    waits: state === undefined ? [] : waitWords(state),
    signed: signature === null ? null : { by: signature.by, when: signature.when },
  };
}

function waitWords({ status, due, waitsFor, hindrances }: PrepStepState): string[] {
  if (status === "signed") return [];
  return [
    ...(due === null ? [] : [`Due again: ${prepDueWords(due)}.`]),
    ...(waitsFor.length === 0 ? [] : [`First: ${waitsFor.map((id) => prepTitle(id).toLowerCase()).join("; ")}.`]),
    ...hindrances.map(prepHindranceWords),
  ];
}
