import {
  againstFlight,
  type FlightRecord,
  type FlightResult,
  type FoundEvents,
  type PredictedOpening,
} from "@delaywright/engine";
import type { DebriefCurves, DebriefEvent } from "../answer/debrief-data.js";
import type { FoundFinding } from "./findings.js";

/** Every event beside its prediction, and what is left between the heights; times from lift-off. */
export function eventRows(
  flight: FlightResult,
  { record, events }: { readonly record: FlightRecord | null; readonly events: FoundEvents },
  written: readonly FoundFinding[],
  opening: PredictedOpening,
): { readonly events: readonly DebriefEvent[]; readonly residual: DebriefCurves["residual"] } {
  const against = againstFlight(flight, record, events, opening);
  const zero = events.liftOff?.time ?? 0;
  const rows = against.events.map((row): DebriefEvent => {
    const found = written.find(({ name }) => name === row.name);
    return {
      name: row.name,
      predicted: row.predicted && { time: row.predicted.time - zero, height: row.predicted.height },
      flown: found === undefined ? null : flownEvent(found),
      difference: row.difference,
      differenceError: row.differenceError,
      heightDifference: found?.height == null ? null : row.heightDifference,
      meaning: row.meaning,
    };
  });
  const { time, height } = against.residual;
  return {
    events: rows,
    residual: { time: Array.from(time, (each) => each - zero), height: Array.from(height) },
  };
}

function flownEvent({ name: _, ...event }: FoundFinding): NonNullable<DebriefEvent["flown"]> {
  return event;
}
