import { cholesky, solveLower, solveUpper } from "../../math/cholesky.js";

/** A column of a linear fit: what one unit of it adds to the heights, and what is known of it beforehand. */
export interface Column {
  readonly values: Float64Array;
  /** Prior mean and one sigma; sigma Infinity: nothing is known, 0: it stays where it is. */
  readonly prior: number;
  readonly sd: number;
}

/** Errors of the heights: independent ones and, row-major, those that hang together. */
export interface Errors {
  readonly own: Float64Array;
  readonly together: Float64Array;
}

/** One linear fit. */
export interface Round {
  /** A value a column. */
  readonly moves: Float64Array;
  /** What is left that the errors that hang together do not explain. */
  readonly left: Float64Array;
  /** Row-major, columns × columns. */
  readonly covariance: Float64Array;
}

/**
 * Generalised least squares with independent normal priors.
 *
 * @returns null where the system cannot be solved
 * @source whitening by the Cholesky factor; for example Å. Björck, Numerical Methods for Least Squares Problems, 4.3 (memory)
 */
export function linearRound(columns: readonly Column[], residuals: Float64Array, errors: Errors): Round | null {
  const rows = residuals.length;
  const whole = Float64Array.from(errors.together);
  for (let i = 0; i < rows; i++) whole[i * rows + i]! += errors.own[i]!;
  const lower = cholesky(whole, rows);
  if (lower === null) return null;
  const free = columns.filter(({ sd }) => sd > 0);
  const white = free.map(({ values }) => solveLower(lower, values));
  const whiteResiduals = solveLower(lower, residuals);
  const n = free.length;
  const normal = new Float64Array(n * n);
  const right = new Float64Array(n);
  free.forEach(({ prior, sd }, i) => {
    for (let j = 0; j <= i; j++) {
      normal[i * n + j] = dot(white[i]!, white[j]!);
      normal[j * n + i] = normal[i * n + j]!;
    }
    normal[i * n + i]! += 1 / sd ** 2;
    right[i] = dot(white[i]!, whiteResiduals) + prior / sd ** 2;
  });
  const factor = cholesky(normal, n);
  if (factor === null) return null;
  const solve = (b: Float64Array): Float64Array => solveUpper(factor, solveLower(factor, b));
  const found = solve(right);
  if (!found.every(Number.isFinite)) return null;
  const rest = whiteResiduals.map((value, r) => free.reduce((sum, _, i) => sum - white[i]![r]! * found[i]!, value));
  const left = solveUpper(lower, rest).map((value, r) => value * errors.own[r]!);

  const all = columns.length;
  const places = free.map((column) => columns.indexOf(column));
  const moves = new Float64Array(all);
  const covariance = new Float64Array(all * all);
  places.forEach((place, i) => {
    moves[place] = found[i]!;
    const unit = new Float64Array(n);
    unit[i] = 1;
    solve(unit).forEach((value, j) => {
      covariance[place * all + places[j]!] = value;
    });
  });
  return { moves, left, covariance };
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
