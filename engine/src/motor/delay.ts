/** Delays are told apart to this part of a second, so that a depth made from a delay gives that delay back exactly. */
const STEPS_PER_SECOND = 1e6;

/**
 * Depth of delay grain that burns in a time.
 *
 * @param seconds of delay [s], ≥ 0
 * @param depthPerSecond depth that burns in one second [m/s], > 0
 * @returns [m]
 * @source common practice, no source
 * @example
 * depthOfDelay(4, 0.0254 / 32); // 0.003175
 */
export function depthOfDelay(seconds: number, depthPerSecond: number): number {
  return seconds * depthPerSecond;
}

/**
 * Delay that a depth of grain burns: the inverse of `depthOfDelay`, exact to the bit for delays of whole microseconds.
 *
 * @param depth of grain [m], ≥ 0
 * @param depthPerSecond depth that burns in one second [m/s], > 0
 * @returns [s]
 * @source common practice, no source
 * @example
 * delayOfDepth(0.003175, 0.0254 / 32); // 4
 */
export function delayOfDepth(depth: number, depthPerSecond: number): number {
  const seconds = depth / depthPerSecond;
  const neat = Math.round(seconds * STEPS_PER_SECOND) / STEPS_PER_SECOND;
  return Math.abs(depthOfDelay(neat, depthPerSecond) - depth) <= 4 * Number.EPSILON * depth ? neat : seconds;
}

/**
 * Delay that is left once some of the grain is cut out.
 *
 * @param longest delay of the uncut element [s]
 * @param removedDepth cut out so far [m], ≥ 0
 * @param depthPerSecond depth that burns in one second [m/s], > 0
 * @returns [s]; negative where more was cut than there is
 * @source common practice, no source
 * @example
 * remainingDelay(14, 0.003175, 0.0254 / 32); // 10
 */
export function remainingDelay(longest: number, removedDepth: number, depthPerSecond: number): number {
  return longest - delayOfDepth(removedDepth, depthPerSecond);
}
