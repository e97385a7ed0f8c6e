import { normalCdf } from "../math/normal.js";

/** A normal figure whose variance has an unknown inverse-gamma factor. */
export interface BoundedFigure {
  readonly mean: number;
  /** Variance over the factor. */
  readonly variance: number;
  readonly alpha: number;
  readonly beta: number;
}

const points = 400;

/** Mean of a standard normal above −z, φ(z)/Φ(z). */
function mills(z: number): number {
  return z > -37 ? Math.exp(-0.5 * z * z) / (2.5066282746310002 * normalCdf(z)) : -z;
}

/**
 * What a bound on a noisy observation of the figure makes of it, again as a normal with an inverse-gamma factor.
 *
 * Given the factor the figure's mean and variance are closed forms; over the factor they are integrated on a fixed grid. The
 * result has the exact mean and variance of the figure, mean of the factor and mean of its inverse: the shape beyond these is
 * assumed.
 *
 * @param noise variance of the observation about the figure, over the factor
 * @param bound on the observation
 * @param side 1: the observation is at least the bound; −1: at most
 * @source moments of a normal times a normal tail: C. Rasmussen, C. Williams, Gaussian Processes for Machine Learning, 3.9 (memory)
 */
export function boundedBy(figure: BoundedFigure, noise: number, bound: number, side: 1 | -1): BoundedFigure {
  const { mean, variance, alpha, beta } = figure;
  const whole = variance + noise;
  const root = Math.sqrt(alpha);
  const from = Math.log(beta / alpha) - 8 / root;
  const step = (20 / root + 20 / alpha) / points;
  const gap = (side * (mean - bound)) / Math.sqrt(whole);
  const pull = (side * variance) / Math.sqrt(whole);
  const shrink = (variance * variance) / whole;
  const sums = { weight: 0, mean: 0, square: 0, factor: 0, inverse: 0 };
  const highest = alpha * Math.log(alpha / beta) - alpha;
  for (let k = 0; k <= points; k++) {
    const log = from + k * step;
    const factor = Math.exp(log);
    const sd = Math.sqrt(factor);
    const z = gap / sd;
    const weight = Math.exp(-alpha * log - beta / factor - highest) * normalCdf(z);
    if (!(weight > 0)) continue;
    const ratio = mills(z);
    const middle = pull * sd * ratio;
    sums.weight += weight;
    sums.mean += weight * middle;
    sums.square += weight * (middle * middle + factor * (variance - shrink * ratio * (ratio + z)));
    sums.factor += weight * factor;
    sums.inverse += weight / factor;
  }
  if (!(sums.weight > 0)) return figure;
  const moved = sums.mean / sums.weight;
  const factor = sums.factor / sums.weight;
  const product = (factor * sums.inverse) / sums.weight;
  const newAlpha = product / (product - 1);
  return {
    mean: mean + moved,
    variance: (sums.square / sums.weight - moved * moved) / factor,
    alpha: newAlpha,
    beta: factor * (newAlpha - 1),
  };
}
