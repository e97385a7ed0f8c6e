import type { Sample, SampleColumn } from "./sample-columns.js";

/** Figures beyond are none: no instrument of this field writes them. */
const ABSURD = 1e19;

/** What a column's figures do, as they stand. */
export interface ColumnFigures {
  /** Where it starts: the median of its first rows. */
  readonly start: number;
  readonly end: number;
  /** Lowest but for one row in two hundred: an instrument's own sign for nothing is left out. */
  readonly least: number;
  /** Lowest and highest but for a single outlier. */
  readonly lowest: number;
  readonly most: number;
  readonly median: number;
  /** Median step between neighbours, without its sign. */
  readonly step: number;
  /** Share of steps up, and down. */
  readonly rises: number;
  readonly falls: number;
  /** Share of steps that are within half of the median step: a clock's are alike. */
  readonly regular: number;
  /** Whether all steps are one. */
  readonly counts: boolean;
  /** Share of rows above half of what it reaches. */
  readonly aboveHalf: number;
  /** Row in the sample at which it is furthest from its start. */
  readonly peakRow: number;
  readonly distinct: number;
}

/** How many first rows tell where a column starts: no more than a tenth, and not many. */
export function firstCount(rows: number): number {
  return Math.max(1, Math.min(Math.ceil(rows / 50) + 5, Math.floor(rows / 10), 500));
}

/** Numbers in order; NaN left out. */
export function sorted(values: Float64Array): Float64Array {
  return values.filter((value) => Math.abs(value) < ABSURD).sort();
}

/** The quantile of numbers in order; NaN where there are none. */
export function quantile(ordered: Float64Array, share: number): number {
  return ordered[Math.min(ordered.length - 1, Math.floor(share * ordered.length))] ?? Number.NaN;
}

/** Describes a column of the sample; null where there is too little in it. */
export function columnFigures({ values }: SampleColumn, { burst, rows }: Sample): ColumnFigures | null {
  const ordered = sorted(values);
  if (ordered.length < 2) return null;
  const some = firstCount(ordered.length);
  const present = values.filter((value) => Math.abs(value) < ABSURD);
  const start = quantile(present.slice(0, some).sort(), 0.5);
  const least = quantile(ordered, ordered.length > 200 ? 0.005 : 0);
  const single = ordered.length > 200 ? 1 : 0;
  const most = ordered[ordered.length - 1 - single]!;
  const steps = stepsOf(values, burst, rows);
  const sizes = sorted(steps.within.map(Math.abs));
  const step = quantile(sizes, 0.5);
  const half = start + (most - start) / 2;
  return {
    start,
    end: quantile(present.slice(-some).sort(), 0.5),
    least,
    lowest: ordered[single]!,
    most,
    median: quantile(ordered, 0.5),
    step,
    ...steps.ways,
    regular: share(sizes, (size) => Math.abs(size - step) <= 0.5 * step),
    counts: share(steps.within, (each) => each === 1) > 0.99,
    aboveHalf: share(ordered, (value) => value > half),
    peakRow: furthest(values, start),
    distinct: new Set(ordered.subarray(0, 5000)).size,
  };
}

function share(values: Float64Array, holds: (value: number) => boolean): number {
  let count = 0;
  for (const value of values) if (holds(value)) count++;
  return values.length === 0 ? 0 : count / values.length;
}

/** Steps between rows; those within a burst apart, since neighbours in it are neighbours in the file. */
function stepsOf(values: Float64Array, burst: Int32Array, rows: number) {
  const within = new Float64Array(rows);
  let count = 0;
  let [up, down, all] = [0, 0, 0];
  let before = -1;
  for (let row = 0; row < rows; row++) {
    const value = values[row]!;
    if (Number.isNaN(value)) continue;
    if (before >= 0) {
      const step = value - values[before]!;
      all++;
      if (step > 0) up++;
      else if (step < 0) down++;
      if (before === row - 1 && burst[before] === burst[row]) within[count++] = step;
    }
    before = row;
  }
  return { within: within.subarray(0, count), ways: { rises: up / Math.max(1, all), falls: down / Math.max(1, all) } };
}

/** Of medians of three rows, so that no single outlier is one. */
function furthest(values: Float64Array, start: number): number {
  let row = 0;
  let most = -1;
  for (let k = 1; k + 1 < values.length; k++) {
    const [a, b, c] = [values[k - 1]!, values[k]!, values[k + 1]!];
    const middle = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
    const away = Math.abs(middle - start);
    if (away > most && away < ABSURD) {
      most = away;
      row = k;
    }
  }
  return row;
}

/** Correlation of two columns where both have figures; 0 where it is not defined. */
export function correlation(x: Float64Array, y: Float64Array): number {
  let [n, sx, sy] = [0, 0, 0];
  const both = (k: number) => Math.abs(x[k]!) < ABSURD && Math.abs(y[k]!) < ABSURD;
  for (let k = 0; k < x.length; k++) {
    if (!both(k)) continue;
    n++;
    sx += x[k]!;
    sy += y[k]!;
  }
  const [mx, my] = [sx / n, sy / n];
  let [xx, yy, xy] = [0, 0, 0];
  for (let k = 0; k < x.length; k++) {
    if (!both(k)) continue;
    const [dx, dy] = [x[k]! - mx, y[k]! - my];
    xx += dx * dx;
    yy += dy * dy;
    xy += dx * dy;
  }
  return xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : 0;
}

/** Mean of a column and slope of another over groups of neighbouring rows: equal in shape where one is the other's rate. */
export function slopesAndMeans(time: Float64Array, height: Float64Array, rate: Float64Array, burst: Int32Array) {
  const size = 8;
  const slopes: number[] = [];
  const means: number[] = [];
  for (let from = 0; from + size <= time.length; from += size) {
    if (burst[from] !== burst[from + size - 1]) continue;
    const span = time[from + size - 1]! - time[from]!;
    const rise = height[from + size - 1]! - height[from]!;
    let sum = 0;
    for (let k = from; k < from + size; k++) sum += rate[k]!;
    if (!(span > 0) || Number.isNaN(rise + sum)) continue;
    slopes.push(rise / span);
    means.push(sum / size);
  }
  return { slopes: Float64Array.from(slopes), means: Float64Array.from(means) };
}
