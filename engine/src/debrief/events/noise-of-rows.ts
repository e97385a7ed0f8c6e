import { whitenerOf } from "../fit/whitener.js";
import { type Look, rowTimeError } from "./look.js";
import { gustsAgree, slowNoise } from "./slow-noise.js";

/** So much of a height's noise on the pad stands alone at least, as a share of its variance. */
const LEAST_ALONE = 0.25;
/** Height over which the air of the standard atmosphere thins by a factor e near the ground [m]. */
const THINNING = 10_400;

/** By how much more height an error of pressure is, up there where the air is thinner. */
export const thinnerAt = (height: number): number => Math.exp(Math.max(0, height) / THINNING);

/**
 * Noise of heights, as the pad tells it: each row's own, gusts that hang together, and what its own time is worth at its speed.
 *
 * @param off covariance of what else the heights do, at two times [m²]; left out: nothing
 */
export function noiseOfRows(
  look: Look,
  rows: readonly number[],
  off: (a: number, b: number) => number = () => 0,
): (residuals: Float64Array) => Float64Array {
  const { time, height, speed, heightError, rate } = look.record;
  const slow = slowNoise(look);
  const alone = Math.sqrt(Math.max(heightError ** 2 - slow ** 2, LEAST_ALONE * heightError ** 2));
  const late = rowTimeError(1 / rate);
  const times = Float64Array.from(rows, (row) => time[row]!);
  const thinner = Float64Array.from(rows, (row) => thinnerAt(height[row]!));
  return whitenerOf(
    Float64Array.from(rows, (row, i) => Math.hypot(alone * thinner[i]!, late * speed[row]!)),
    (i, j) =>
      slow * slow * thinner[i]! * thinner[j]! * gustsAgree(Math.abs(times[i]! - times[j]!)) + off(times[i]!, times[j]!),
  );
}
