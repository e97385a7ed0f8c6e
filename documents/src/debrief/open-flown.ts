import type { DecisionInputs, LogSamples } from "@delaywright/engine";
import type { Fault } from "../issue.js";
import type { FlightDocument } from "../kinds/flight/schema.js";
import { movedBefore } from "./moved-before.js";
import { type OpenedRecord, openRecord, type RecordChoice } from "./open-record.js";

/** A flight's record, opened: with the events that the flyer moves now, or had moved before. */
export interface OpenedFlight extends OpenedRecord {
  readonly moved: NonNullable<RecordChoice["moved"]>;
}

/**
 * Opens the record of a flight with the events that the flyer moves now; where none is said, those that were written down as moved.
 *
 * @param record its samples, which flight of them, and what is moved now
 * @param findings of the flight's document
 * @param inputs of the plan as flown, nothing learned
 */
export function openFlown(
  record: RecordChoice & { readonly samples: LogSamples },
  findings: FlightDocument["findings"],
  inputs: DecisionInputs,
): ({ readonly ok: true } & OpenedFlight) | { readonly ok: false; readonly faults: readonly Fault[] } {
  const opened = openRecord(record.samples, inputs, record);
  if (!opened.ok || record.moved !== undefined || findings === undefined)
    return opened.ok ? { ...opened, moved: record.moved ?? {} } : opened;
  const moved = movedBefore(findings, opened.found);
  if (Object.keys(moved).length === 0) return { ...opened, moved };
  const again = openRecord(record.samples, inputs, { ...record, moved });
  return again.ok ? { ...again, moved } : again;
}
