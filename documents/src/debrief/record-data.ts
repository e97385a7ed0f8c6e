import type { RecordData } from "../answer/debrief-data.js";
import type { OpenedRecord } from "./open-record.js";

/** What a record is worth. */
export function recordData(file: string, { record, spans }: OpenedRecord): RecordData {
  return {
    file,
    rows: record.time.length,
    rate: record.rate,
    heightError: record.heightError,
    accelerationError: record.accelerationError,
    flaws: record.flaws,
    flights: spans.map(({ liftOff, top }) => ({ liftOff, top })),
  };
}
