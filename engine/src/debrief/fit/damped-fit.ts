import { robustScale, togetherness } from "./residuals.js";
import { inverse, solved } from "./symmetric.js";

/** Parameters fitted to residuals. */
export interface DampedFit {
  readonly parameters: readonly number[];
  /** Row-major, parameters × parameters; widened by how residuals hang together in time. */
  readonly covariance: Float64Array;
  /** By how much a sum of the parameters, each counted so often, moves with each observation: one number a residual. */
  readonly gainOf: (counts: readonly number[]) => Float64Array;
  /** Root mean square of the residuals, robust. */
  readonly residual: number;
  /** Half the weighted sum of squares that was made least. */
  readonly cost: number;
  readonly converged: boolean;
}

export interface DampedFitOptions {
  /** Least one sigma of a residual: a fit that follows its own noise does not claim more. */
  readonly leastResidual: number;
  /** Step of each parameter for its derivative; also its scale. */
  readonly steps: readonly number[];
  /** Values to which parameters are drawn, with one sigma each; Infinity or left out: free. */
  readonly priors?: readonly (readonly [value: number, sd: number] | null)[];
}

/** Residuals beyond this many sigma count less: Huber's weights. */
const HUBER = 2.5;
const MOST_ROUNDS = 15;

/**
 * Least squares of a few parameters by Gauss and Newton with Marquardt's damping and Huber's weights.
 *
 * Residuals are in the order of time: the covariance is widened by their autocorrelation (Newey and West's weights), since
 * neighbouring heights of a barometer err together.
 *
 * @param residualsAt residuals of a set of parameters, always of the same length
 * @source D. W. Marquardt, J. SIAM 11 (1963); P. J. Huber, Ann. Math. Statist. 35 (1964); W. K. Newey, K. D. West,
 * Econometrica 55 (1987); from memory
 * @example
 * dampedFit(([a, b]) => times.map((t, i) => heights[i]! - a! - b! * t), [0, 1], { leastResidual: 0.1, steps: [1, 1] });
 */
export function dampedFit(
  residualsAt: (parameters: readonly number[]) => Float64Array,
  start: readonly number[],
  options: DampedFitOptions,
): DampedFit {
  const { steps, priors = [], leastResidual } = options;
  const size = start.length;
  let p = [...start];
  let r = residualsAt(p);
  let damping = 1e-3;
  let converged = false;
  let normal = new Float64Array(size * size);
  let weights = new Float64Array(r.length);
  let slopes: Float64Array[] = [];
  let scale = 1;
  for (let round = 0; round < MOST_ROUNDS && !converged; round++) {
    scale = Math.max(leastResidual, robustScale(r));
    weights = r.map((x) => Math.min(1, (HUBER * scale) / Math.abs(x)) / (scale * scale));
    slopes = p.map((_, k) => {
      const moved = [...p];
      moved[k]! += steps[k]! * 0.01;
      const q = residualsAt(moved);
      return q.map((x, i) => (x - r[i]!) / (steps[k]! * 0.01));
    });
    normal = new Float64Array(size * size);
    const gradient = new Float64Array(size);
    for (let a = 0; a < size; a++) {
      for (let b = 0; b <= a; b++) {
        let sum = 0;
        for (let i = 0; i < r.length; i++) sum += weights[i]! * slopes[a]![i]! * slopes[b]![i]!;
        normal[a * size + b] = normal[b * size + a] = sum;
      }
      let sum = 0;
      for (let i = 0; i < r.length; i++) sum -= weights[i]! * slopes[a]![i]! * r[i]!;
      gradient[a] = sum;
      const prior = priors[a];
      if (prior) {
        normal[a * size + a]! += 1 / prior[1] ** 2;
        gradient[a]! += (prior[0] - p[a]!) / prior[1] ** 2;
      }
    }
    const cost = costOf(r, scale, p, priors);
    let better = false;
    for (let tries = 0; tries < 8 && !better; tries++) {
      const damped = Float64Array.from(normal);
      for (let a = 0; a < size; a++)
        damped[a * size + a]! += damping * (normal[a * size + a]! + 1e-12 / steps[a]! ** 2);
      const move = solved(damped, gradient);
      if (move === null) {
        damping *= 10;
        continue;
      }
      const next = p.map((x, k) => x + move[k]!);
      const nextR = residualsAt(next);
      const nextCost = costOf(nextR, scale, next, priors);
      if (nextCost <= cost) {
        better = true;
        converged = move.every((x, k) => Math.abs(x) < 1e-3 * steps[k]!) || cost - nextCost < 1e-6 * (1 + cost);
        p = next;
        r = nextR;
        damping = Math.max(1e-9, damping / 10);
      } else damping *= 10;
    }
    if (!better) {
      converged = true;
      break;
    }
  }
  const widened = togetherness(r);
  const plain = inverse(normal, size);
  const covariance = plain.map((x) => x * widened);
  const gainOf = (counts: readonly number[]): Float64Array => {
    const shares = p.map((_, b) => counts.reduce((sum, count, a) => sum + count * plain[a * size + b]!, 0));
    return weights.map((weight, i) => -weight * shares.reduce((sum, share, b) => sum + share * slopes[b]![i]!, 0));
  };
  const cost = costOf(r, leastResidual, p, priors);
  return { parameters: p, covariance, gainOf, residual: scale, cost, converged };
}

function costOf(
  r: Float64Array,
  scale: number,
  p: readonly number[],
  priors: NonNullable<DampedFitOptions["priors"]>,
): number {
  let sum = 0;
  for (const x of r) {
    const z = Math.abs(x) / scale;
    sum += z <= HUBER ? 0.5 * z * z : HUBER * (z - 0.5 * HUBER);
  }
  priors.forEach((prior, k) => {
    if (prior) sum += 0.5 * ((p[k]! - prior[0]) / prior[1]) ** 2;
  });
  return Number.isFinite(sum) ? sum : Number.POSITIVE_INFINITY;
}
