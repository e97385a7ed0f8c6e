import { type EventName, eventNames, findEvents, flightRecord, flightsIn } from "../../src/index.js";
import { type LogClass, type SyntheticLog, syntheticLog } from "./synthetic-log.js";

/** One event of one synthetic flight: how far off, and how far off it said it might be. */
export interface EventMiss {
  readonly seed: number;
  readonly name: EventName;
  /** Found minus true [s]; null: not found. */
  readonly miss: number | null;
  readonly sigma: number;
  readonly reason: string;
  readonly accelerometer: boolean;
}

/** Finds the events of one synthetic record and compares them with its truth. */
export function missesOf(log: SyntheticLog, seed: number): EventMiss[] {
  const { samples, truth, hints, flight, instrument } = log;
  const spans = flightsIn(samples);
  const span = spans[0];
  const accelerometer = instrument.accelerometer !== null;
  if (span === undefined || spans.length !== 1)
    return eventNames.map((name) => ({
      seed,
      name,
      miss: null,
      sigma: 0,
      reason: `${spans.length} flights`,
      accelerometer,
    }));
  const record = flightRecord(samples, span, flight.planned.air);
  const events = findEvents(record, hints);
  return eventNames.flatMap((name) => {
    const wanted = truth[name];
    if (wanted === null) return [];
    const event = events[name];
    return {
      seed,
      name,
      miss: event === null ? null : event.time + record.zero - wanted,
      sigma: event?.timeError ?? 0,
      reason: event?.reason ?? "not found",
      accelerometer,
    };
  });
}

/** What many flights show of one event. */
export interface EventFigures {
  readonly name: EventName;
  readonly count: number;
  /** Share found within the tolerance, and found at all. */
  readonly within: number;
  readonly found: number;
  /** Mean miss and its standard error [s]; of the flights found. */
  readonly bias: number;
  readonly biasError: number;
  readonly rootMeanSquare: number;
  readonly largest: number;
  /** Share of the 90 % intervals that hold the truth. */
  readonly coverage: number;
}

/** Half a 90 % interval of a normal distribution, in sigma. */
export const NINETY = 1.6448536269514722;

export function figuresOf(name: EventName, misses: readonly EventMiss[], tolerance: number): EventFigures {
  const own = misses.filter((m) => m.name === name);
  const found = own.filter((m): m is EventMiss & { miss: number } => m.miss !== null);
  const n = found.length;
  const bias = found.reduce((sum, m) => sum + m.miss, 0) / n;
  const squares = found.reduce((sum, m) => sum + m.miss ** 2, 0) / n;
  return {
    name,
    count: own.length,
    within: found.filter((m) => Math.abs(m.miss) <= tolerance).length / own.length,
    found: n / own.length,
    bias,
    biasError: Math.sqrt(Math.max(0, squares - bias * bias) / n),
    rootMeanSquare: Math.sqrt(squares),
    largest: found.reduce((most, m) => Math.max(most, Math.abs(m.miss)), 0),
    coverage: found.filter((m) => Math.abs(m.miss) <= NINETY * m.sigma).length / n,
  };
}

/** Event times promised within so much [s]. */
export const promised: Readonly<Record<LogClass, number>> = { clean: 0.1, rough: 0.3 };

/** Finds the events of many synthetic records, one a seed. */
export function studied(kind: LogClass, from: number, count: number): EventMiss[] {
  return Array.from({ length: count }, (_, i) => missesOf(syntheticLog(from + i, kind), from + i)).flat();
}
