import type { PrepFacts } from "./facts.js";
import type { PrepEvent, PrepTurned } from "./log.js";
import { type PrepState, type PrepStepState, prepState } from "./prep-state.js";
import type { PrepStepId } from "./step.js";

/** Who does it and when. */
export interface PrepHand {
  /** Initials. */
  readonly by: string;
  /** As it is to be written down. */
  readonly when: string;
  /** The same moment on the log's clock [s]; left out: not known, and then no wait is over. */
  readonly at?: number | undefined;
}

/** Why something cannot be written down. */
export type PrepRefusal =
  | "no-initials"
  | "not-on-this-sheet"
  | "already-signed"
  | "not-signed"
  | "blocked"
  | "too-early"
  | "no-reason"
  | "flown"
  | "not-armed"
  | "nothing-to-scrub";

/** The log with one more event, or why there is none. */
export type PrepAct =
  | { readonly ok: true; readonly event: PrepEvent; readonly state: PrepState }
  | { readonly ok: false; readonly refusal: PrepRefusal; readonly step: PrepStepState | null };

/**
 * Signs a step: refused where a step before it is not signed, where something hinders it, or before its wait is over.
 *
 * @param facts of the plan as it is now
 * @param events the log so far
 * @param hand whose initials, and when
 * @example
 * signStep(facts, [], "igniter", { by: "AB", when: "2026-05-02T10:12" }).ok; // false
 */
export function signStep(facts: PrepFacts, events: readonly PrepEvent[], step: PrepStepId, hand: PrepHand): PrepAct {
  const state = stepIn(prepState(facts, events), step);
  const refusal = refusalOf(state, hand);
  if (refusal !== null || state === null) return { ok: false, refusal: refusal ?? "not-on-this-sheet", step: state };
  return added(facts, events, { kind: "sign", step, rests: state.step.rests, ...written(hand) });
}

/**
 * Takes a signature back. What needs the step is due again with it.
 *
 * @param hand whose initials, when, and why; the reason stays in the log with the signature
 */
export function unsignStep(
  facts: PrepFacts,
  events: readonly PrepEvent[],
  step: PrepStepId,
  { reason, ...hand }: PrepHand & { readonly reason: string },
): PrepAct {
  const sheet = prepState(facts, events);
  const state = stepIn(sheet, step);
  const refuse = (refusal: PrepRefusal): PrepAct => ({ ok: false, refusal, step: state });
  if (state === null) return refuse("not-on-this-sheet");
  if (!state.stands) return refuse("not-signed");
  if (sheet.flown && state.step.phase !== "after" && step !== "launched") return refuse("flown");
  if (hand.by.trim() === "") return refuse("no-initials");
  if (reason.trim() === "") return refuse("no-reason");
  return added(facts, events, { kind: "unsign", step, reason, ...written(hand) });
}

/**
 * Calls the flight off for now: everything at the pad is taken back, in the reverse of the order in which it was done, and done again later.
 *
 * @param hand whose initials, when, and why
 */
export function scrubFlight(
  facts: PrepFacts,
  events: readonly PrepEvent[],
  hand: PrepHand & { readonly reason: string },
): PrepAct {
  const { flown, igniterIn, steps } = prepState(facts, events);
  const begun = steps.some(({ step, stands }) => step.branch === null && step.undoneBy.includes("scrub") && stands);
  const refusal = flown ? "flown" : begun || igniterIn ? null : "nothing-to-scrub";
  return turned(facts, events, "scrub", hand, refusal);
}

/**
 * The button was pressed and the motor did not light: nobody goes near before the wait is over, then the igniter comes out.
 *
 * @param hand whose initials, when, and what was seen
 */
export function misfireFlight(
  facts: PrepFacts,
  events: readonly PrepEvent[],
  hand: PrepHand & { readonly reason: string },
): PrepAct {
  const sheet = prepState(facts, events);
  const armed = stepIn(sheet, "armed")?.stands === true;
  return turned(facts, events, "misfire", hand, sheet.flown ? "flown" : armed ? null : "not-armed");
}

function turned(
  facts: PrepFacts,
  events: readonly PrepEvent[],
  kind: PrepTurned["kind"],
  { reason, ...hand }: PrepHand & { readonly reason: string },
  refusal: PrepRefusal | null,
): PrepAct {
  if (refusal !== null) return { ok: false, refusal, step: null };
  if (hand.by.trim() === "") return { ok: false, refusal: "no-initials", step: null };
  return added(facts, events, { kind, reason, ...written(hand) });
}

function refusalOf(state: PrepStepState | null, { by, at }: PrepHand): PrepRefusal | null {
  if (state === null) return "not-on-this-sheet";
  if (state.status === "signed") return "already-signed";
  if (state.status === "blocked") return state.hindrances.includes("flown") ? "flown" : "blocked";
  if (by.trim() === "") return "no-initials";
  if (state.step.wait === null) return null;
  return at === undefined || state.notBefore === null || at < state.notBefore ? "too-early" : null;
}

function stepIn({ steps }: PrepState, id: PrepStepId): PrepStepState | null {
  return steps.find(({ step }) => step.id === id) ?? null;
}

function written({ by, when, at }: PrepHand) {
  return { by: by.trim(), when, at: at ?? null };
}

function added(facts: PrepFacts, events: readonly PrepEvent[], event: PrepEvent): PrepAct {
  return { ok: true, event, state: prepState(facts, [...events, event]) };
}
