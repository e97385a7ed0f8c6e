import type { Issue } from "../../issues.js";
import type { FactName } from "../../rules/facts.js";
import type { Basis, DetailCode } from "../../rules/rule.js";
import type { ReasonCode, Setting, ToCut } from "../decision.js";

/** Why a motor is refused: its size against the mount, or the title of a rule. */
export type RefusalCode =
  | "too-wide-for-mount"
  | "too-long-for-mount"
  | "certification-level"
  | "motor-certified"
  | "no-charge"
  | "thrust-to-weight"
  | "lift-off-weight"
  | "guide-exit-speed"
  | "guide-exit-against-wind"
  | "guide-length-in-wind"
  | "cp-ahead-of-balance"
  | "margin-at-guide-exit"
  | "personnel-distance"
  | "site-edge-distance"
  | "site-size"
  | "ceiling"
  | "draws-not-flown"
  | "no-setting-holds"
  | "below-least-clean"
  | "fires-before-electronics"
  | "instructions-not-confirmed"
  | "tool-not-named"
  | "landing-inside-unopened"
  | "keep-off-zones-unopened"
  | "landing-inside"
  | "keep-off-zones";

/** What asks for a look at a motor that is not refused. */
export type MotorLookCode = RefusalCode | "adapter-needed" | "margin-at-burnout" | "margin-in-flight" | "over-stable";

/** What was found of one motor: a value against a limit. */
export interface MotorFinding<Code extends string> extends Basis {
  readonly code: Code;
  readonly value: number | null;
  readonly limit: number | null;
  /** Unit of value and limit, for example `m/s`; `odds` for 0…1, empty for pure numbers. */
  readonly unit: string;
  /** Whether the limit is the least or the most; `none`: no number decides. */
  readonly sense: "least" | "most" | "none";
  readonly details: readonly (DetailCode | ReasonCode)[];
}

/** Why a motor is refused, with value and limit. */
export type Refusal = MotorFinding<RefusalCode>;

/** What asks for a look, with value and limit. */
export type MotorLook = MotorFinding<MotorLookCode>;

/** A rule that could not be judged, and the facts that it wants. */
export interface NotChecked {
  readonly code: MotorLookCode;
  readonly missing: readonly FactName[];
}

/** What needs no flight. */
export interface CandidateFigures {
  /** `1/8A` … `Z`. */
  readonly motorClass: string;
  /** [N s] */
  readonly totalImpulse: number;
  /** [N] */
  readonly averageThrust: number;
  /** Average thrust over lift-off weight. */
  readonly thrustToWeight: number;
}

/** What the nominal flight says. */
export interface LaunchFigures {
  /** Ground speed as it leaves the guide [m/s]; 0: it never does. */
  readonly guideExitSpeed: number;
  /** Static margins [calibres]. */
  readonly marginAtGuideExit: number;
  readonly marginAtBurnout: number;
}

/** The delay to cut with its odds, as `decide` gives it; how it is cut is left out where no cut may be shown. */
export interface MotorCut extends Setting, Pick<ToCut, "reachesLeast" | "reachesHolds" | "why"> {}

/** What all draws say. */
export interface DrawnFigures {
  /** Of the top above the pad [m]. */
  readonly height: { readonly p05: number; readonly p50: number; readonly p95: number };
  /** Null for a motor without delay. */
  readonly toCut: MotorCut | null;
  /** 1 where nothing varies. */
  readonly draws: number;
}

interface OneMotor {
  readonly id: string;
  /** Null: not known. */
  readonly price: number | null;
}

/** A motor that is not refused: what asks for a look, and what could not be checked, stands with it. */
export interface RankedMotor extends OneMotor {
  readonly outcome: "ranked";
  readonly figures: CandidateFigures;
  readonly launch: LaunchFigures;
  readonly drawn: DrawnFigures;
  readonly looks: readonly MotorLook[];
  readonly notChecked: readonly NotChecked[];
}

/** A motor that is refused: later figures are null where an earlier one was enough. */
export interface RefusedMotor extends OneMotor {
  readonly outcome: "refused";
  readonly figures: CandidateFigures;
  readonly launch: LaunchFigures | null;
  readonly drawn: DrawnFigures | null;
  /** Every reason found, most weighty first; at least one. */
  readonly refusals: readonly [Refusal, ...Refusal[]];
}

/** A motor that no flight can be computed from. */
export interface BrokenMotor extends OneMotor {
  readonly outcome: "broken";
  readonly issues: readonly Issue[];
}

/** One motor, judged against a plan: plain data. */
export type JudgedMotor = RankedMotor | RefusedMotor | BrokenMotor;
