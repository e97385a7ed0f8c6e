import type { LogSamples } from "../log-samples.js";

/** From what a record's heights are taken. */
export type HeightSource = "pressure" | "height" | "altitude" | "speed" | "acceleration";

/** Least span of a column that moved [m], [Pa], [m/s], [m/s²]. */
const leastSpan: Readonly<Record<HeightSource, number>> = {
  pressure: 120,
  height: 10,
  altitude: 10,
  speed: 8,
  acceleration: 12,
};

/**
 * The best column for heights: pressure before an instrument's own height, that before altitude, speed and acceleration.
 * Null where none of them moves.
 */
export function heightSource(samples: LogSamples, from = 0, to = samples.time.length): HeightSource | null {
  for (const source of ["pressure", "height", "altitude", "speed", "acceleration"] as const)
    if (moves(samples[source], from, to, leastSpan[source])) return source;
  return null;
}

function moves(column: Float64Array | undefined, from: number, to: number, least: number): boolean {
  if (column === undefined) return false;
  let count = 0;
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = from; i < to; i++) {
    const x = column[i]!;
    if (!Number.isFinite(x)) continue;
    count++;
    if (x < low) low = x;
    if (x > high) high = x;
  }
  return count >= 20 && count >= (to - from) / 50 && high - low >= least;
}
