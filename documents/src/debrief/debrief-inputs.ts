import type { LogSamples } from "@delaywright/engine";
import type { FlownOutcome } from "../answer/debrief-data.js";
import type { Issue } from "../issue.js";
import type { FlightDocument } from "../kinds/flight/schema.js";
import type { PlanParts } from "../load-plan.js";
import type { RecordChoice } from "./open-record.js";
import type { PastFlight } from "./past-flight.js";

/** A record to debrief. */
export interface DebriefRecord extends RecordChoice {
  readonly file: string;
  readonly samples: LogSamples;
}

/** What a debrief is made from. */
export interface DebriefInputs {
  /** The plan as it was flown. */
  readonly flown: PlanParts;
  /** The plan whose next odds are asked about; left out: the same. */
  readonly next?: PlanParts;
  /** The flight's document as it is so far; its findings stand in where there is no record. */
  readonly flight: FlightDocument;
  /** Where it stands. */
  readonly file: string;
  readonly record?: DebriefRecord;
  /** Delay as set [s]; left out: as the documents say. */
  readonly set?: number;
  /** How it came in, in the flyer's own word; left out: as written, else as the record tells. */
  readonly outcome?: FlownOutcome;
  /** Every other flight of the library, in any order. */
  readonly past: readonly PastFlight[];
  /** Of files of past flights that could not be read. */
  readonly issues?: readonly Issue[];
}
