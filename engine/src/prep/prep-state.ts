import type { PrepFacts } from "./facts.js";
import { indexLog, type LogIndex, type PrepEvent, type PrepSigned } from "./log.js";
import { onBranches, prepSteps, withoutSteps } from "./prep-steps.js";
import type { PrepBranch, PrepStep, PrepStepId } from "./step.js";

/** Why a step that was signed is not signed now. */
export type DueCause = "changed" | "unsigned" | "scrub" | "misfire" | "before-it" | "too-early";

/** What hinders a signature beside the steps before it. */
export type PrepHindrance =
  | "instructions-not-confirmed"
  | "does-not-hold"
  | "reading-not-written"
  | "check-says-stop"
  | "igniter-in"
  | "electronics-on"
  | "flown";

/** One step as it stands now. */
export interface PrepStepState {
  readonly step: PrepStep;
  /** `open`: can be signed; `due-again`: was signed, and can be again; `blocked`: cannot be signed yet. */
  readonly status: "open" | "signed" | "blocked" | "due-again";
  /** The last signature, whether it still counts or not; null: never signed. */
  readonly signature: PrepSigned | null;
  /** Its signature counts by itself. Where it is `blocked` all the same, it counts again when `waitsFor` is signed. */
  readonly stands: boolean;
  /** Why the last signature does not count; null where it stands or there is none. */
  readonly due: DueCause | null;
  /** Steps that must be signed first. */
  readonly waitsFor: readonly PrepStepId[];
  readonly hindrances: readonly PrepHindrance[];
  /** Before this moment its signature does not count [s], on the log's clock; null: no wait, or it cannot be told. */
  readonly notBefore: number | null;
}

/** A prep sheet as it stands now. */
export interface PrepState {
  /** The truth that is kept. */
  readonly events: readonly PrepEvent[];
  /** The steps that are asked for, in their order. */
  readonly steps: readonly PrepStepState[];
  /** The branches that are being walked. */
  readonly branches: readonly PrepBranch[];
  /** An igniter may be in the motor, electronics may be on: until they are taken back, nothing that they need can be done again. */
  readonly igniterIn: boolean;
  readonly electronicsOn: boolean;
  readonly flown: boolean;
  /** The first that can be signed; null: none. */
  readonly next: PrepStepId | null;
}

/**
 * Reads a log against a plan's steps.
 *
 * A signature counts only where it rests on what is still so, where nothing took it back, and where every step that it needs is signed and
 * was signed earlier in the log. So no log, whatever stands in it, makes a step signed before its preconditions.
 *
 * Once the rocket has flown, what was signed before is history: a plan that changes later takes no signature back.
 *
 * @param facts of the plan as it is now
 * @param events the log, oldest first
 * @example
 * prepState(facts, []).next; // "motor-label"
 */
export function prepState(facts: PrepFacts, events: readonly PrepEvent[]): PrepState {
  const steps = prepSteps(facts);
  const log = indexLog(events);
  const asked = withoutSteps(onBranches(steps, walkedBranches(log)), (step) => !isAsked(step, steps, log));
  const igniterIn = standsIn("igniter", steps, log, events.length);
  const electronicsOn = standsIn("electronics-on", steps, log, events.length);
  const history = withoutSteps(asked, (step) => step.phase !== "after" && step.optional && log.signed(step.id) < 0);
  const frozen = judged(history, events, log, { frozen: true, hindrances: () => [] });
  const flown = frozen.some(({ step, status }) => step.id === "launched" && status === "signed");
  const hindrances = hindrancesOf(facts, [
    ["igniter-in", igniterIn ? neededBy("igniter", asked) : new Set()],
    ["electronics-on", electronicsOn ? neededBy("electronics-on", asked) : new Set()],
  ]);
  const live = flown ? frozen.map(asHistory) : judged(asked, events, log, { frozen: false, hindrances });
  return {
    events,
    steps: live,
    branches: (["misfire", "scrub"] as const).filter((branch) =>
      live.some(({ step, status }) => step.branch === branch && status !== "signed"),
    ),
    igniterIn: igniterIn && !flown,
    electronicsOn: electronicsOn && live.every(({ step, stands }) => step.id !== "power-down" || !stands),
    flown,
    next: live.find(({ status }) => status === "open" || status === "due-again")?.step.id ?? null,
  };
}

/** What hinders each step: the plan's facts take back a signature that was given; what is armed only stops a new one. */
function hindrancesOf(
  { cut, checkSaysStop }: PrepFacts,
  armed: readonly (readonly [PrepHindrance, ReadonlySet<PrepStepId>])[],
): Circumstances["hindrances"] {
  const ofPlan: Readonly<Partial<Record<PrepStepId, PrepHindrance>>> = {
    ...(cut === "not-confirmed" ? { cut: "instructions-not-confirmed" } : {}),
    ...(cut === "does-not-hold" ? { cut: "does-not-hold" } : {}),
    ...(cut === "none" || cut === "made" ? {} : { "depth-after": "reading-not-written" }),
    ...(checkSaysStop ? { weather: "check-says-stop" } : {}),
  };
  return (id, signed) => {
    const own = ofPlan[id];
    const under = signed ? [] : armed.filter(([, needed]) => needed.has(id)).map(([hindrance]) => hindrance);
    return own === undefined ? under : [own, ...under];
  };
}

