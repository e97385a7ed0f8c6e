import { expect, test } from "vitest";
import { whitenerOf } from "./whitener.js";

const times = Float64Array.of(0, 1);
/** Own noise of 1 and 2, and 3 that hangs together at e⁻¹ after a second: a covariance of [[10, 9/e], [9/e, 13]]. */
const noise = whitenerOf(Float64Array.of(1, 2), (i, j) => 9 * Math.exp(-Math.abs(times[i]! - times[j]!)));

test("whitenerOf() makes of residuals those whose sum of squares is rᵀ C⁻¹ r (closed form of two)", () => {
  const [a, b, c] = [10, 9 / Math.E, 13];
  const [x, y] = [2, -1];
  const wanted = (c * x * x - 2 * b * x * y + a * y * y) / (a * c - b * b);
  expect(noise(Float64Array.of(x, y)).reduce((sum, w) => sum + w * w, 0)).toBeCloseTo(wanted, 12);
});
