import { expect, test } from "vitest";
import { drydenScales } from "../../src/wind/dryden.js";
import { type DrydenFilter, DrydenSeries, seriesSpacing } from "../../src/wind/dryden-series.js";
import { drydenTurbulence } from "../../src/wind/turbulence.js";

const seed = 20_261_128;
const points = 2_000_000;
/** Length of the sample in scale lengths. */
const length = points * seriesSpacing;
/** Errors are told in standard errors of a sample of this length. */
const standardErrors = 3.5;

/** SOURCE.md, 3.7.1.2: correlation over the way r in scale lengths, and spectrum over the reduced frequency L Ω, of unit variance. */
const filters: Readonly<Record<DrydenFilter, { correlation: (r: number) => number; spectrum: (w: number) => number }>> =
  {
    longitudinal: {
      correlation: (r) => Math.exp(-r),
      spectrum: (w) => 2 / Math.PI / (1 + w * w),
    },
    lateral: {
      correlation: (r) => Math.exp(-r) * (1 - r / 2),
      spectrum: (w) => (1 + 3 * w * w) / (Math.PI * (1 + w * w) ** 2),
    },
  };

function sample(filter: DrydenFilter): Float64Array {
  const series = new DrydenSeries(seed, filter);
  series.point(points - 1);
  return Float64Array.from({ length: points }, (_, i) => series.point(i));
}

/** Mean of the squares of the correlation over both sides: times 2 over the length, the squared relative error of a variance. */
function squaredCorrelation(correlation: (r: number) => number): number {
  let sum = 0;
  for (let r = 0.0005; r < 30; r += 0.001) sum += 2 * 0.001 * correlation(r) ** 2;
  return sum;
}

const segment = 4096;

/** Spectral density by the mean of Hann-windowed periodograms of segments that do not overlap. */
function periodogram(values: Float64Array, frequency: number): number {
  const count = Math.floor(values.length / segment);
  let total = 0;
  let windowSquares = 0;
  const window = Float64Array.from({ length: segment }, (_, i) => Math.sin((Math.PI * (i + 0.5)) / segment) ** 2);
  for (const w of window) windowSquares += w * w;
  for (let s = 0; s < count; s++) {
    let [real, imaginary] = [0, 0];
    // the oscillation is carried on by a turn a point
    const [c, d] = [Math.cos(frequency * seriesSpacing), Math.sin(frequency * seriesSpacing)];
    let [x, y] = [1, 0];
    for (let i = 0; i < segment; i++) {
      const value = window[i]! * values[s * segment + i]!;
      real += value * x;
      imaginary += value * y;
      [x, y] = [x * c - y * d, x * d + y * c];
    }
    total += (seriesSpacing * (real * real + imaginary * imaginary)) / (Math.PI * windowSquares);
  }
  return total / count;
}

test.each(["longitudinal", "lateral"] as const)("DrydenSeries, %s: variance, correlation and spectrum", (filter) => {
  const { correlation, spectrum } = filters[filter];
  const values = sample(filter);
  const error = Math.sqrt((2 / length) * squaredCorrelation(correlation));
  const mean = values.reduce((sum, v) => sum + v, 0) / points;
  const variance = values.reduce((sum, v) => sum + v * v, 0) / points;
  expect(Math.abs(variance - 1), `variance ${variance}`).toBeLessThan(standardErrors * error);
  // the mean's error: π times the spectrum at zero over the length
  expect(Math.abs(mean)).toBeLessThan(standardErrors * Math.sqrt((Math.PI * spectrum(0)) / length));
  for (const lag of [5, 25, 50, 100, 150]) {
    let sum = 0;
    for (let i = lag; i < points; i++) sum += values[i]! * values[i - lag]!;
    const found = sum / (points - lag);
    // a covariance has at most the variance's error times the root of 2
    expect(Math.abs(found - correlation(lag * seriesSpacing)), `lag ${lag}: ${found}`).toBeLessThan(
      standardErrors * Math.SQRT2 * error,
    );
  }
  const segments = Math.floor(points / segment);
  for (const frequency of [0.5, 1, 2, 5, 10, 20]) {
    const ratio = periodogram(values, frequency) / spectrum(frequency);
    // folding about the highest frequency of the points adds (L Ω h)² / 12 and less
    const folded = (frequency * seriesSpacing) ** 2 / 6;
    expect(Math.abs(ratio - 1), `frequency ${frequency}: ${ratio}`).toBeLessThan(
      standardErrors / Math.sqrt(segments) + folded,
    );
  }
});

test("DrydenSeries between its points loses no more than 0.8 % of the variance", () => {
  for (const filter of ["longitudinal", "lateral"] as const) {
    const series = new DrydenSeries(seed, filter);
    let [between, at] = [0, 0];
    for (let i = 1; i < points / 4; i++) {
      between += series.at((i + 0.5) * seriesSpacing) ** 2;
      at += series.point(i) ** 2;
    }
    expect(between / at, filter).toBeGreaterThan(0.992);
    expect(between / at, filter).toBeLessThan(1.0005);
  }
});

test("drydenTurbulence() has the intensities of the specification along, across and up, apart from one another", () => {
  // from the south-west: along is north-east
  const [east, north] = [3, 4];
  const count = 400_000;
  for (const [z, which] of [
    [20, 1],
    [300, 2],
  ] as const) {
    const { gust } = drydenTurbulence(seed + which, () => [east, north, 0]);
    const out = new Float64Array(3);
    const sums = { along: 0, across: 0, vertical: 0, mixed: 0 };
    for (let i = 0; i < count; i++) {
      gust(i * 0.1, i * 0.1, z, out);
      const along = 0.6 * out[0]! + 0.8 * out[1]!;
      const across = 0.6 * out[1]! - 0.8 * out[0]!;
      sums.along += along * along;
      sums.across += across * across;
      sums.vertical += out[2]! * out[2]!;
      sums.mixed += along * across;
    }
    const { intensities } = drydenScales(z, 5, "8785C");
    const error = standardErrors * Math.sqrt(2 / (count * 0.1)) + 0.008;
    for (const name of ["along", "across", "vertical"] as const)
      expect(Math.abs(sums[name] / count / intensities[name] ** 2 - 1), `${name} at ${z} m`).toBeLessThan(error);
    expect(Math.abs(sums.mixed / count) / intensities.along ** 2).toBeLessThan(error);
  }
});

test("drydenTurbulence() counts the way in the specification's lengths, differs by seed, and is still in a calm", () => {
  const pace = new Float64Array(2);
  const { pace: paceAt } = drydenTurbulence(1, () => [5, 0, 0]);
  paceAt(100, pace);
  const { lengths } = drydenScales(100, 5, "8785C");
  expect([...pace]).toEqual([1 / lengths.along, 1 / lengths.vertical]);
  const gustOf = (of: number, wind: number) => {
    const out = new Float64Array(3);
    drydenTurbulence(of, () => [wind, 0, 0]).gust(1.234, 2.345, 50, out);
    return [...out];
  };
  expect(gustOf(1, 5)).toEqual(gustOf(1, 5));
  expect(gustOf(2, 5)).not.toEqual(gustOf(1, 5));
  expect(gustOf(1, 0).map(Math.abs)).toEqual([0, 0, 0]);
});
