import type {
  Calibration,
  EventMeaning,
  EventName,
  EventReason,
  FlownDelay,
  Learned,
  Odds,
  RecordFlaw,
} from "@delaywright/engine";
import type { Issue } from "../issue.js";
import type { PlanContext } from "../to-engine.js";
import type { CutData } from "./decision-data.js";
import type { FactorData } from "./factor-data.js";

/** How a flight came in: `fast` and `low` opened, but not cleanly. */
export type FlownOutcome = "clean" | "fast" | "low" | "grounded";

/** Where the delay as set comes from. `suggested`: nobody said, so nothing is learned of the delay. */
export type SetFrom = "given" | "findings" | "reading" | "choice" | "fixed" | "suggested";

/** The flight that is debriefed. */
export interface DebriefedFlight {
  readonly name: string;
  /** When it flew, as written; null: not known. */
  readonly flown: string | null;
  /** Which flight of the record, counted from 1, and of how many; null without a record. */
  readonly number: number | null;
  readonly of: number | null;
  /** The flyer wants nothing learned from it. */
  readonly excluded: { readonly reason: string; readonly when: string | null } | null;
}

/** What the record is worth. */
export interface RecordData {
  readonly file: string;
  readonly rows: number;
  /** Samples a second [1/s]. */
  readonly rate: number;
  /** One sigma of one height [m], and of one acceleration [m/s²]; null without an accelerometer. */
  readonly heightError: number;
  readonly accelerationError: number | null;
  readonly flaws: readonly RecordFlaw[];
  /** Every flight in the record: rough lift-off on the record's own clock [s] and top [m]. */
  readonly flights: readonly { readonly liftOff: number; readonly top: number }[];
}

/** A place in a flight: time from lift-off [s], height above the pad [m]. */
export interface EventPlace {
  readonly time: number;
  readonly height: number;
}

/** An event as it was found. */
export interface FlownEventData {
  /** From lift-off [s]. */
  readonly time: number;
  /** Above the pad [m]; null where it was not written down. */
  readonly height: number | null;
  /** One sigma [s], [m]; null where only written findings are left. */
  readonly timeError: number | null;
  readonly heightError: number | null;
  /** Null where it was not written down. */
  readonly reason: EventReason | null;
  /** Where it stood before the flyer moved it, from lift-off [s]. */
  readonly movedFrom: number | null;
}

/** An event as predicted and as flown. */
export interface DebriefEvent {
  readonly name: EventName;
  readonly predicted: EventPlace | null;
  readonly flown: FlownEventData | null;
  /** Flown less predicted [s], and one sigma of it; null where one of them is missing. */
  readonly difference: number | null;
  readonly differenceError: number | null;
  /** Flown less predicted [m]. */
  readonly heightDifference: number | null;
  readonly meaning: EventMeaning;
}

/** What the plan, as it was flown, said before the flight. */
export interface PredictedData {
  /** Odds at the delay that was set; null for a motor without delay. */
  readonly clean: number | null;
  readonly holds: number | null;
  /** Height of the top [m]. */
  readonly apogee: { readonly p05: number; readonly p50: number; readonly p95: number };
  /** Opening less top [s]. */
  readonly secondsFromApogee: { readonly p05: number; readonly p50: number; readonly p95: number } | null;
  /** One sigma of the delay that was set [s]; null for a motor without delay. */
  readonly delaySd: number | null;
  /** They were written down with the flight, not computed again. */
  readonly written: boolean;
}

/** The delay and the opening of a flight. */
export interface FlownDelayData {
  /** As set [s]; null for a motor without delay. */
  readonly set: number | null;
  readonly setFrom: SetFrom | null;
  readonly flown: FlownDelay;
  /** From burnout to the top [s]; null where one of them was not found. */
  readonly coast: number | null;
  readonly predictedCoast: number | null;
  /** Opening less top [s]; null without an opening. */
  readonly secondsFromApogee: number | null;
  /** Inside the 90 % range that was predicted; null where there is nothing to compare. */
  readonly openingInRange: boolean | null;
  /** Airspeed at the opening [m/s]: the vertical part as recorded, the rest by the flight that fits; null without an opening. */
  readonly openingSpeed: number | null;
  readonly openingHeight: number | null;
}

/** The top as flown, against the 90 % band. */
export interface FlownTopData {
  readonly height: number;
  /** One sigma [m]; null where only written findings are left. */
  readonly error: number | null;
  readonly inBand: boolean | null;
}

/** One state of knowledge: factors on what the documents say. */
export interface KnowledgeData {
  /** Factors: middle, and the ends of the 90 % interval; one sigma of the logarithm. */
  readonly drag: FactorData;
  /** A single motor's scatter is in it. */
  readonly impulse: FactorData;
  /** −1…1 */
  readonly correlation: number;
  /** At the delay that was set [s]: mean of the flown delay and its 90 % interval; null without a delay. */
  readonly delay: { readonly set: number; readonly mean: number; readonly low: number; readonly high: number } | null;
  readonly flights: Learned["flights"];
}

