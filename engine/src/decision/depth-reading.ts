import { delayOfDepth } from "../motor/delay.js";

/** Two depths read with the same gauge, from the rim to the grain's face. */
export interface DepthReading {
  /** Delay of the uncut element [s]. */
  readonly longest: number;
  /** Depth before any cut [m]. */
  readonly before: number;
  /** Depth now [m]; a cut makes it grow. */
  readonly after: number;
  /** Depth of grain for one second [m]. */
  readonly depthPerSecond: number;
  /** One sigma of one reading [m]; left out: 0.1 mm, own default for a caliper on a grain's face, no source. */
  readonly readingError?: number;
}

/** What a reading says. */
export interface ReadDelay {
  /** Depth taken out [m]; negative where the readings contradict each other. */
  readonly removedDepth: number;
  readonly removed: number;
  /** Delay that is left [s]. */
  readonly delay: number;
  /** One sigma of it from the two readings [s]; the motor's own scatter is not in it. */
  readonly delaySd: number;
}

const defaultReadingError = 1e-4;

/**
 * Turns the depth read before and after a cut back into the delay that is left.
 *
 * @source removed depth over depth per second; two independent readings
 * @example
 * depthReading({ longest: 14, before: 0.0222, after: 0.025375, depthPerSecond: 0.00079375 }).delay; // 10
 */
export function depthReading(reading: DepthReading): ReadDelay {
  const { longest, before, after, depthPerSecond, readingError = defaultReadingError } = reading;
  const removedDepth = Math.round((after - before) * 1e9) / 1e9;
  const removed = delayOfDepth(removedDepth, depthPerSecond);
  return { removedDepth, removed, delay: longest - removed, delaySd: (Math.SQRT2 * readingError) / depthPerSecond };
}
