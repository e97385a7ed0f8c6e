import {
  burnOf,
  type DecisionInputs,
  type EventHints,
  type EventName,
  eventNames,
  type FlightRecord,
  type FlightSpan,
  type FoundEvents,
  fillDistance,
  findEvents,
  flightRecord,
  flightsIn,
  type LogSamples,
  moveEvent,
} from "@delaywright/engine";
import type { Fault } from "../issue.js";

/** Which flight of a record, and what the flyer moved in it. */
export interface RecordChoice {
  /** From 1, as `flightsIn` orders them; left out: the highest. */
  readonly number?: number;
  /** Events that the flyer moved: times on the clock of the flight's record [s]. */
  readonly moved?: { readonly [Name in EventName]?: number };
}

/** One flight of a record with its events. */
export interface OpenedRecord {
  readonly record: FlightRecord;
  readonly events: FoundEvents;
  /** As they were found before the flyer moved any. */
  readonly found: FoundEvents;
  readonly spans: readonly FlightSpan[];
  /** From 1. */
  readonly number: number;
}

/**
 * Finds one flight in an altimeter's samples, and its events.
 *
 * @param samples as `readLog` gives them
 * @param inputs of the plan as flown: they narrow where events are looked for
 * @param choice which flight, and what the flyer moved
 * @returns the flight, or what is wrong: no flight, none of that number, an event moved out of its order
 * @example
 * const opened = openRecord(samples, inputs);
 * opened.ok && opened.events.apogee?.height; // 587
 */
export function openRecord(
  samples: LogSamples,
  inputs: DecisionInputs,
  choice: RecordChoice = {},
): ({ readonly ok: true } & OpenedRecord) | { readonly ok: false; readonly faults: readonly Fault[] } {
  const spans = flightsIn(samples);
  if (spans.length === 0) return { ok: false, faults: [noFlight] };
  const number = choice.number ?? highest(spans);
  const span = spans[number - 1];
  if (span === undefined) return { ok: false, faults: [noSuchFlight(number, spans.length)] };
  const record = flightRecord(samples, span, inputs.air);
  const found = findEvents(record, eventHints(inputs));
  const moved = movedEvents(record, found, choice.moved ?? {});
  return moved.faults.length > 0
    ? { ok: false, faults: moved.faults }
    : { ok: true, record, events: moved.events, found, spans, number };
}

/** What a plan knows of a flight before its record is looked at. */
export function eventHints({ guide, motor, recovery }: DecisionInputs): EventHints {
  const { drogue, main, lineStretch } = recovery;
  return {
    guideTravel: guide.travel,
    burnTime: burnOf(motor.thrust).end,
    thrust: motor.thrust,
    lineStretch,
    ...(drogue === undefined || main.opensAt === undefined
      ? {}
      : { mainOpensAt: main.opensAt, fillDistances: { main: fillDistance(main.canopy) } }),
  };
}

/** The number of the flight that a record is opened at: the one asked for, else the highest; undefined where there is none. */
export function flightNumber(samples: LogSamples, asked?: number): number | undefined {
  const spans = asked === undefined ? flightsIn(samples) : [];
  return asked ?? (spans.length === 0 ? undefined : highest(spans));
}

function highest(spans: readonly FlightSpan[]): number {
  const tops = spans.map(({ top }) => top);
  return tops.indexOf(Math.max(...tops)) + 1;
}

function movedEvents(
  record: FlightRecord,
  found: FoundEvents,
  moved: NonNullable<RecordChoice["moved"]>,
): { readonly events: FoundEvents; readonly faults: readonly Fault[] } {
  let events = found;
  const faults: Fault[] = [];
  for (const name of eventNames) {
    const time = moved[name];
    if (time === undefined) continue;
    try {
      events = moveEvent(record, events, name, time);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      faults.push({
        path: `events.${name}`,
        code: "out-of-order",
        found: `${time} s`,
        accepted: "a time inside the record, between the events before and after it",
        example: "",
      });
    }
  }
  return { events, faults };
}

const noFlight: Fault = {
  path: "",
  code: "no-flight",
  found: "no climb and fall",
  accepted: "a record in which heights rise from the pad and come down again",
  example: "",
};

function noSuchFlight(number: number, of: number): Fault {
  return {
    path: "",
    code: "no-such-flight",
    found: String(number),
    accepted: of === 1 ? "1: the record holds one flight" : `1 to ${of}: the record holds ${of} flights`,
    example: "1",
  };
}
