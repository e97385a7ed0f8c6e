import { firstAtLeast } from "../interpolated.js";

/** Steps between two rows. */
const PARTS = 10;
/** The thrust rises over this share of the spacing in which it begins. */
const RISE_SHARE = 0.5;

/** Speed and way by an acceleration, on its rows. */
export interface Pushed {
  /** First row after the start. */
  readonly from: number;
  readonly speed: Float64Array;
  readonly way: Float64Array;
}

/** Integrates an acceleration twice from a start at rest, which may lie between two rows: 0 before. */
export function pushedFrom(time: Float64Array, acceleration: Float64Array, start: number, until: number): Pushed {
  const from = Math.max(1, firstAtLeast(time, start));
  const speed = new Float64Array(time.length);
  const way = new Float64Array(time.length);
  let [v, s] = [0, 0];
  for (let i = from; i < time.length && time[i]! <= until; i++) {
    const first = i === from;
    const begin = first ? start : time[i - 1]!;
    const [a, b] = [first ? 0 : acceleration[i - 1]!, acceleration[i]!];
    const step = (time[i]! - begin) / PARTS;
    for (let k = 0; k < PARTS; k++) {
      const part = (k + 0.5) / PARTS;
      const push = a + (b - a) * (first ? Math.min(1, part / RISE_SHARE) : part);
      s += v * step + 0.5 * push * step * step;
      v += push * step;
    }
    speed[i] = v;
    way[i] = s;
  }
  return { from, speed, way };
}
