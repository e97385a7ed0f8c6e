/**
 * One sigma of a slope, or of any sum of values, by noise of unit sigma that hangs together exponentially over a time.
 *
 * @param weights what each value counts in it, at rising times
 */
export function errorByNoise(weights: Float64Array, times: Float64Array, over: number): number {
  let [sum, together] = [0, 0];
  for (let i = 0; i < weights.length; i++) {
    if (i > 0) together = (together + weights[i - 1]!) * Math.exp((times[i - 1]! - times[i]!) / over);
    sum += weights[i]! * (weights[i]! + 2 * together);
  }
  return Math.sqrt(Math.max(0, sum));
}

/**
 * One sigma by which such a slope misses that of a smooth process of unit sigma and Gaussian covariance: what the fit does not follow.
 *
 * @param at where the slope is taken
 * @source covariance of a Gaussian process with its derivative: −∂k/∂t, and k″ of the derivative with itself; closed form
 */
export function slopeErrorBySmoothing(weights: Float64Array, times: Float64Array, at: number, over: number): number {
  const bell = (apart: number): number => Math.exp(-0.5 * (apart / over) ** 2);
  let sum = 1 / over ** 2;
  for (let i = 0; i < weights.length; i++) {
    const apart = times[i]! - at;
    sum -= (2 * weights[i]! * apart * bell(apart)) / over ** 2;
    for (let j = 0; j < i; j++) sum += 2 * weights[i]! * weights[j]! * bell(times[i]! - times[j]!);
    sum += weights[i]! ** 2;
  }
  return Math.sqrt(Math.max(0, sum));
}
