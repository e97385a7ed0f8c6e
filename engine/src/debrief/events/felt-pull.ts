import { whitenerOf } from "../fit/whitener.js";
import { firstAtLeast } from "../interpolated.js";
import type { Look } from "./look.js";

const GRAVITY = 9.80665;
/** At most so many rows of it are looked at. */
const MOST = 100;
/** A rocket swings under its canopy: one sigma of what that takes off or adds, as a share of the pull, and how long it hangs together [s]: a pendulum of some 2 s. Own default, no source. */
const SWING = 0.25;
const SWINGS_OVER = 0.3;
/** What a canopy does beside its growth from row to row, as a share of the pull. Own default, no source. */
const UNSTEADY = 0.05;

/** What an accelerometer feels along the axis while a canopy fills. */
export interface FeltPull {
  readonly times: Float64Array;
  /** 1 g where it hangs at rest along the axis [m/s²]. */
  readonly felt: Float64Array;
  /** Makes what is left of it independent, by the pull that a path has at those times. */
  readonly noiseAt: (pull: Float64Array) => (residuals: Float64Array) => Float64Array;
}

/** The felt pull in a stretch of time; null without an accelerometer, or of too few rows. */
export function feltPull({ record }: Look, from: number, to: number): FeltPull | null {
  const { time, acceleration, accelerationError } = record;
  if (acceleration === null) return null;
  const [begin, end] = [firstAtLeast(time, from), firstAtLeast(time, to)];
  const every = Math.ceil((end - begin) / MOST);
  const rows: number[] = [];
  for (let i = begin; i < end; i += every) rows.push(i);
  if (rows.length < 8) return null;
  const times = Float64Array.from(rows, (row) => time[row]!);
  return {
    times,
    felt: Float64Array.from(rows, (row) => acceleration[row]! + GRAVITY),
    noiseAt: (pull) =>
      whitenerOf(
        pull.map((x) => Math.hypot(accelerationError ?? 1, UNSTEADY * x)),
        (i, j) => {
          const apart = (times[i]! - times[j]!) / SWINGS_OVER;
          return SWING * SWING * Math.abs(pull[i]! * pull[j]!) * Math.exp(-0.5 * apart * apart);
        },
      ),
  };
}

/** How much of the pull beyond its weight acts along the axis, and what is felt at rest [m/s²]: a plain line of felt over pull. */
export function hangOf({ felt }: FeltPull, pull: Float64Array): [number, number] {
  const n = felt.length;
  const mean = (values: Float64Array): number => values.reduce((sum, x) => sum + x, 0) / n;
  const [x0, y0] = [mean(pull), mean(felt)];
  let [xy, xx] = [0, 1e-9];
  pull.forEach((x, i) => {
    xy += (x - x0) * (felt[i]! - y0);
    xx += (x - x0) ** 2;
  });
  return [xy / xx, y0 + (xy / xx) * (GRAVITY - x0)];
}
