import { quantilesOf } from "./quantiles.js";

/** A density at evenly spaced points. */
export interface Density {
  /** First point, and the way from one to the next, in the unit of the values. */
  readonly from: number;
  readonly step: number;
  /** Per unit of the values, ≥ 0; sums to 1 / `step` within 1 %. */
  readonly values: readonly number[];
}

const pointCount = 60;

/** Kernels are followed to so many of their widths: what is left out is 6e-5 of each. */
const reach = 4;

/** Points may lie no further apart than so many kernel widths: their sum then is the integral to 1 %. */
const widestStep = 1.5;

/** Fewer draws than this show their own scatter, not a density. */
const leastDraws = 16;

/**
 * Kernel density of a sample: normal kernels of one width.
 *
 * Some 60 points over the whole sample and a kernel's tails beyond; more where single values lie far out.
 *
 * @param sample any order, none NaN
 * @returns null where nothing varies, or for fewer than 16 values
 * @source width 0.9 min(σ, IQR / 1.34) n^(−1/5): B. W. Silverman, Density Estimation (1986), eq. 3.31; memory
 * @example
 * densityOf(coastTimes)?.values.length; // 60
 */
export function densityOf(sample: Float64Array): Density | null {
  if (sample.length < leastDraws) return null;
  const width = kernelWidth(sample);
  if (width === null) return null;
  const lowest = sample.reduce((a, b) => Math.min(a, b));
  const highest = sample.reduce((a, b) => Math.max(a, b));
  const from = lowest - reach * width;
  const span = highest + reach * width - from;
  const count = Math.max(pointCount, Math.ceil(span / (widestStep * width)) + 1);
  const step = span / (count - 1);
  const values = new Array<number>(count).fill(0);
  const height = 1 / (sample.length * width * Math.sqrt(2 * Math.PI));
  for (const value of sample) {
    const first = Math.max(0, Math.ceil((value - reach * width - from) / step));
    const last = Math.min(count - 1, Math.floor((value + reach * width - from) / step));
    for (let i = first; i <= last; i++) {
      const z = (from + i * step - value) / width;
      values[i]! += height * Math.exp(-0.5 * z * z);
    }
  }
  return { from, step, values };
}

/** Silverman's width; by the standard deviation alone where the middle half is one value. */
function kernelWidth(sample: Float64Array): number | null {
  const count = sample.length;
  const mean = sample.reduce((a, b) => a + b, 0) / count;
  const sd = Math.sqrt(sample.reduce((sum, v) => sum + (v - mean) ** 2, 0) / (count - 1));
  if (!(sd > 1e-9 * (1 + Math.abs(mean)))) return null;
  const quartiles = quantilesOf(sample, [0.25, 0.75]);
  const bulk = (quartiles[1]! - quartiles[0]!) / 1.34;
  return 0.9 * (bulk > 1e-3 * sd ? Math.min(sd, bulk) : sd) * count ** -0.2;
}
