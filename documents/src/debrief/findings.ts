import {
  type ClimbFit,
  type EventName,
  type EventReason,
  eventNames,
  type FlownDelay,
  type FoundEvents,
} from "@delaywright/engine";
import type { FlownOutcome } from "../answer/debrief-data.js";
import type { FlightDocument } from "../kinds/flight/schema.js";

/** What a flight document holds of its findings. */
export type WrittenFindings = NonNullable<FlightDocument["findings"]>;

/** What was found out about a flight, SI units; times are counted from lift-off. */
export interface Findings {
  readonly set: number | null;
  /** One sigma of it that is not the motor's [s]; null: not known. */
  readonly setError: number | null;
  readonly delay: FlownDelay;
  readonly openedBy: "motor" | "electronics" | null;
  /** [s] */
  readonly openedAt: number | null;
  readonly coast: number | null;
  /** [m] */
  readonly apogee: number | null;
  readonly outcome: FlownOutcome | null;
  /** The flyer's own word, which no record overrules. */
  readonly outcomeStated: boolean;
  readonly events: readonly FoundFinding[];
  readonly climb: ClimbFit | null;
}

/** One event, counted from lift-off. Errors are null where they were not written down. */
export interface FoundFinding {
  readonly name: EventName;
  readonly time: number;
  readonly timeError: number | null;
  readonly height: number | null;
  readonly heightError: number | null;
  readonly reason: EventReason | null;
  readonly movedFrom: number | null;
}

/** Events of a record, counted from its lift-off, with where they stood before the flyer moved them. */
export function eventFindings(events: FoundEvents, found: FoundEvents): FoundFinding[] {
  const zero = events.liftOff?.time ?? 0;
  return eventNames.flatMap((name) => {
    const event = events[name];
    if (event === null) return [];
    const { timeError, height, heightError, reason } = event;
    const before = reason === "moved-by-flyer" ? found[name] : null;
    return [
      {
        name,
        time: event.time - zero,
        timeError,
        height,
        heightError,
        reason,
        movedFrom: before === null ? null : before.time - zero,
      },
    ];
  });
}
