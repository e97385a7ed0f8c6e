import { togetherness } from "./residuals.js";
import { inverse, solved } from "./symmetric.js";

/** A polynomial in (x − centre), with the covariance of its coefficients. */
export interface Polynomial {
  readonly centre: number;
  readonly coefficients: Float64Array;
  /** Row-major. */
  readonly covariance: Float64Array;
  /** Root mean square of what is left. */
  readonly residual: number;
  /** Factor on the variances for points that err together as neighbours do; is in the covariance. */
  readonly widened: number;
}

/**
 * Weighted polynomial through points, by least squares; null with fewer points than coefficients.
 *
 * @param rows indices of the points used
 * @param leastResidual one sigma of a point at least
 * @example
 * polynomialFit(time, height, rows, 3, 0, 0.2)?.coefficients[1]; // slope at 0
 */
export function polynomialFit(
  xs: Float64Array,
  ys: Float64Array,
  rows: readonly number[],
  degree: number,
  centre: number,
  leastResidual: number,
  weightOf: (row: number) => number = () => 1,
): Polynomial | null {
  const size = degree + 1;
  if (rows.length <= size) return null;
  let reach = 0;
  for (const i of rows) reach = Math.max(reach, Math.abs(xs[i]! - centre));
  if (!(reach > 0)) return null;
  const normal = new Float64Array(size * size);
  const right = new Float64Array(size);
  const powers = new Float64Array(size);
  for (const i of rows) {
    const u = (xs[i]! - centre) / reach;
    const w = weightOf(i);
    for (let k = 0, power = 1; k < size; k++, power *= u) powers[k] = power;
    for (let a = 0; a < size; a++) {
      right[a]! += w * powers[a]! * ys[i]!;
      for (let b = 0; b < size; b++) normal[a * size + b]! += w * powers[a]! * powers[b]!;
    }
  }
  for (let a = 0; a < size; a++) normal[a * size + a]! *= 1 + 1e-12;
  const scaled = solved(normal, right);
  if (scaled === null) return null;
  const left = new Float64Array(rows.length);
  let sum = 0;
  let weight = 0;
  rows.forEach((row, n) => {
    const u = (xs[row]! - centre) / reach;
    let value = 0;
    for (let k = size - 1; k >= 0; k--) value = value * u + scaled[k]!;
    left[n] = ys[row]! - value;
    sum += weightOf(row) * left[n]! ** 2;
    weight += weightOf(row);
  });
  const residual = Math.max(leastResidual, Math.sqrt((sum / weight) * (rows.length / (rows.length - size))));
  const widened = togetherness(left);
  const factor = residual * residual * widened;
  const covariance = inverse(normal, size);
  const coefficients = new Float64Array(size);
  for (let a = 0; a < size; a++) {
    coefficients[a] = scaled[a]! / reach ** a;
    for (let b = 0; b < size; b++) covariance[a * size + b]! *= factor / reach ** (a + b);
  }
  return { centre, coefficients, covariance, residual, widened };
}

/** Value of a polynomial, or of its first or second derivative. */
export function polynomialAt(p: Polynomial, x: number, derivative: 0 | 1 | 2 = 0): number {
  const u = x - p.centre;
  let value = 0;
  for (let k = p.coefficients.length - 1; k >= derivative; k--) {
    const factor = derivative === 0 ? 1 : derivative === 1 ? k : k * (k - 1);
    value = value * u + factor * p.coefficients[k]!;
  }
  return value;
}

/** What each coefficient counts in a value or derivative. */
function countsAt({ centre, coefficients }: Polynomial, x: number, derivative: 0 | 1 | 2): Float64Array {
  const u = x - centre;
  return coefficients.map((_, k) =>
    k < derivative ? 0 : (derivative === 0 ? 1 : derivative === 1 ? k : k * (k - 1)) * u ** (k - derivative),
  );
}

/**
 * What each row counts in the slope there, in an unweighted fit.
 *
 * @param rows those fitted
 */
export function slopeWeights(p: Polynomial, x: number, xs: Float64Array, rows: readonly number[]): Float64Array {
  const size = p.coefficients.length;
  const g = countsAt(p, x, 1);
  const scale = p.residual * p.residual * p.widened;
  const inner = g.map((_, a) => g.reduce((sum, each, b) => sum + each * p.covariance[a * size + b]!, 0) / scale);
  return Float64Array.from(rows, (row) => {
    const u = xs[row]! - p.centre;
    let weight = 0;
    for (let k = size - 1; k >= 0; k--) weight = weight * u + inner[k]!;
    return weight;
  });
}

/** One sigma of a polynomial's value or derivative there. */
export function polynomialError(p: Polynomial, x: number, derivative: 0 | 1 | 2 = 0): number {
  const size = p.coefficients.length;
  const g = countsAt(p, x, derivative);
  let sum = 0;
  for (let a = 0; a < size; a++) for (let b = 0; b < size; b++) sum += g[a]! * g[b]! * p.covariance[a * size + b]!;
  return Math.sqrt(Math.max(0, sum));
}
