import { firstAtLeast } from "../interpolated.js";

/** Points of one window at most: longer ones are taken at a stride, so that the work stays linear in rows. */
const MOST_POINTS = 41;

/**
 * Slopes by a local quadratic through the points on both sides (Savitzky and Golay's filter on uneven times), never across
 * a break: there the window is one-sided, so that nothing is smeared over it.
 *
 * @param half half-width of the window [s]; widened where it holds fewer than 5 points
 * @param breaks rising [s]
 * @source A. Savitzky, M. J. E. Golay, Anal. Chem. 36 (1964) 1627; on uneven times the least squares are solved anew
 * @example
 * localSlopes(Float64Array.of(0, 1, 2, 3, 4), Float64Array.of(0, 1, 4, 9, 16), 2, [])[2]; // 4
 */
export function localSlopes(
  time: Float64Array,
  values: Float64Array,
  half: number,
  breaks: readonly number[],
): Float64Array {
  const n = time.length;
  const slopes = new Float64Array(n);
  const edges = [0, ...breaks.map((b) => firstAtLeast(time, b)), n];
  for (let e = 1; e < edges.length; e++) {
    const start = edges[e - 1]!;
    const end = edges[e]!;
    let from = start;
    let to = start;
    for (let i = start; i < end; i++) {
      while (time[from]! < time[i]! - half) from++;
      while (to < end && time[to]! <= time[i]! + half) to++;
      let [low, high] = [from, to];
      while (high - low < 5 && (low > start || high < end)) {
        if (low > start) low--;
        if (high < end) high++;
      }
      slopes[i] = slopeAt(time, values, low, high, i);
    }
  }
  return slopes;
}

function slopeAt(time: Float64Array, values: Float64Array, low: number, high: number, at: number): number {
  const stride = Math.max(1, Math.ceil((high - low) / MOST_POINTS));
  const reach = Math.max(time[high - 1]! - time[at]!, time[at]! - time[low]!) || 1;
  let [s0, s1, s2, s3, s4, y0, y1, y2] = [0, 0, 0, 0, 0, 0, 0, 0];
  for (let i = low + ((at - low) % stride); i < high; i += stride) {
    const u = (time[i]! - time[at]!) / reach;
    const w = 1 - 0.9 * u * u;
    const y = values[i]! - values[at]!;
    s0 += w;
    s1 += w * u;
    s2 += w * u * u;
    s3 += w * u * u * u;
    s4 += w * u * u * u * u;
    y0 += w * y;
    y1 += w * u * y;
    y2 += w * u * u * y;
  }
  const det = s0 * (s2 * s4 - s3 * s3) - s1 * (s1 * s4 - s2 * s3) + s2 * (s1 * s3 - s2 * s2);
  if (Math.abs(det) > 1e-9 * s0 * s2 * s4)
    return (s0 * (y1 * s4 - y2 * s3) - y0 * (s1 * s4 - s2 * s3) + s2 * (s1 * y2 - s2 * y1)) / det / reach;
  const line = s0 * s2 - s1 * s1;
  return line > 1e-12 ? (s0 * y1 - s1 * y0) / line / reach : 0;
}
