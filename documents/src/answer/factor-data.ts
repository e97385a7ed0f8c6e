import { normalQuantile } from "@delaywright/engine";

/** A factor on what the documents say: its middle, the ends of its 90 % interval, and one sigma of its logarithm. */
export interface FactorData {
  readonly factor: number;
  readonly low: number;
  readonly high: number;
  readonly sd: number;
}

/** Half of the 90 % interval in sigmas. */
const HALF = normalQuantile(0.95);

/** A factor whose logarithm is normal, with its 90 % interval. */
export function factorData(mean: number, sd: number): FactorData {
  return { factor: Math.exp(mean), low: Math.exp(mean - HALF * sd), high: Math.exp(mean + HALF * sd), sd };
}

/** As `factorData`; null where the variance is not finite, which is: the climb does not tell. */
export function toldFactor(mean: number, variance: number): FactorData | null {
  return Number.isFinite(variance) && Number.isFinite(mean) ? factorData(mean, Math.sqrt(variance)) : null;
}
