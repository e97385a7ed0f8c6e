import { firstAtLeast } from "../interpolated.js";
import type { Look } from "./look.js";

/** Gusts at the ports hang together for some 0.5…3 s. Own default, no source. */
export const slowTime = 1.75;

/** Length of the means that are compared, and of the stretch on the pad that is looked at [s]. */
const MEAN = 0.5;
const LONGEST = 30;
/** What is believed before the pad is looked at, as a share of one height's error, and the worth of that in independent means. */
const SHARE = 0.4;
const WORTH = 2;

/**
 * One sigma of the noise that hangs together [m]: gusts at the ports, from means over the stretch on the pad. What such a stretch
 * hides, since its own mean is taken off, is given back.
 *
 * @source variance of the mean of exponentially correlated noise over a time: closed form
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
  if (n < 4) return Math.sqrt(believed);
  const middle = means.reduce((a, b) => a + b, 0) / n;
  const scatter = means.reduce((sum, m) => sum + (m - middle) ** 2, 0) / n;
  const seen = Math.max(0, scatter - own / n) / (ofMean(MEAN) - ofMean(n * MEAN));
  const worth = (n * MEAN) / (2 * slowTime);
  return Math.sqrt((WORTH * believed + worth * seen) / (WORTH + worth));
}

/** Variance that the mean over a time keeps, as a share. */
function ofMean(length: number): number {
  const part = slowTime / length;
  return 2 * part * (1 - part * (1 - Math.exp(-1 / part)));
}
