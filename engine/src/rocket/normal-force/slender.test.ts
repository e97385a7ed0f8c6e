import { expect, test } from "vitest";
import { noseNormalForce } from "./nose.js";
import { transitionNormalForce } from "./transition.js";

test("noseNormalForce() acts at two thirds of a cone", () => {
  const { slope, at } = noseNormalForce({ shape: { kind: "cone" }, length: 0.3 }, 0.06);
  expect(slope).toBe(2);
  expect(at).toBeCloseTo(0.2, 12);
});

test("transitionNormalForce() from a point is a cone, and equals (L S2 − V)/(S2 − S1)", () => {
  const cone = transitionNormalForce({ at: 0, length: 0.3, foreDiameter: 0, aftDiameter: 0.06 }, 0.06);
  expect(cone.slope).toBeCloseTo(2, 12);
  expect(cone.at).toBeCloseTo(0.2, 12);
  const [d1, d2, length] = [0.05, 0.08, 0.12];
  const volume = (length / 3) * (d1 * d1 + d1 * d2 + d2 * d2); // both over π/4
  const { at } = transitionNormalForce({ at: 0, length, foreDiameter: d1, aftDiameter: d2 }, d1);
  expect(at).toBeCloseTo((length * d2 * d2 - volume) / (d2 * d2 - d1 * d1), 12);
});

test("transitionNormalForce() of a boat-tail takes away what the widening gave", () => {
  const wide = transitionNormalForce({ at: 0, length: 0.1, foreDiameter: 0.05, aftDiameter: 0.08 }, 0.05);
  const narrow = transitionNormalForce({ at: 1, length: 0.1, foreDiameter: 0.08, aftDiameter: 0.05 }, 0.05);
  expect(wide.slope + narrow.slope).toBeCloseTo(0, 12);
});