/** What was learned: before any flight, before this one, with this one. */
export interface LearnedData {
  readonly prior: KnowledgeData;
  readonly before: KnowledgeData;
  readonly after: KnowledgeData;
  /** As a plan takes it. */
  readonly learned: Learned;
  /** Why this flight taught nothing, or not all; empty: it taught drag, impulse and delay. */
  readonly untaught: readonly UntaughtCode[];
}

/** Why a flight teaches nothing, or nothing of one of them. */
export type UntaughtCode =
  | "excluded"
  | "no-findings"
  | "no-climb"
  | "no-delay"
  | "delay-bound"
  | "set-not-known"
  | "not-read"
  | "other-drag"
  | "other-rocket-and-motor";

/** The next flight's odds at one state of knowledge. */
export interface NextOddsData {
  /** Null for a motor without delay. */
  readonly toCut:
    | (CutData & {
        readonly odds: Odds;
        readonly reachesLeast: boolean;
        readonly reachesHolds: boolean;
        readonly firesFirst: number | null;
      })
    | null;
  readonly settings: readonly { readonly delay: number; readonly clean: number; readonly holds: number }[];
  readonly apogee: PredictedData["apogee"];
  /** One sigma of the delay at the setting to cut [s]. */
  readonly delaySd: number | null;
}

/** The next odds of the plan before and with this flight, from the same draws. */
export interface NextData {
  readonly plan: string;
  readonly before: NextOddsData;
  readonly after: NextOddsData;
  /** Odds, with this flight, of the delay that was to be cut before; null where none was. */
  readonly sameDelay: Odds | null;
}

/** A past flight, as it stands in the library. */
export interface PastFlightData {
  readonly file: string;
  readonly name: string;
  readonly flown: string | null;
  readonly rocket: string | null;
  readonly motor: string | null;
  readonly lot: string | null;
  /** The flight that is debriefed now. */
  readonly isThis: boolean;
  readonly excluded: string | null;
  readonly untaught: readonly UntaughtCode[];
  readonly drag: FactorData | null;
  readonly impulse: FactorData | null;
  readonly set: number | null;
  readonly delay: FlownDelay;
  readonly odds: number | null;
  readonly outcome: FlownOutcome | null;
  readonly top: number | null;
  readonly topBand: readonly [low: number, high: number] | null;
}

/** What is written into the flight document: SI units. */
export interface FindingsData {
  readonly set: number | null;
  /** One sigma of it that is not the motor's [s]; null: not known. */
  readonly setError: number | null;
  readonly delay: FlownDelay;
  readonly coast: number | null;
  readonly apogee: number | null;
  readonly openedBy: "motor" | "electronics" | null;
  readonly openedAt: number | null;
  readonly outcome: FlownOutcome | null;
  /** The flyer's own word, which the tool does not change. */
  readonly outcomeStated: boolean;
  readonly climb: ClimbData | null;
}

/** Curves for a picture: time from lift-off [s], height above the pad [m]. */
export interface DebriefCurves {
  readonly flown: { readonly time: readonly number[]; readonly height: readonly number[] };
  /** With the vertical speed [m/s]. */
  readonly predicted: {
    readonly time: readonly number[];
    readonly height: readonly number[];
    readonly speed: readonly number[];
  };
  /** Flown less predicted. */
  readonly residual: { readonly time: readonly number[]; readonly height: readonly number[] };
}

/** What to know of how it was read. */
export type DebriefNote =
  | "several-flights"
  | "opened-before-top"
  | "climb-not-fitted"
  | "outcome-stated"
  | "findings-only"
  | "plan-learned-more";

/** A debrief as plain data: SI units and codes. It survives a structured clone and JSON, and is what `debrief --json` prints. */
export interface DebriefData {
  readonly context: PlanContext;
  readonly flight: DebriefedFlight;
  /** Null for a flight of which only the findings are left. */
  readonly record: RecordData | null;
  readonly events: readonly DebriefEvent[];
  readonly predicted: PredictedData;
  readonly delay: FlownDelayData;
  readonly top: FlownTopData | null;
  /** Fit of the climb; null where it could not be fitted. Variances that the climb does not tell are null. */
  readonly climb: ClimbData | null;
  readonly findings: FindingsData;
  readonly learned: LearnedData;
  readonly next: NextData;
  /** Of all flights of the library that have odds and an outcome. */
  readonly calibration: Calibration;
  /** All flights of the library, this one last. */
  readonly past: readonly PastFlightData[];
  readonly curves: DebriefCurves | null;
  readonly notes: readonly DebriefNote[];
  /** Of past flights that could not be read; they teach nothing and block nothing. */
  readonly issues: readonly Issue[];
  readonly seed: number;
  readonly draws: number;
  readonly model: "pitching" | "aligned" | "rigid";
}

/** A climb's fit as factors. */
export interface ClimbData {
  readonly drag: FactorData | null;
  readonly impulse: FactorData | null;
  readonly correlation: number | null;
  /** Root mean square of what is left of the heights [m]. */
  readonly residual: number;
  readonly converged: boolean;
}
