import type { Descent } from "../flight/descent.js";
import type { FlownMargin } from "../flight/margin-over-flight.js";
import type { ResolvedFlightOptions } from "../flight/options.js";
import type { FlightResult } from "../flight/result.js";
import type { ValidityCode } from "../rocket/validity.js";
import type { RuleFinding } from "../rules/check-rules.js";
import type { RuleTitle } from "../rules/rule.js";
import type { CutPlan } from "./cut-plan.js";
import type { Density } from "./density.js";
import type { WeatherRange } from "./inputs.js";
import type { Packing } from "./landed.js";

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
  /** Mean of the delay as it burns [s], where flights have taught it; left out: the delay as cut. */
  readonly delayMean?: number;
  /** Airspeed at opening [m/s]. */
  readonly openingSpeed: {
    readonly p05: number;
    readonly p50: number;
    readonly p90: number;
    readonly p95: number;
  } | null;
  /** Height at opening [m]. */
  readonly openingHeight: { readonly p05: number; readonly p10: number; readonly p50: number } | null;
  /** Opening minus apogee [s]: negative is early. */
  readonly secondsFromApogee: { readonly p05: number; readonly p50: number; readonly p95: number } | null;
  /** Beside electronics: odds that this charge fires before the electronics has opened the rocket. */
  readonly firesFirst: number | null;
}

/** Why no setting is good enough. */
export type ReasonCode =
  | "too-fast-early"
  | "too-fast-late"
  | "lean"
  | "too-low"
  | "grounded"
  | "does-not-hold"
  | "fires-before-electronics"
  | "out-of-reach-longer"
  | "out-of-reach-shorter";

/** What would help where no setting is good enough. */
export type HelpCode =
  | "another-motor"
  | "motor-with-longer-delay"
  | "motor-with-shorter-delay"
  | "ballast"
  | "less-wind"
  | "longer-guide"
  | "stronger-recovery"
  | "log-a-flight";

/** The delay to cut. */
export interface ToCut extends CutPlan {
  /** The best setting reaches `leastClean`; beside electronics: it seldom enough fires first. */
  readonly reachesLeast: boolean;
  /** The best setting reaches `leastHolds`. */
  readonly reachesHolds: boolean;
  /** Why this one: the only one, best odds, a tie broken, best of those that do not hold. */
  readonly why: "only-setting" | "best-odds" | "tie-fewer-low" | "tie-shorter" | "none-holds" | "after-electronics";
  /** Why it is not good enough, most weighty first; empty where it is. */
  readonly reasons: readonly ReasonCode[];
  readonly helps: readonly HelpCode[];
  /** The first, shallower cut to make at home; null where there is none to make before the last. */
  readonly homeCut: CutPlan | null;
  /** The weather that the cut at home leaves room for; null where there is none to make. */
  readonly homeWeather: WeatherRange | null;
}

/** Shares of variance that one uncertain input causes, first order and in all. */
export interface Share {
  readonly first: number;
  readonly total: number;
}

/** Names of the uncertain inputs whose share is given. */
export type DriverName =
  | "dragScale"
  | "totalImpulse"
  | "burnTime"
  | "mass"
  | "inertia"
  | "balance"
  | "guideTilt"
  | "windSpeed"
  | "windFrom"
  | "windExponent"
  | "windFloor"
  | "temperature"
  | "delay"
  | "cutDepth";

/** How much one uncertain input causes. */
export interface Driver {
  readonly input: DriverName;
  /** Of the variance of the coast time; null for delay and cut, which cannot move it. */
  readonly coast: Share | null;
  /** Of the variance of the time between apogee and opening, the delay's scatter and the cut included. */
  readonly timing: Share;
  /** Of the variance, from flight to flight, of the odds of a clean opening at the delay to cut; null for delay and cut. */
  readonly odds: Share | null;
}

/** What a check looks at: the title of its rule. Rules that stand for each other share it; `Check.id` tells them apart. */
export type CheckCode = RuleTitle;

/** What one rule found: a value against a limit, with where it comes from. */
export interface Check extends Omit<RuleFinding, "title"> {
  readonly code: CheckCode;
}

export type WarningCode =
  | ValidityCode
  | "surface-wind-carried-up"
  | "inertia-estimated"
  | "drag-not-learned"
  | "descents-not-followed"
  | "never-handed-over"
  | "no-tool";

/** Something the models were not held against, or a guess that rules the answer. */
export interface Warning {
  readonly code: WarningCode;
  readonly value: number | null;
  readonly limit: number | null;
}

