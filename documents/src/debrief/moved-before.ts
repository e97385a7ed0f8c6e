import type { FoundEvents } from "@delaywright/engine";
import type { Findings, WrittenFindings } from "./findings.js";
import type { RecordChoice } from "./open-record.js";
import { readFindings } from "./read-findings.js";

/**
 * Events that the flyer moved before, as they were written down with the flight, back on the clock of its record.
 *
 * @param written findings of the flight's document: times from lift-off
 * @param found events of the record before any was moved
 */
export function movedBefore(written: WrittenFindings, found: FoundEvents): NonNullable<RecordChoice["moved"]> {
  const moved = readFindings(written).events.filter(({ reason }) => reason === "moved-by-flyer");
  const zero = (found.liftOff?.time ?? 0) + liftOffMoved(moved);
  return Object.fromEntries(moved.map(({ name, time }) => [name, zero + time]));
}

/** How far the lift-off itself was moved [s]: it counts as zero, and keeps where it had stood. */
function liftOffMoved(moved: Findings["events"]): number {
  const liftOff = moved.find(({ name }) => name === "liftOff");
  return liftOff?.movedFrom == null ? 0 : liftOff.time - liftOff.movedFrom;
}
