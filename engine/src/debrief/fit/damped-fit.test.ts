import { expect, test } from "vitest";
import { dampedFit } from "./damped-fit.js";
import { polynomialAt, polynomialError, polynomialFit } from "./polynomial.js";
import { togetherness } from "./residuals.js";
import { inverse, solved } from "./symmetric.js";

const xs = Float64Array.from({ length: 21 }, (_, i) => i / 10);

test("dampedFit() of a line gives the closed form's slope and covariance", () => {
  // alternating residuals hang together negatively: no widening, so the closed form sigma²/Sxx holds
  const ys = xs.map((x, i) => 2 + 3 * x + (i % 2 === 0 ? 0.1 : -0.1));
  const fit = dampedFit(([a, b]) => xs.map((x, i) => ys[i]! - a! - b! * x), [0, 0], {
    leastResidual: 0.2,
    steps: [1, 1],
  });
  const mean = xs.reduce((s, x) => s + x, 0) / xs.length;
  const sxx = xs.reduce((s, x) => s + (x - mean) ** 2, 0);
  const slope = xs.reduce((s, x, i) => s + (x - mean) * ys[i]!, 0) / sxx;
  expect(fit.converged).toBe(true);
  expect(fit.parameters[1]).toBeCloseTo(slope, 6);
  expect(fit.covariance[3]).toBeCloseTo(0.04 / sxx, 6);
});

test("dampedFit() finds a rate and a level that stand in no line", () => {
  const ys = xs.map((x) => 5 * Math.exp(-1.7 * x));
  const fit = dampedFit(([a, k]) => xs.map((x, i) => ys[i]! - a! * Math.exp(-k! * x)), [1, 0.5], {
    leastResidual: 1e-3,
    steps: [1, 1],
  });
  expect(fit.parameters[0]).toBeCloseTo(5, 5);
  expect(fit.parameters[1]).toBeCloseTo(1.7, 5);
});

test("dampedFit() weighs a prior against the data as their variances say", () => {
  // one level, n values of sigma 1, a prior 0 ± 0.5: posterior mean n·y/(n + 4), variance 1/(n + 4)
  const n = 12;
  const fit = dampedFit(([a]) => new Float64Array(n).fill(2).map((y) => y - a!), [0], {
    leastResidual: 1,
    steps: [1],
    priors: [[0, 0.5]],
  });
  expect(fit.parameters[0]).toBeCloseTo((n * 2) / (n + 4), 6);
});

test("dampedFit() is hardly moved by one value far off", () => {
  const ys = xs.map((x, i) => 1 + x + (i === 9 ? 100 : 0) + 0.05 * Math.sin(5 * i));
  const fit = dampedFit(([a, b]) => xs.map((x, i) => ys[i]! - a! - b! * x), [0, 0], {
    leastResidual: 0.05,
    steps: [1, 1],
  });
  expect(Math.abs(fit.parameters[1]! - 1)).toBeLessThan(0.05);
});

test("togetherness() is 1 for values without memory, near (1 + r)/(1 − r) for values of memory r", () => {
  let state = 1;
  const noise = Float64Array.from({ length: 4000 }, () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647 - 0.5;
  });
  expect(togetherness(noise)).toBeLessThan(1.4);
  let before = 0;
  const wander = noise.map((x) => {
    before = 0.7 * before + x;
    return before;
  });
  expect(togetherness(wander)).toBeGreaterThan(4);
  expect(togetherness(wander)).toBeLessThan(7.5);
});

test("solved() and inverse() of [[4, 2], [2, 3]]", () => {
  const matrix = Float64Array.of(4, 2, 2, 3);
  const [x, y] = solved(matrix, Float64Array.of(8, 8))!;
  expect(x).toBeCloseTo(1, 12);
  expect(y).toBeCloseTo(2, 12);
  [3 / 8, -2 / 8, -2 / 8, 4 / 8].forEach((value, i) => {
    expect(inverse(matrix, 2)[i]).toBeCloseTo(value, 12);
  });
  expect(solved(Float64Array.of(1, 2, 2, 1), Float64Array.of(1, 1))).toBeNull();
});

test("polynomialFit() goes through a cubic, with its slopes and an error that is widest at the ends", () => {
  const ys = xs.map((x) => 1 - x + 2 * x ** 2 + 0.5 * x ** 3);
  const rows = Array.from(xs, (_, i) => i);
  const fit = polynomialFit(xs, ys, rows, 3, 1, 0.1)!;
  expect(polynomialAt(fit, 1.5)).toBeCloseTo(1 - 1.5 + 4.5 + 0.5 * 3.375, 9);
  expect(polynomialAt(fit, 1.5, 1)).toBeCloseTo(-1 + 6 + 1.5 * 2.25, 8);
  expect(polynomialAt(fit, 1.5, 2)).toBeCloseTo(4 + 3 * 1.5, 7);
  expect(polynomialError(fit, 2)).toBeGreaterThan(1.5 * polynomialError(fit, 1));
  expect(polynomialFit(xs, ys, [0, 1, 2], 3, 1, 0.1)).toBeNull();
});
