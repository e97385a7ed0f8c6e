import { errorByNoise } from "../fit/slope-errors.js";
import { firstAtLeast } from "../interpolated.js";
import type { Look } from "./look.js";

/** Gusts at the ports hang together for 0.5…3 s, not known how long: the middles of five parts of it, each as likely. Own default, no source. */
const slowTimes: readonly number[] = Object.freeze([0.75, 1.25, 1.75, 2.25, 2.75]);

/** Correlation of gusts so far apart [s]. */
export const gustsAgree = (apart: number): number =>
  slowTimes.reduce((sum, time) => sum + Math.exp(-apart / time), 0) / slowTimes.length;

/** One sigma of a sum of values by gusts of unit sigma; see `errorByNoise`. */
export const errorByGusts = (weights: Float64Array, times: Float64Array): number =>
  Math.hypot(...slowTimes.map((over) => errorByNoise(weights, times, over))) / Math.sqrt(slowTimes.length);

const meanTime = slowTimes.reduce((sum, time) => sum + time, 0) / slowTimes.length;

/** Length of the means that are compared, and of the stretch on the pad that is looked at [s]. */
const MEAN = 0.5;
const LONGEST = 30;
/** What is believed before the pad is looked at, as a share of one height's error, and the worth of that in independent means. */
const SHARE = 0.4;
const WORTH = 2;
/** Half a 90 % interval of a normal, in sigma. */
const NINETY = 1.645;

/**
 * One sigma of the noise that hangs together [m]: gusts at the ports, from means over the stretch on the pad. What such a stretch
 * hides, since its own mean is taken off, is given back. Few independent means tell a size badly: it is widened so that a 90 %
 * interval of a normal is that of Student's t with as many.
 *
 * @source variance of the mean of exponentially correlated noise over a time: closed form; Student's t by the normal:
 * M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions (1964), 26.7.5, first term, memory
 */
export function slowNoise({ record }: Pick<Look, "record">): number {
  const { time, height, heightError } = record;
  const end = firstAtLeast(time, -0.6);
  const start = firstAtLeast(time, -0.6 - LONGEST);
  const means: number[] = [];
  let own = 0;
  for (let i = start; i < end; ) {
    let j = i;
    let [sum, squares] = [0, 0];
    for (; j < end && time[j]! < time[i]! + MEAN; j++) {
      sum += height[j]!;
      squares += height[j]! ** 2;
    }
    const count = j - i;
    if (j < end) {
      means.push(sum / count);
      if (count > 1) own += Math.max(0, squares - sum ** 2 / count) / (count - 1) / count;
    }
    i = j;
  }
  const believed = (SHARE * heightError) ** 2;
  const n = means.length;
  if (n < 4) return Math.sqrt(believed) * widened(WORTH);
  const middle = means.reduce((a, b) => a + b, 0) / n;
  const scatter = means.reduce((sum, m) => sum + (m - middle) ** 2, 0) / n;
  const seen = Math.max(0, scatter - own / n) / (ofMean(MEAN) - ofMean(n * MEAN));
  const worth = (n * MEAN) / (2 * meanTime);
  return Math.sqrt((WORTH * believed + worth * seen) / (WORTH + worth)) * widened(WORTH + worth);
}

const widened = (means: number): number => 1 + (NINETY ** 2 + 1) / (4 * means);

/** Variance that the mean over a time keeps, as a share. */
function ofMean(length: number): number {
  const kept = (part: number): number => 2 * part * (1 - part * (1 - Math.exp(-1 / part)));
  return slowTimes.reduce((sum, time) => sum + kept(time / length), 0) / slowTimes.length;
}
