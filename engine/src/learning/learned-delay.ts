import type { LearnedDelay } from "./learned.js";
import { delaySharesAt } from "./priors.js";

/** A delay as it is expected to burn: a Student-t. */
export interface DelayOutlook {
  /** [s] */
  readonly mean: number;
  /** Standard deviation [s]. */
  readonly sd: number;
  /** Degrees of freedom, > 2. */
  readonly degrees: number;
}

/**
 * The next motor's delay at one setting, by what flights taught. The depth of the cut and the burning rate of the day are not in it.
 *
 * @param set delay as cut [s], ≥ 0
 * @example
 * const { delay } = learn(flights, of, priors);
 * delay && learnedDelayAt(delay, 10).mean; // 10.4
 */
export function learnedDelayAt(delay: LearnedDelay, set: number): DelayOutlook {
  const { mean, scale, motorScale, degrees, prior } = delay;
  const shares = delaySharesAt(prior, set);
  const row = [1, set, shares.lot];
  let variance = motorScale * shares.motor;
  for (let i = 0; i < 3; i++) for (let j = 0; j < 3; j++) variance += row[i]! * row[j]! * scale[3 * i + j]!;
  return {
    mean: set + mean[0] + mean[1] * set + mean[2] * shares.lot,
    sd: Math.sqrt((Math.max(0, variance) * degrees) / (degrees - 2)),
    degrees,
  };
}

/** The same type, for a motor whose lot is not the one learned of: the lot's own share is the prior's again. */
export function ofAnotherLot(delay: LearnedDelay): LearnedDelay {
  const { mean, scale, motorScale } = delay;
  return {
    ...delay,
    mean: [mean[0], mean[1], 0],
    scale: [scale[0]!, scale[1]!, 0, scale[3]!, scale[4]!, 0, 0, 0, motorScale],
  };
}
