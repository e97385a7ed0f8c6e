import { expect, test } from "vitest";
import { motorMassAt } from "./propellant-mass.js";

test("motorMassAt() has spent half the propellant at half the impulse", () => {
  const massAt = motorMassAt({
    thrust: { times: [0, 1, 2], thrusts: [0, 100, 0] },
    loadedMass: 0.3,
    propellantMass: 0.1,
  });
  expect(massAt(0)).toBe(0.3);
  expect(massAt(1)).toBeCloseTo(0.25, 15);
  expect(massAt(2)).toBeCloseTo(0.2, 15);
});
