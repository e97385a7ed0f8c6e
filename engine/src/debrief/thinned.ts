import { firstAtLeast } from "./interpolated.js";

/**
 * A long series thinned for a plot: of each bucket its lowest and highest point, so that no spike is lost.
 *
 * @param x rising
 * @param from left edge, in x; one point beyond each edge is kept where there is one
 * @param to right edge
 * @param most points wanted at most, ≥ 4
 * @returns points in the order of x; NaN heights are left out
 * @example
 * thinned(record.time, record.height, -1, 30, 800).x.length; // at most 800
 */
export function thinned(
  x: Float64Array,
  y: Float64Array,
  from: number,
  to: number,
  most: number,
): { x: Float64Array; y: Float64Array } {
  const first = Math.max(0, firstAtLeast(x, from) - 1);
  let last = firstAtLeast(x, to);
  if (last >= x.length) last = x.length - 1;
  const count = last - first + 1;
  const kept: number[] = [];
  if (count <= most) {
    for (let i = first; i <= last; i++) if (Number.isFinite(y[i]!)) kept.push(i);
  } else {
    const buckets = Math.max(1, Math.floor(most / 2) - 1);
    if (Number.isFinite(y[first]!)) kept.push(first);
    for (let b = 0; b < buckets; b++) {
      const start = first + 1 + Math.floor((b * (count - 2)) / buckets);
      const end = first + 1 + Math.floor(((b + 1) * (count - 2)) / buckets);
      const ends = extremes(y, start, end);
      if (ends !== null) kept.push(...(ends[0] === ends[1] ? [ends[0]] : ends));
    }
    if (Number.isFinite(y[last]!)) kept.push(last);
  }
  return { x: Float64Array.from(kept, (i) => x[i]!), y: Float64Array.from(kept, (i) => y[i]!) };
}

/** Indices of the lowest and highest value from `start` up to, not including, `end`, in rising order. */
function extremes(y: Float64Array, start: number, end: number): [number, number] | null {
  let low = -1;
  let high = -1;
  for (let i = start; i < end; i++) {
    const value = y[i]!;
    if (!Number.isFinite(value)) continue;
    if (low < 0 || value < y[low]!) low = i;
    if (high < 0 || value > y[high]!) high = i;
  }
  if (low < 0) return null;
  return low < high ? [low, high] : [high, low];
}
