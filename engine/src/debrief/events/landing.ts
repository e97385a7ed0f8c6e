import { dampedFit } from "../fit/damped-fit.js";
import { firstAtLeast, interpolated } from "../interpolated.js";
import { median } from "../record/rows.js";
import { type Lag, type Look, type Placed, rowsBetween } from "./look.js";
import { slowNoise } from "./slow-noise.js";

/** A record that ends on the way down tells the landing where no more than this is left [s]. */
const LONGEST_REST = 20;

/** Landing, and the steady descent before it [m/s]. */
export interface Landed {
  readonly placed: Placed | null;
  readonly descent: number;
}

/**
 * Where the descent's line meets the level after it. A record that ends before is carried on by its last descent, with an
 * error that grows with the way left; null where that is long.
 */
export function landingOf(look: Look, apogee: number, lag: Lag): Landed {
  const { record } = look;
  const { time, height, heightError } = record;
  const last = time[time.length - 1]!;
  const ending = rowsBetween(look, Math.max(apogee, last - 2), last);
  const level = median(ending.map((i) => height[i]!));
  const falling = (interpolated(time, height, last - 2) - level) / 1;
  const slack = Math.max(2, 5 * heightError);
  if (falling > slack + 0.5) {
    const descent = Math.max(1, slopeOver(look, Math.max(apogee, last - 4), last));
    const left = level - descent;
    const wait = Math.max(0, left) / descent;
    if (wait > LONGEST_REST) return { placed: null, descent };
    return {
      placed: { time: last + wait - lag.time, error: 0.3 + 0.15 * wait + 2 / descent, reason: "record-ends" },
      descent,
    };
  }
  let ground = level;
  let row = time.length - 1;
  // the level is first that of the last seconds, then of all that lies still
  for (let round = 0; round < 3; round++) {
    row = time.length - 1;
    while (row > 3 && time[row]! > apogee && !(look.good(row) && meanBefore(height, row) > ground + slack)) row--;
    const still = rowsBetween(look, time[row]! + 1, last);
    if (still.length > 4) ground = still.reduce((sum, i) => sum + height[i]!, 0) / still.length;
  }
  const descent = Math.max(1, slopeOver(look, Math.max(apogee + 0.5, time[row]! - 4), time[row]!));
  const guess = time[row]! + (height[row]! - ground) / descent;
  const reach = Math.max(3, 10 / record.rate);
  const rows = rowsBetween(look, Math.max(apogee + 1, guess - reach), guess + reach);
  if (rows.length < 8)
    return { placed: { time: guess - lag.time, error: 1, reason: "height-stops-changing" }, descent };
  const fit = dampedFit(
    ([at, speed, rest]) => Float64Array.from(rows, (i) => height[i]! - rest! - speed! * Math.max(0, at! - time[i]!)),
    [guess, descent, ground],
    { leastResidual: 0.7 * heightError, steps: [0.2, 0.5, 0.5] },
  );
  const [at, speed] = fit.parameters as [number, number];
  const seen = Math.abs(at - guess) < reach ? at : guess;
  return {
    placed: {
      time: seen - lag.time,
      error: Math.hypot(Math.sqrt(fit.covariance[0]!), lag.error, slowNoise(look) / Math.max(1, speed)),
      reason: "height-stops-changing",
    },
    descent: speed > 0.5 ? speed : descent,
  };
}

/** Mean of a height and the three before it: one that sticks out is no descent. */
const meanBefore = (height: Float64Array, row: number): number =>
  0.25 * (height[row]! + height[row - 1]! + height[row - 2]! + height[row - 3]!);

/** Descent over a stretch, by the means of its two halves [m/s]. */
export function slopeOver({ record, good }: Look, from: number, to: number): number {
  const { time, height } = record;
  const rows: number[] = [];
  for (let i = firstAtLeast(time, from); i < time.length && time[i]! <= to; i++) if (good(i)) rows.push(i);
  if (rows.length < 4) return 0;
  const half = rows.length >> 1;
  const meanOf = (values: Float64Array, part: number[]): number =>
    part.reduce((sum, i) => sum + values[i]!, 0) / part.length;
  const mid = (part: number[]): [number, number] => [meanOf(time, part), meanOf(height, part)];
  const [t1, h1] = mid(rows.slice(0, half));
  const [t2, h2] = mid(rows.slice(half));
  return t2 > t1 ? (h1 - h2) / (t2 - t1) : 0;
}