interface Circumstances {
  readonly frozen: boolean;
  readonly hindrances: (id: PrepStepId, signed: boolean) => readonly PrepHindrance[];
}

function judged(
  steps: readonly PrepStep[],
  events: readonly PrepEvent[],
  log: LogIndex,
  { frozen, hindrances }: Circumstances,
): PrepStepState[] {
  const states = new Map<PrepStepId, PrepStepState>();
  for (const step of steps) {
    const signature = (events[log.signed(step.id)] as PrepSigned | undefined) ?? null;
    const notBefore = notBeforeOf(step, states);
    const due = signature === null ? null : dueCause(step, signature, { log, states, frozen, notBefore });
    const stands = signature !== null && due === null;
    const waitsFor = step.preconditions
      .filter((each) => states.get(each.step)?.status !== "signed")
      .map((each) => each.step);
    const hindering = hindrances(step.id, stands && waitsFor.length === 0);
    const free = waitsFor.length === 0 && hindering.length === 0;
    const status = !free ? "blocked" : stands ? "signed" : signature === null ? "open" : "due-again";
    states.set(step.id, { step, status, signature, stands, due, waitsFor, hindrances: hindering, notBefore });
  }
  return [...states.values()];
}

interface Known {
  readonly log: LogIndex;
  readonly states: ReadonlyMap<PrepStepId, PrepStepState>;
  readonly frozen: boolean;
  readonly notBefore: number | null;
}

/** Why a signature does not count; null: it does, if what it waits for is signed. */
function dueCause(step: PrepStep, signature: PrepSigned, { log, states, frozen, notBefore }: Known): DueCause | null {
  const at = log.signed(step.id);
  if (log.unsigned(step.id) > at) return "unsigned";
  for (const branch of step.undoneBy) if (log.turned(branch) > at) return branch;
  if (!frozen && signature.rests !== step.rests) return "changed";
  for (const { step: before, kind } of step.preconditions) {
    if (kind === "gates") continue;
    const state = states.get(before);
    if (state === undefined || !state.stands || log.signed(before) > at) return "before-it";
  }
  if (step.wait === null) return null;
  return notBefore === null || signature.at === null || signature.at < notBefore ? "too-early" : null;
}

function notBeforeOf({ wait, preconditions }: PrepStep, states: ReadonlyMap<PrepStepId, PrepStepState>): number | null {
  const from = preconditions[0] === undefined ? undefined : states.get(preconditions[0].step);
  return wait === null || from?.status !== "signed" || from.signature === null || from.signature.at === null
    ? null
    : from.signature.at + wait;
}

/** A misfire is walked from then on, a scrub until a misfire comes after it. */
function walkedBranches(log: LogIndex): PrepBranch[] {
  const misfire = log.turned("misfire");
  return [...(misfire >= 0 ? ["misfire" as const] : []), ...(log.turned("scrub") > misfire ? ["scrub" as const] : [])];
}

/** A branch asks for what there is to take back; a scrub within a misfire takes over from it all but the wait. */
function isAsked({ branch, takesBack }: PrepStep, steps: readonly PrepStep[], log: LogIndex): boolean {
  if (branch === null || takesBack === null) return true;
  const scrub = log.turned("scrub");
  return branch === "misfire" ? scrub < log.turned("misfire") : standsIn(takesBack, steps, log, scrub);
}

/**
 * Whether a step had been done, and not been taken back, before a place in the log. In doubt it had: a signature of its own that was taken
 * back may have been true, and one for taking it back that was itself taken back may not.
 */
function standsIn(id: PrepStepId, steps: readonly PrepStep[], log: LogIndex, before: number): boolean {
  const back = steps.flatMap((step) => {
    const at = log.signed(step.id, before);
    return step.takesBack === id && at > log.unsigned(step.id) ? [at] : [];
  });
  return log.signed(id, before) > Math.max(-1, ...back);
}

/** The steps of the trunk that one needs, however far before it. */
function neededBy(id: PrepStepId, steps: readonly PrepStep[]): Set<PrepStepId> {
  const needed = new Set<PrepStepId>([id]);
  for (const step of steps.toReversed()) {
    if (!needed.has(step.id)) continue;
    for (const { step: before, kind } of step.preconditions) if (kind === "needs") needed.add(before);
  }
  needed.delete(id);
  for (const step of steps) if (step.branch !== null) needed.delete(step.id);
  return needed;
}

/** What was not signed before the rocket flew stays so. */
function asHistory(state: PrepStepState): PrepStepState {
  if (state.step.phase === "after" || state.status === "signed") return state;
  return { ...state, status: "blocked", hindrances: ["flown"] };
}
