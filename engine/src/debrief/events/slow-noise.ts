import { firstAtLeast } from "../interpolated.js";
import type { Look } from "./look.js";

/** Length of the means that are compared [s]. */
const MEAN = 0.5;
/** What is taken for a quiet stretch too short to tell, as a share of one height's error. */
const SHARE = 0.4;

/** One sigma of the noise that means over half a second do not take away [m]: gusts at the ports, from the stretch on the pad. */
export function slowNoise({ record }: Look): number {
  const { time, height, heightError } = record;
  const end = firstAtLeast(time, -0.6);
  const start = firstAtLeast(time, -15);
  const means: number[] = [];
  for (let i = start; i < end; ) {
    let j = i;
    let sum = 0;
    while (j < end && time[j]! < time[i]! + MEAN) sum += height[j++]!;
    if (j < end) means.push(sum / (j - i));
    i = j;
  }
  if (means.length < 6) return SHARE * heightError;
  const middle = means.reduce((a, b) => a + b, 0) / means.length;
  return Math.sqrt(means.reduce((sum, m) => sum + (m - middle) ** 2, 0) / (means.length - 1));
}
