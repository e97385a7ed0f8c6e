import type { CutPlan } from "./cut-plan.js";

/** The six outcomes of an opening, judged in this order; their odds sum to 1. */
export interface OutcomeOdds {
  readonly clean: number;
  readonly earlyFast: number;
  readonly lateFast: number;
  readonly leanFast: number;
  readonly low: number;
  readonly grounded: number;
}

/** Odds of one setting. */
export interface Odds extends OutcomeOdds {
  /** Odds of opening above the floor and within strength. */
  readonly holds: number;
  /** Sampling error of `clean`: three standard errors from the independent scrambles. */
  readonly error: number;
  /** Sampling error of `holds`, likewise. */
  readonly holdsError: number;
}

/** One achievable setting with its odds. Opening figures are null where every flight is grounded. */
export interface Setting extends CutPlan {
  readonly odds: Odds;
  /** One sigma of the delay's scatter at this setting [s]. */
  readonly delaySd: number;
  /** Airspeed at opening [m/s]. */
  readonly openingSpeed: { readonly p50: number; readonly p90: number; readonly p95: number } | null;
  /** Height at opening [m]. */
  readonly openingHeight: { readonly p05: number; readonly p10: number; readonly p50: number } | null;
  /** Opening minus apogee [s]: negative is early. */
  readonly secondsFromApogee: { readonly p05: number; readonly p50: number; readonly p95: number } | null;
  /** Beside electronics: odds that this charge fires before the electronics has opened the rocket. */
  readonly firesFirst: number | null;
}

/** Why no setting is good enough. */
export type ReasonCode = "too-fast-early" | "too-fast-late" | "lean" | "too-low" | "out-of-reach" | "no-settings";

/** What would help where no setting is good enough. */
export type HelpCode = "another-motor" | "ballast" | "less-wind" | "longer-guide" | "longer-delay" | "stronger-recovery";

/** The delay to cut. */
export interface ToCut extends CutPlan {
  /** The best setting reaches `leastClean`. */
  readonly reachesLeast: boolean;
  /** The best setting reaches `leastHolds`. */
  readonly reachesHolds: boolean;
  /** Why this one: the only one, best odds, a tie broken, best of those that do not hold. */
  readonly why: "only-setting" | "best-odds" | "tie-fewer-low" | "tie-shorter" | "none-holds";
  /** Why it is not good enough, most weighty first; empty where it is. */
  readonly reasons: readonly ReasonCode[];
  readonly helps: readonly HelpCode[];
  /** The first, shallower cut to make at home; null where there is none to make before the last. */
  readonly homeCut: CutPlan | null;
}

/** Shares of variance that one uncertain input causes, first order and in all. */
export interface Share {
  readonly first: number;
  readonly total: number;
}

/** How much one uncertain input causes. */
export interface Driver {
  readonly input: string;
  /** Of the coast time; null for what cannot move it (delay and cut). */
  readonly coast: Share | null;
  /** Of the time between apogee and opening, delay scatter and cut included. */
  readonly timing: Share;
  /** Of the odds of a clean opening at the delay to cut. */
  readonly odds: Share;
}

/** One finding: a value against a limit. */
export interface Check {
  readonly code: string;
  readonly verdict: "pass" | "look" | "stop";
  readonly value: number | null;
  readonly limit: number | null;
  /** Unit of value and limit, for example `m/s`; empty for pure numbers. */
  readonly unit: string;
  readonly source: string;
}

/** Something the models were not held against, or a guess that rules the answer. */
export interface Warning {
  readonly code: string;
  readonly value: number | null;
  readonly limit: number | null;
}
