import type { Descent } from "../flight/descent.js";
import type { FlightResult } from "../flight/result.js";
import type { FlightRecord } from "./flight-record.js";
import { type EventName, eventNames, type FoundEvent, type FoundEvents } from "./found-events.js";
import { firstAtLeast } from "./interpolated.js";
import { thinned } from "./thinned.js";

/** What the difference between an event and its prediction means. Codes: the faces word them. */
export type EventMeaning =
  | "as-predicted"
  | "not-found"
  | "not-predicted"
  | "starts-clock"
  | "slow-off-guide"
  | "fast-off-guide"
  | "burnt-longer"
  | "burnt-shorter"
  | "top-higher"
  | "top-lower"
  | "top-earlier"
  | "top-later"
  | "delay-longer"
  | "delay-shorter"
  | "opened-early"
  | "opened-late"
  | "main-early"
  | "main-late"
  | "down-early"
  | "down-late";

/** A place in a flight: on the record's clock [s], above the pad [m]. */
export interface PredictedEvent {
  readonly time: number;
  readonly height: number;
}

/** One event, predicted and flown. */
export interface EventDifference {
  readonly name: EventName;
  readonly predicted: PredictedEvent | null;
  readonly flown: FoundEvent | null;
  /** Flown less predicted, both from lift-off [s]; null where one is missing. */
  readonly difference: number | null;
  /** One sigma of it, of the record alone [s]. */
  readonly differenceError: number | null;
  /** Flown less predicted [m]. */
  readonly heightDifference: number | null;
  readonly meaning: EventMeaning;
}

/** A flight beside its prediction. */
export interface AgainstFlight {
  /** Every event in the order of a flight. */
  readonly events: readonly EventDifference[];
  /** Height flown less predicted, from lift-off to the first opening or landing; thinned, on the record's clock. */
  readonly residual: { readonly time: Float64Array; readonly height: Float64Array };
}

/** How the rocket was to be opened. */
export interface PredictedOpening {
  /** The flight opened at the delay as set; null: it comes down unopened. */
  readonly opened: Descent | null;
  /** Whether the charge that opens it is the motor's, timed by the delay. */
  readonly byDelay: boolean;
}

const mostResiduals = 800;

/** A difference within so many sigmas is as predicted. */
const sigmas = 2;

/** Beside the record's errors: what no flyer would call a difference [s], and share of the height. Own defaults, no source. */
const small = Object.freeze({ time: 0.1, height: 0.01 });

function predictedEvents(flight: FlightResult, opening: PredictedOpening | undefined) {
  const { events } = flight;
  const at = (event: { readonly time: number; readonly position: readonly number[] } | null) =>
    event && { time: event.time, height: event.position[2]! };
  const openings = opening?.opened?.openings ?? [];
  const landing =
    opening?.opened?.landing ?? (opening === undefined || opening.opened === null ? events.landing : null);
  return {
    liftOff: at(events.liftOff),
    guideExit: at(events.guideExit),
    burnout: at(events.burnout),
    apogee: at(events.apogee),
    opening: openings[0] ? { time: openings[0].time, height: openings[0].height } : null,
    main: openings[1] ? { time: openings[1].time, height: openings[1].height } : null,
    landing: at(landing),
  };
}

const whenLate: Readonly<
  Record<Exclude<EventName, "liftOff" | "apogee">, readonly [early: EventMeaning, late: EventMeaning]>
> = {
  guideExit: ["fast-off-guide", "slow-off-guide"],
  burnout: ["burnt-shorter", "burnt-longer"],
  opening: ["opened-early", "opened-late"],
  main: ["main-early", "main-late"],
  landing: ["down-early", "down-late"],
};

function meaningOf(name: EventName, row: Omit<EventDifference, "name" | "meaning">, byDelay: boolean): EventMeaning {
  const { predicted, flown, difference, differenceError, heightDifference } = row;
  if (flown === null) return "not-found";
  if (predicted === null || difference === null || heightDifference === null) return "not-predicted";
  if (name === "liftOff") return "starts-clock";
  if (name === "apogee") {
    const noticed = Math.hypot(sigmas * flown.heightError, small.height * predicted.height);
    if (Math.abs(heightDifference) > noticed) return heightDifference > 0 ? "top-higher" : "top-lower";
  }
  if (Math.abs(difference) <= Math.hypot(sigmas * (differenceError ?? 0), small.time)) return "as-predicted";
  if (name === "apogee") return difference > 0 ? "top-later" : "top-earlier";
  if (name === "opening" && byDelay) return difference > 0 ? "delay-longer" : "delay-shorter";
  return whenLate[name][difference > 0 ? 1 : 0];
}

/**
 * A flight beside its prediction: every event with its difference and what that means, and what is left between the heights.
 *
 * Both clocks are laid together at lift-off. Without a lift-off in the record its own zero stands for it.
 *
 * @param flight as planned, or with what was learned
 * @param record null: its events are all that is left of it
 * @param opening how it was to be opened; left out: not at all, and nothing is said of openings
 * @example
 * againstFlight(flight, record, events).events.find(({ name }) => name === "apogee")?.meaning; // "top-lower"
 */
export function againstFlight(
  flight: FlightResult,
  record: FlightRecord | null,
  events: FoundEvents,
  opening?: PredictedOpening,
): AgainstFlight {
  const planned = predictedEvents(flight, opening);
  const shift = (events.liftOff?.time ?? 0) - (planned.liftOff?.time ?? 0);
  const rows = eventNames.map((name): EventDifference => {
    const flown = events[name];
    const expected = planned[name];
    const predicted = expected && { time: expected.time + shift, height: expected.height };
    const both = flown !== null && predicted !== null;
    const row = {
      predicted,
      flown,
      difference: both ? flown.time - predicted.time : null,
      differenceError: both
        ? Math.hypot(flown.timeError, name === "liftOff" ? 0 : (events.liftOff?.timeError ?? 0))
        : null,
      heightDifference: both ? flown.height - predicted.height : null,
    };
    return { name, ...row, meaning: meaningOf(name, row, opening?.byDelay ?? true) };
  });
  return { events: rows, residual: record === null ? noResidual() : residualOf(flight, record, events, shift) };
}

const noResidual = (): AgainstFlight["residual"] => ({ time: new Float64Array(), height: new Float64Array() });

function residualOf(flight: FlightResult, record: FlightRecord, events: FoundEvents, shift: number) {
  const from = (flight.events.liftOff?.time ?? 0) + shift;
  const to = Math.min(
    (flight.events.landing?.time ?? 0) + shift,
    events.opening?.time ?? Number.POSITIVE_INFINITY,
    events.landing?.time ?? Number.POSITIVE_INFINITY,
  );
  const first = firstAtLeast(record.time, from);
  const time = record.time.slice(first, Math.max(first, firstAtLeast(record.time, to)));
  if (flight.legs.length === 0 || time.length === 0) return noResidual();
  const height = time.map((t, i) => record.height[first + i]! - flight.at(t - shift).position[2]);
  const { x, y } = thinned(time, height, from, to, mostResiduals);
  return { time: x, height: y };
}
