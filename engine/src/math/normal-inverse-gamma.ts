/** A normal mean and variance that are not known: mean given variance N(mean, variance/kappa), variance inverse gamma (alpha, beta). */
export interface NormalInverseGamma {
  readonly mean: number;
  /** Observations that the mean is worth, > 0. */
  readonly kappa: number;
  /** Half the observations that the variance is worth, > 0. */
  readonly alpha: number;
  /** In the square of the observations' unit, > 0. */
  readonly beta: number;
}

/**
 * What observations make of it: a normal-inverse-gamma again.
 *
 * @source conjugate update; A. Gelman et al., Bayesian Data Analysis, 3.3 (memory), in the parameters of the check values
 * @example
 * updatedBy({ mean: 10, kappa: 2, alpha: 3, beta: 2 }, [9.2, 10.4, 9.8, 10.9, 9.5]).beta; // 2.947142857142857
 */
export function updatedBy(prior: NormalInverseGamma, observed: readonly number[]): NormalInverseGamma {
  const n = observed.length;
  if (n === 0) return prior;
  const mean = observed.reduce((sum, x) => sum + x, 0) / n;
  const squares = observed.reduce((sum, x) => sum + (x - mean) ** 2, 0);
  const kappa = prior.kappa + n;
  return {
    mean: (prior.kappa * prior.mean + n * mean) / kappa,
    kappa,
    alpha: prior.alpha + 0.5 * n,
    beta: prior.beta + 0.5 * squares + (0.5 * prior.kappa * n * (mean - prior.mean) ** 2) / kappa,
  };
}

/**
 * The next observation: a Student-t.
 *
 * @returns its middle, scale and degrees of freedom
 * @source as `updatedBy`
 * @example
 * predictive({ mean: 10, kappa: 2, alpha: 3, beta: 2 }).scale; // 1
 */
export function predictive({ mean, kappa, alpha, beta }: NormalInverseGamma): {
  readonly mean: number;
  readonly scale: number;
  readonly degrees: number;
} {
  return { mean, scale: Math.sqrt((beta * (kappa + 1)) / (alpha * kappa)), degrees: 2 * alpha };
}