/** A range of ballast that brings the odds of an over-cut element back. */
export interface BallastRange {
  /** Least and most ballast in all [kg], fixed at `at` from the nose tip [m]. */
  readonly from: number;
  readonly to: number;
  /** `to` is the most that was tried, not where the odds fall again: more may do as well. */
  readonly untriedBeyond: boolean;
  readonly at: number;
  /** The best mass found inside, with its odds. */
  readonly best: { readonly mass: number; readonly clean: number; readonly holds: number };
  /** Checks repeated at the best mass: weight, thrust, guide exit, margins, ceiling, where and how hard it lands. */
  readonly checks: readonly Check[];
}

/** Another rocket that the shortened element suits. */
export interface SuitedRocket {
  readonly name: string;
  readonly clean: number;
  readonly holds: number;
  /** Its own checks say stop. */
  readonly stops: boolean;
}

/** What to do with an element that was cut too deep. */
export interface OverCut {
  /** The delay as it now is [s], and one sigma of it from the reading [s]. */
  readonly delay: number;
  readonly delaySd: number;
  readonly clean: number;
  readonly holds: number;
  readonly ballast: readonly BallastRange[];
  readonly rockets: readonly SuitedRocket[];
  /** Neither a deeper cut, nor ballast, nor another rocket makes it good enough. */
  readonly doNotFly: boolean;
}

/** Static margin at one moment. */
export interface MarginAt {
  readonly calibres: number;
  /** Share of the rocket's length, 0…1. */
  readonly ofLength: number;
  /** Centre of pressure and balance point from the nose tip [m]. */
  readonly cp: number;
  readonly balance: number;
}

/** Static stability where it matters. */
export interface Stability {
  /** Centre of pressure at zero angle of attack and Mach 0, from the nose tip [m]. */
  readonly cp: number;
  readonly guideExit: MarginAt;
  /** At the angle of attack that the wind makes as the rocket leaves the guide, body lift included. */
  readonly guideExitAtAngle: MarginAt & { readonly angle: number };
  readonly burnout: MarginAt;
  /** Where it is least and most between guide exit and top: time from ignition [s], Mach number. */
  readonly inFlight: { readonly least: FlownMargin; readonly most: FlownMargin };
}

/** Where the rocket comes down if nothing opens. */
export interface Unopened {
  /** Odds of coming in unopened at the own choice, else at the delay to cut, if the charge fires and the rocket separates. */
  readonly odds: number;
  /** Of the nominal flight, from the pad [m]. */
  readonly east: number;
  readonly north: number;
  /** 95 % ellipse over the draws: half axes [m] and azimuth of the longer one [rad]; null without spread. */
  readonly ellipse95: {
    readonly east: number;
    readonly north: number;
    readonly major: number;
    readonly minor: number;
    readonly azimuth: number;
  } | null;
}

/** The whole answer. */
export interface Decision {
  readonly flight: FlightResult;
  /** From burnout to the top over the draws [s]. */
  readonly coast: {
    readonly nominal: number;
    readonly p05: number;
    readonly p50: number;
    readonly p95: number;
    /** [1/s]; null without spread. */
    readonly density: Density | null;
  };
  /** Height of the top over the draws [m]. */
  readonly apogeeHeight: { readonly p05: number; readonly p50: number; readonly p95: number };
  /** Airspeed at the top: what no delay can take away [m/s]. */
  readonly apogeeAirspeed: { readonly p50: number; readonly p95: number };
  readonly settings: readonly Setting[];
  /** Null for a motor without delay. */
  readonly toCut: ToCut | null;
  /** The flyer's own setting, as judged; null without one that can be made. What follows from the opening is of it. */
  readonly choice: { readonly setting: Setting; readonly reason: string | null } | null;
  /** The nominal flight opened at the own choice, else at the delay to cut, down to the ground; null where it never opens. */
  readonly opened: Descent | null;
  readonly overCut: OverCut | null;
  readonly unopened: Unopened;
  readonly stability: Stability;
  readonly drivers: readonly Driver[];
  /** Share of clean-or-not that stays open even if the flight were known exactly: the delay's own scatter. */
  readonly delayShareOfOdds: number | null;
  /** Airspeed beyond which the recovery is taken to fail [m/s], and whether anything is rated. */
  readonly strength: { readonly speed: number; readonly rated: boolean };
  /** Charge, pins, ports, canopy, openings, harness and landing; what is not known is null in it. */
  readonly packing: Packing;
  /** Stop first, then look, not checked, pass. */
  readonly checks: readonly Check[];
  readonly warnings: readonly Warning[];
  readonly seed: number;
  readonly draws: number;
  readonly model: ResolvedFlightOptions["model"];
}
