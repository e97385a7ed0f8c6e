import type { PrepBasis, PrepFacts } from "./facts.js";
import type { SafetyCodeRule } from "./safety-code.js";

/** When in the day a step is done. */
export type PrepPhase = "bench" | "packing" | "pad" | "countdown" | "after";

/** What takes the day back from the pad: the flight is called off, or the motor did not light. */
export type PrepBranch = "scrub" | "misfire";

/** Stable names of the steps, in kebab case. */
export type PrepStepId =
  | "motor-label"
  | "instructions"
  | "airframe"
  | "depth-before"
  | "cut"
  | "depth-after"
  | "ground-test"
  | "washer"
  | "motor-charge"
  | "charge-cap"
  | "retention"
  | "electronics-test"
  | "electronics-off"
  | "bay-charge"
  | "canopy"
  | "drogue"
  | "links"
  | "joints"
  | "pins"
  | "balance"
  | "tracker"
  | "name"
  | "card"
  | "weather"
  | "misfire-interlock"
  | "misfire-wait"
  | "misfire-igniter-out"
  | "misfire-electronics-off"
  | "scrub-circuit-dead"
  | "scrub-igniter-out"
  | "scrub-electronics-off"
  | "scrub-off-pad"
  | "circuit-dead"
  | "on-pad"
  | "children-back"
  | "electronics-on"
  | "igniter"
  | "leads"
  | "pad-clear"
  | "armed"
  | "launched"
  | "circuit-off"
  | "found"
  | "approach"
  | "power-down"
  | "charge-fired"
  | "second-charge"
  | "motor-out";

/** What can hurt somebody at a step. */
export type PrepHazard =
  | "motor-burns"
  | "cutting"
  | "shavings"
  | "loose-charge"
  | "loaded-charge"
  | "retention"
  | "electronics-fire"
  | "igniter"
  | "circuit-live"
  | "lifts-off"
  | "late-charge"
  | "not-lit"
  | "hot-motor";

/** Why a step stands where it does. */
export type PrepReason =
  | "right-motor-first"
  | "instructions-rule"
  | "weak-part-found-early"
  | "depth-has-a-start"
  | "cut-is-final"
  | "reading-proves-cut"
  | "charge-proven-by-test"
  | "washer-on-cut-face"
  | "charge-late"
  | "cap-holds-charge"
  | "charge-pushes-motor"
  | "tested-without-charge"
  | "off-before-charge"
  | "own-charge-late"
  | "canopy-over-charge"
  | "drogue-first-out"
  | "links-last-seen"
  | "joints-part-once"
  | "pins-shut-it"
  | "weigh-as-flown"
  | "tracker-before-shut-range"
  | "name-brings-it-back"
  | "officer-decides"
  | "weather-has-aged"
  | "dead-before-pad"
  | "guide-holds-it"
  | "people-before-power"
  | "power-upright"
  | "igniter-last"
  | "leads-after-igniter"
  | "clear-before-key"
  | "key-in-last"
  | "launch-after-all"
  | "dead-before-range-opens"
  | "see-where-it-lies"
  | "side-on"
  | "power-before-hands"
  | "fired-or-live"
  | "each-charge-counts"
  | "cool-and-fired"
  | "dead-before-wait"
  | "wait-it-may-light"
  | "out-as-it-went-in"
  | "off-while-hands-near"
  | "down-when-dead";

/**
 * How a step rests on one before it.
 *
 * `needs`: signed before, and the later one is due again where the earlier one was done again. `gates`: signed before, and the later
 * one only waits until it is signed again.
 */
export interface Precondition {
  readonly step: PrepStepId;
  readonly kind: "needs" | "gates";
}

/** One step of the prep sheet: codes and identifiers only. */
export interface PrepStep {
  readonly id: PrepStepId;
  readonly phase: PrepPhase;
  readonly why: PrepReason;
  readonly hazards: readonly PrepHazard[];
  /** Signed before this one can be. */
  readonly preconditions: readonly Precondition[];
  /** Stands on the sheet of some plans only. */
  readonly optional: boolean;
  /** The sheet's branch that it belongs to; null: its trunk. */
  readonly branch: PrepBranch | null;
  /** What takes its signature back. */
  readonly undoneBy: readonly PrepBranch[];
  /** The step that this one of a branch takes back; null: none. */
  readonly takesBack: PrepStepId | null;
  /** Least time since the sign-off of its first precondition [s]; null: none. */
  readonly wait: number | null;
  /** The safety code's own figure for it. */
  readonly rule: SafetyCodeRule | null;
  /** What it rests on, as it is now: a signature that rests on something else counts no more; null: on nothing that changes. */
  readonly rests: string | null;
}

/** A step before the facts of a plan are known. */
export interface StepText {
  readonly id: PrepStepId;
  readonly why: PrepReason;
  readonly hazards?: readonly PrepHazard[];
  readonly needs?: readonly PrepStepId[];
  readonly gates?: readonly PrepStepId[];
  /** Left out: always. */
  readonly applies?: (facts: PrepFacts) => boolean;
  readonly branch?: PrepBranch;
  readonly undoneBy?: readonly PrepBranch[];
  readonly takesBack?: PrepStepId;
  readonly rule?: SafetyCodeRule;
  readonly wait?: number;
  readonly restsOn?: readonly PrepBasis[];
}
