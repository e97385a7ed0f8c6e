import { expect, test } from "vitest";
import { errorByNoise, slopeErrorBySmoothing } from "./slope-errors.js";

/** Slope by the ends of an interval of two. */
const times = Float64Array.of(-1, 1);
const ends = Float64Array.of(-0.5, 0.5);

test("errorByNoise() of a difference is √(2 (1 − ρ)) / 2 (closed form)", () => {
  const rho = Math.exp(-2 / 1.75);
  expect(errorByNoise(ends, times, 1.75)).toBeCloseTo(Math.sqrt(2 * (1 - rho)) / 2, 12);
  expect(errorByNoise(ends, times, 1e-3)).toBeCloseTo(Math.SQRT2 / 2, 12);
});

test("slopeErrorBySmoothing() of a difference about the middle (closed form)", () => {
  // variance of the difference, less twice its covariance with the slope, and the slope's own
  const k = (u: number): number => Math.exp(-0.5 * (u / 2) ** 2);
  const variance = 0.5 * (1 - k(2)) - (2 * k(1)) / 4 + 1 / 4;
  expect(slopeErrorBySmoothing(ends, times, 0, 2)).toBeCloseTo(Math.sqrt(variance), 12);
  // what is smooth over long hides nothing from it
  expect(slopeErrorBySmoothing(ends, times, 0, 50)).toBeLessThan(1e-4);
});
