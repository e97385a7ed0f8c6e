import { expect, test } from "vitest";
import { normalCdf, normalQuantile } from "./normal.js";

/** Φ by its Taylor series about 0, and the tail by Laplace's continued fraction: independent of the code under test. */
function cdfBySeries(z: number): number {
  if (Math.abs(z) > 4) {
    let fraction = 0;
    for (let n = 400; n >= 1; n--) fraction = n / (Math.abs(z) + fraction);
    const tail = Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI) / (Math.abs(z) + fraction);
    return z > 0 ? 1 - tail : tail;
  }
  let term = z;
  let sum = z;
  for (let n = 1; n < 300; n++) {
    term *= (-z * z) / (2 * n);
    sum += term / (2 * n + 1);
  }
  return 0.5 + sum / Math.sqrt(2 * Math.PI);
}

test("normalCdf() equals the series and the continued fraction", () => {
  for (let z = -9; z <= 9; z += 0.037) {
    const accuracy = Math.abs(z) > 2 ? 1e-11 : 2e-15; // the alternating series cancels beyond 2
    expect(Math.abs(normalCdf(z) - cdfBySeries(z)), `at ${z}`).toBeLessThan(accuracy);
  }
});

test("normalCdf() has the handbook's two-sided 95 % point", () => {
  // 1.959963985: check value "Wilson 95 %", statistics library
  expect(normalCdf(1.959963984540054)).toBeCloseTo(0.975, 14);
  expect(normalCdf(Number.NEGATIVE_INFINITY)).toBe(0);
  expect(normalCdf(Number.POSITIVE_INFINITY)).toBe(1);
});

test("normalQuantile() undoes normalCdf()", () => {
  for (let z = -8; z <= 5; z += 0.0173) {
    const p = normalCdf(z);
    const slope = Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
    expect(Math.abs(normalQuantile(p) - z), `at ${z}`).toBeLessThan(3e-15 / slope + 1e-13);
  }
});
