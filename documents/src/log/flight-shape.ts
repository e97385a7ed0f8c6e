import { firstCount } from "./column-figures.js";

/** What a record's rough shape tells of its units. Series have gaps, noise and outliers: all of these look at medians. */

/** Rows of a long series that are looked at. */
const LOOKED = 20_000;

/** The median of the first rows that hold figures; NaN where none does. */
export function firstLevel(values: Float64Array): number {
  const count = firstCount(values.length);
  const first: number[] = [];
  for (let k = 0; k < values.length && first.length < count; k++) {
    const value = values[k]!;
    if (!Number.isNaN(value)) first.push(value);
  }
  return medianOf(Float64Array.from(first));
}

/** The middle one; NaN of none. */
export function medianOf(values: Float64Array): number {
  return values.slice().sort()[Math.floor(values.length / 2)] ?? Number.NaN;
}

/** The median step forward; NaN where none is. */
export function usualStep(time: Float64Array): number {
  const stride = Math.max(1, Math.floor(time.length / LOOKED));
  const steps: number[] = [];
  for (let k = 1; k < time.length; k += stride) {
    const step = time[k]! - time[k - 1]!;
    if (step > 0) steps.push(step);
  }
  return medianOf(Float64Array.from(steps));
}

/** Height in the standard atmosphere's lowest layer [m], enough to tell units (U.S. Standard Atmosphere, 1976). */
export function layerHeight(pressure: number): number {
  return 44_330.77 * (1 - (pressure / 101_325) ** 0.190_263);
}

/**
 * The factor between two series that rise and fall together, by least squares about their means.
 *
 * @returns the slope of `y` over `x`, and their correlation
 */
export function slopeOver(x: ArrayLike<number>, y: ArrayLike<number>): { slope: number; correlation: number } {
  const stride = Math.max(1, Math.floor(x.length / LOOKED));
  let [n, mx, my, xx, yy, xy] = [0, 0, 0, 0, 0, 0];
  for (let k = 0; k < x.length; k += stride) {
    const [a, b] = [x[k]!, y[k]!];
    if (!(Math.abs(a) < 1e12 && Math.abs(b) < 1e12)) continue;
    n++;
    const [dx, dy] = [a - mx, b - my];
    mx += dx / n;
    my += dy / n;
    xx += dx * (a - mx);
    yy += dy * (b - my);
    xy += dx * (b - my);
  }
  return { slope: xy / xx, correlation: xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : 0 };
}

/** The row at which a series is highest, by medians of three. */
export function topRow(height: Float64Array): number {
  let row = 0;
  let most = Number.NEGATIVE_INFINITY;
  for (let k = 1; k + 1 < height.length; k++) {
    const [a, b, c] = [height[k - 1]!, height[k]!, height[k + 1]!];
    const middle = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    if (middle > most) {
      most = middle;
      row = k;
    }
  }
  return row;
}

/**
 * How the climb bends just below its top, in the units of both: near there a rocket only falls, so it is one g.
 *
 * @returns the second derivative, without its sign; null where too few rows are there
 */
export function bendAtTop(time: Float64Array, height: Float64Array): number | null {
  const top = topRow(height);
  const peak = height[top]!;
  const range = peak - firstLevel(height);
  if (!(range > 0)) return null;
  for (const part of [0.08, 0.2]) {
    const rows: number[] = [];
    for (let k = top, below = 0; k >= 0 && below < 5; k--) {
      if (height[k]! > peak - part * range) {
        rows.push(k);
        below = 0;
      } else below++;
    }
    const bend = rows.length < 8 ? null : bendOf(rows, time, height);
    if (bend !== null) return bend;
  }
  return null;
}

/** A parabola through rows, by least squares; Legendre's polynomials keep the sums apart. */
function bendOf(rows: readonly number[], time: Float64Array, height: Float64Array): number | null {
  const [to, from] = [time[rows[0]!]!, time[rows.at(-1)!]!];
  const half = (to - from) / 2;
  if (!(half > 0)) return null;
  const at = rows.map((k) => (time[k]! - from) / half - 1);
  const mean = (f: (x: number) => number) => at.reduce((sum, x) => sum + f(x), 0) / at.length;
  const [m1, m2, m3] = [mean((x) => x), mean((x) => x * x), mean((x) => x ** 3)];
  // x² freed of its mean and of its slope over x
  const slope = (m3 - m1 * m2) / (m2 - m1 * m1);
  const rest = at.map((x) => x * x - m2 - slope * (x - m1));
  const square = rest.reduce((sum, x) => sum + x * x, 0);
  const along = rest.reduce((sum, x, k) => sum + x * height[rows[k]!]!, 0);
  return square > 0 ? Math.abs((2 * along) / square / (half * half)) : null;
}
