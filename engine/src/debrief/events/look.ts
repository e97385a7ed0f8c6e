import type { EventHints } from "../event-hints.js";
import type { FlightRecord } from "../flight-record.js";
import type { EventReason, FoundEvent } from "../found-events.js";
import { firstAtLeast, interpolated } from "../interpolated.js";

/** A time placed on a record, before its height is read off. */
export interface Placed {
  readonly time: number;
  /** One sigma [s]. */
  readonly error: number;
  readonly reason: EventReason;
}

/** How far a barometer lags behind [s]; one sigma. */
export interface Lag {
  readonly time: number;
  readonly error: number;
}

/** What the search for one event looks at. */
export interface Look {
  readonly record: FlightRecord;
  readonly hints: EventHints;
  /** Rows whose height is the instrument's own: no spike, no gap's edge. */
  readonly good: (row: number) => boolean;
}

/** A vented bay with its sensor's filter follows within some 0.01…0.11 s. Common practice, no source. */
export const usualLag: Lag = Object.freeze({ time: 0.06, error: 0.03 });

/** An accelerometer's own filter delays it by some 0…0.014 s. Common practice, no source. */
export const accelerometerLag: Lag = Object.freeze({ time: 0.007, error: 0.0035 });

/** Static ports err by this share of the dynamic pressure, one sigma. Own default, no source; ports in a bad place err by more. */
export const portError = 0.001;

/** A thrust is of another shape at the same impulse: half waves over the burn, one sigma of each as a share. Own default, no source. */
export const shapeError = 0.04;

/** A row's own time errs by its rounding [s] and by a share of the spacing, one sigma each. Own defaults, no source. */
export const rowTimeError = (spacing: number): number => Math.hypot(0.003, 0.07 * spacing);

export function lookAt(record: FlightRecord, hints: EventHints): Look {
  const spoiled = new Uint8Array(record.time.length);
  for (const { kind, from, to } of record.flaws) {
    if (kind !== "spike" && kind !== "not-a-number") continue;
    for (let i = firstAtLeast(record.time, from); i < spoiled.length && record.time[i]! <= to; i++) spoiled[i] = 1;
  }
  return { record, hints, good: (row) => spoiled[row] === 0 };
}

/** Rows of own heights in a stretch of time, at most `most` of them, evenly taken. */
export function rowsBetween({ record, good }: Look, from: number, to: number, most = 400): number[] {
  const rows: number[] = [];
  for (let i = firstAtLeast(record.time, from); i < record.time.length && record.time[i]! <= to; i++)
    if (good(i)) rows.push(i);
  if (rows.length <= most) return rows;
  return Array.from({ length: most }, (_, k) => rows[Math.floor((k * rows.length) / most)]!);
}

/** Error of a time of which a record tells nothing [s]. */
const UNKNOWN = 60;

/** Reads the height off the record; its error grows with that of the time. */
export function eventAt(record: FlightRecord, placed: Placed | null, lag: Lag): FoundEvent | null {
  if (placed === null) return null;
  const { time, height, heightError } = record;
  const seen = placed.time + lag.time;
  const h = interpolated(time, height, seen);
  const slope = (interpolated(time, height, seen + 0.2) - interpolated(time, height, seen - 0.2)) / 0.4;
  const timeError = Number.isFinite(placed.error) ? Math.min(placed.error, UNKNOWN) : UNKNOWN;
  return {
    time: placed.time,
    timeError,
    height: h,
    heightError: Math.hypot(heightError, slope * timeError),
    reason: placed.reason,
  };
}

/**
 * What a flight of this kind is off its model at best: a share of the greatest height, hanging together over a share of the climb,
 * from rest at lift-off. Own defaults, no source: without them a fit would tell apart winds by centimetres.
 */
export const departure = Object.freeze({ share: 5e-4, together: 0.15 });

/** Covariance of a flight's departure at two times since lift-off [m²]: smooth, from rest at lift-off; `over`: how long it hangs together [s]. */
export function departureAgrees(highest: number, over: number): (a: number, b: number) => number {
  const variance = (departure.share * highest) ** 2;
  const bell = (u: number): number => Math.exp(-0.5 * u * u);
  return (a, b) => {
    const [x, y] = [a / over, b / over];
    return variance * (bell(x - y) - (1 + x * y) * bell(x) * bell(y));
  };
}
