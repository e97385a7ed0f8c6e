import type { Spread } from "../spread/spread.js";

/** One sigma of what flights teach, before any of them: a `Spread` fits. */
export interface LearningPriors {
  /** Of the logarithm of drag. */
  readonly dragScale: number;
  /** Of the logarithm of impulse. */
  readonly totalImpulse: number;
  readonly delay: Spread["delay"];
}

/**
 * Share of the variance that belongs to the single flight, and that no number of others takes away.
 *
 * Of drag a twenty-fifth: the same rocket again, with its dents, its fittings and its swing, comes within a fifth of what is not
 * known of a new one. Of impulse half, as the certification's spread is between motors. Own defaults, no source.
 */
export const ownShare = Object.freeze({ drag: 0.04, impulse: 0.5 });

/**
 * Inverse-gamma prior of the factor on a delay's variance, mean 1: worth ten flights. Own default, no source.
 *
 * The odds of a first flight are those of a normal with the prior's own sigma; from the Student-t that this prior gives they
 * differ by half a percent at 90 %.
 */
export const variancePrior = Object.freeze({ alpha: 5, beta: 4 });

/** The prior variance of a delay, shared out among what a type, a lot and a single motor have of their own. */
export interface DelayShares {
  /** One sigma of the type's offset [s]. */
  readonly offset: number;
  /** One sigma of the type's rate. */
  readonly rate: number;
  /** One sigma of the lot's own share at this setting [s]. */
  readonly lot: number;
  /** Variance of a single motor at this setting [s²]. */
  readonly motor: number;
}

/**
 * Half of the variance is a single motor's; of the other half an eighth of the whole is the type's offset and as much its
 * rate, and what is left the lot's. They add up to the prior at every setting.
 *
 * @param set delay as cut [s], ≥ 0
 */
export function delaySharesAt({ seconds, fraction }: Spread["delay"], set: number): DelayShares {
  const half = 0.5 * Math.max(seconds, fraction * set) ** 2;
  const offset = seconds / Math.sqrt(8);
  const rate = fraction / Math.sqrt(8);
  return { offset, rate, lot: Math.sqrt(Math.max(0, half - offset ** 2 - (rate * set) ** 2)), motor: half };
}
