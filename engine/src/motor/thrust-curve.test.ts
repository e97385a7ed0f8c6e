import { expect, test } from "vitest";
import { prepareThrust } from "./thrust-curve.js";

test("prepareThrust() is linear between the points and zero outside them", () => {
  const thrustAt = prepareThrust({ times: [0.1, 1.1], thrusts: [50, 80] });
  expect(thrustAt(0.6)).toBeCloseTo(65, 12);
  expect(thrustAt(0.0999)).toBe(0);
  expect(thrustAt(1.1001)).toBe(0);
  expect(thrustAt(Number.NaN)).toBe(0);
});
