import type { Doubt, Issue, Loaded } from "@delaywright/documents";
import type { BayFindings, CutPlan, Descent, FlightResult, StaticPortFindings, Warning } from "@delaywright/engine";

/** What fired the opening. */
export interface Fired {
  readonly by: "motor charge" | "electronics";
  /** Delay as set [s]; null for electronics. */
  readonly delay: number | null;
  /** Time of firing and of line stretch, from ignition [s]. */
  readonly fires: number;
  readonly opens: number;
}

/** One flight with its opening. */
export interface Flown {
  readonly result: FlightResult;
  readonly fired: Fired | null;
  /** Null where it is never opened, or lands before that. */
  readonly descent: Descent | null;
  readonly draw: number | null;
  readonly seed: number;
  /** Where it was reckoned beyond what the models were held against, and the guesses that it rests on. */
  readonly warnings: readonly Warning[];
  /** The margin that the plan's rules ask for [calibres]; null: none. */
  readonly leastMargin: number | null;
}

/** A delay that is wanted, and the settings nearest to it. */
export interface Wanted {
  readonly delay: number;
  readonly setting: CutPlan | null;
  /** The nearest that can be made, longer and shorter; null where there is none. */
  readonly longer: CutPlan | null;
  readonly shorter: CutPlan | null;
}

/** A limit of the motor's maker that a reading passes [s]. */
export interface PassedLimit {
  readonly limit: "most-removed" | "least-left";
  readonly allowed: number;
  readonly found: number;
}

/** What was found in one file and in those it leads to. */
export interface CheckedFile {
  readonly file: string;
  readonly state: Loaded["state"];
  readonly kind: string | null;
  readonly issues: readonly Issue[];
  /** Unlikely, but blocking nothing. */
  readonly doubts: readonly Doubt[];
}

/** What `charge` found: SI units and codes, as `charge --json` prints it. */
export interface ChargeData {
  readonly rocket: string;
  /** Null where no motor was named. */
  readonly motor: string | null;
  readonly bay: BayFindings;
  readonly staticPorts: StaticPortFindings | null;
}
