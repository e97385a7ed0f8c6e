import type { ValidityCode } from "../rocket/validity.js";
import type { DistanceRow } from "./distances.js";
import type { FactName, RuleFacts } from "./facts.js";

export type RuleVerdict = "pass" | "look" | "stop" | "not-checked";

/** How far a rule's number can be trusted. */
export type RuleStatus =
  | "verified"
  | "memory"
  | "common practice, no source"
  | "own default, no source"
  | "the club's own";

/** Where a rule comes from. */
export interface Basis {
  readonly source: string;
  /** Edition, or the section within it; empty where there is none. */
  readonly edition: string;
  readonly status: RuleStatus;
}

/** Rule sets that come with the engine: the association's codes with the aviation rule, or physics and own defaults only. */
export type RuleSetName = "association" | "none";

/** What a finding has to say beside its figures. */
export type DetailCode =
  | ValidityCode
  | "class-1"
  | "class-2"
  | "class-3"
  | "not-amateur"
  | "authorised"
  | "not-told"
  | "told-too-late"
  | "told-too-early"
  | "beyond-table"
  | "metal-sponge"
  | "complex"
  | "retained-by-friction"
  | "not-retained"
  | "too-short"
  | "shorter-than-fixed"
  | "longer-than-fixed"
  | "too-long"
  | ClubIssueCode;

/** What may be wrong with a club's rules. */
export type ClubIssueCode =
  | "rule-unknown"
  | "rule-is-fixed"
  | "rule-has-no-limit"
  | "limit-not-a-number"
  | "distances-not-rising";

/** What one rule finds. */
export interface Finding {
  readonly verdict: RuleVerdict;
  readonly value: number | null;
  /** The limit that was passed; where none was, the one that comes first. */
  readonly limit: number | null;
  /** Unit of value and limit, for example `m/s`; `odds` for 0…1, empty for pure numbers. */
  readonly unit: string;
  readonly details: readonly DetailCode[];
  /** Facts that were needed and are not known; empty unless `not-checked`. */
  readonly missing: readonly FactName[];
}

/** Numbers at which a rule asks to look or says stop. */
export interface RuleLimits {
  readonly look?: number;
  readonly stop?: number;
}

/** What a rule is judged by: its own numbers, or a club's in their place. */
export interface RuleTerms {
  readonly limits: RuleLimits;
  readonly distances: readonly DistanceRow[];
}

/** What a rule looks at: rules that stand for each other share it, and words for people go by it. */
export type RuleTitle =
  | "adult-in-charge"
  | "airport-distance"
  | "aviation-class"
  | "aviation-notice"
  | "below-least-clean"
  | "building-distance"
  | "ceiling"
  | "certification-level"
  | "charge-in-well"
  | "charge-parts-joint"
  | "choice-below-least"
  | "choice-not-achievable"
  | "cleared-diameter"
  | "cloud-cover"
  | "cloud-entry"
  | "club-rule"
  | "controlled-airspace"
  | "cp-ahead-of-balance"
  | "daylight"
  | "delay-reachable"
  | "descent-time"
  | "draws-not-flown"
  | "element-over-cut"
  | "field-hours"
  | "fire-means"
  | "fires-before-electronics"
  | "flyer-age"
  | "guide-exit-against-wind"
  | "guide-exit-speed"
  | "guide-length-in-wind"
  | "instructions-not-confirmed"
  | "keep-off-zones"
  | "keep-off-zones-unopened"
  | "landing-energy"
  | "landing-inside"
  | "landing-inside-unopened"
  | "landing-speed"
  | "lift-off-weight"
  | "margin-at-burnout"
  | "margin-at-guide-exit"
  | "margin-in-flight"
  | "models-validity"
  | "motor-certified"
  | "no-charge"
  | "no-setting-holds"
  | "opening-speed"
  | "opening-strength-unrated"
  | "over-stable"
  | "personnel-distance"
  | "removal-within-limit"
  | "retention"
  | "road-distance"
  | "site-edge-distance"
  | "site-size"
  | "site-size-for-height"
  | "thrust-to-weight"
  | "tilt-limit"
  | "tilt-sector"
  | "tool-not-named"
  | "total-impulse"
  | "uninvolved-distance"
  | "visibility"
  | "weather-age"
  | "wind-limit";

/** One rule: data and one function. */
export interface Rule extends Basis {
  /** Stable, in kebab case; what a club's rules name. */
  readonly id: string;
  readonly title: RuleTitle;
  readonly unit: string;
  /** Whether its limits are the least or the most; `none`: no number decides. */
  readonly sense: "least" | "most" | "none";
  /** Empty where a table or the facts give the limit. */
  readonly limits: RuleLimits;
  /** The limits are multiples of this fact. */
  readonly limitsOf?: FactName;
  /** A table by total impulse decides. */
  readonly byDistances: boolean;
  /** No club can change it or turn it off. */
  readonly fixed: boolean;
  readonly sets: readonly RuleSetName[];
  /** Facts without which nothing is judged. */
  readonly needs: readonly FactName[];
  /** Null: it does not apply. Without `terms`, the rule's own. */
  readonly judge: (facts: RuleFacts, terms?: RuleTerms) => Finding | null;
}

/** Does a rule apply? Names of facts: that cannot be told without them. */
export type Applies = boolean | readonly FactName[];

/** What every way of writing a rule says. */
export interface RuleText<Need extends FactName> {
  readonly id: string;
  /** Left out: as the identifier, which must then be one of them. */
  readonly title?: RuleTitle;
  readonly basis: Basis;
  readonly sets: readonly RuleSetName[];
  readonly fixed?: true;
  readonly needs: readonly Need[];
  /** Left out: always. */
  readonly applies?: (facts: RuleFacts) => Applies;
}

/** What was found where all needed facts are known. */
export type Found = Pick<Finding, "verdict"> & Partial<Omit<Finding, "unit">>;
