import { leastSquares } from "../math/least-squares.js";

/** Shares of a figure's variance: of each input alone, and with everything it takes part in. */
export interface Shares {
  readonly first: readonly number[];
  readonly total: readonly number[];
  /** Share that the expansion does not explain. */
  readonly unexplained: number;
}

/** Draws that the fit takes: more would sharpen shares that are read to a percent, at the square of the terms each. */
export const mostRows = 1200;

/** Orthonormal Hermite polynomials of degree 1, 2, 3. */
function hermite(z: number, out: Float64Array): void {
  out[0] = z;
  out[1] = (z * z - 1) / Math.SQRT2;
  out[2] = (z * (z * z - 3)) / Math.sqrt(6);
}

/**
 * Variance shares of standard normal inputs, from the draws that were flown anyway.
 *
 * Fits orthonormal Hermite polynomials: each input to degree 3, each pair with the products of degrees up to 2 and 1. The
 * squared coefficients are the shares (polynomial chaos). Few draws get fewer terms.
 *
 * @param normals row-major, draws × inputs
 * @param inputs inputs a row
 * @param groups inputs that count as one: a group number per input, 0 … groupCount − 1
 * @param figures one value a draw each; draws with a NaN in any are left out
 * @returns shares of each figure, in order
 * @source B. Sudret, Reliability Engineering and System Safety 93 (2008); memory. A pick-freeze estimate judges it in the test
 * @example
 * varianceShares(normals, 14, groups, 12, [coastTimes])[0]?.first[0]; // share of the first group
 */
export function varianceShares(
  normals: Float64Array,
  inputs: number,
  groups: readonly number[],
  groupCount: number,
  figures: readonly Float64Array[],
): Shares[] {
  return prepareShares(normals, inputs, groups, groupCount, rowsWithAll(figures))(figures);
}

/** Draws of which every figure is known, the first `mostRows` of them. */
export function rowsWithAll(figures: readonly Float64Array[]): number[] {
  const draws = figures[0]?.length ?? 0;
  const rows: number[] = [];
  for (let i = 0; i < draws && rows.length < mostRows; i++) {
    let known = true;
    for (const figure of figures) if (Number.isNaN(figure[i]!)) known = false;
    if (known) rows.push(i);
  }
  return rows;
}

/**
 * As `varianceShares`, prepared once for figures of the same draws: nearly all of its work is in what the inputs alone decide.
 *
 * @param kept draws that are fitted, rising
 */
export function prepareShares(
  normals: Float64Array,
  inputs: number,
  groups: readonly number[],
  groupCount: number,
  kept: readonly number[],
): (figures: readonly Float64Array[]) => Shares[] {
  const pairs = (inputs * (inputs - 1)) / 2;
  const degree = kept.length > 20 * inputs ? 3 : kept.length > 8 * inputs ? 2 : 1;
  const withPairs = kept.length > 4 * (1 + 3 * inputs + pairs);
  // terms: which group a squared coefficient belongs to, and the second group of a pair
  const terms: (readonly [a: number, b: number])[] = [];
  for (let i = 0; i < inputs; i++) for (let d = 0; d < degree; d++) terms.push([groups[i]!, groups[i]!]);
  if (withPairs) for (let i = 0; i < inputs; i++) for (let j = 0; j < i; j++) terms.push([groups[i]!, groups[j]!]);
  const columns = 1 + terms.length;
  const rows = new Float64Array(kept.length * columns);
  const h = new Float64Array(3);
  kept.forEach((draw, r) => {
    let o = r * columns;
    rows[o++] = 1;
    const z = draw * inputs;
    for (let i = 0; i < inputs; i++) {
      hermite(normals[z + i]!, h);
      for (let d = 0; d < degree; d++) rows[o++] = h[d]!;
    }
    if (withPairs)
      for (let i = 0; i < inputs; i++) for (let j = 0; j < i; j++) rows[o++] = normals[z + i]! * normals[z + j]!;
  });
  const solve = leastSquares(rows, columns);
  return (figures) =>
    figures.map((values) => {
      const y = Float64Array.from(kept, (draw) => values[draw]!);
      return sharesOf(y, terms, groupCount, solve);
    });
}

function sharesOf(
  y: Float64Array,
  terms: readonly (readonly [a: number, b: number])[],
  groupCount: number,
  solve: (y: Float64Array) => Float64Array,
): Shares {
  const first = new Array<number>(groupCount).fill(0);
  const total = new Array<number>(groupCount).fill(0);
  const mean = y.reduce((a, b) => a + b, 0) / y.length;
  const variance = y.reduce((a, b) => a + (b - mean) ** 2, 0) / y.length;
  if (!(variance > 1e-18 * (1 + mean * mean))) return { first, total, unexplained: 0 };
  const x = solve(y);
  let explained = 0;
  terms.forEach(([a, b], i) => {
    const share = x[i + 1]! ** 2 / variance;
    explained += share;
    total[a]! += share;
    if (a === b) first[a]! += share;
    else total[b]! += share;
  });
  return { first, total, unexplained: Math.max(0, 1 - explained) };
}
