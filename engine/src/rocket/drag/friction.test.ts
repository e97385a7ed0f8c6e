import fc from "fast-check";
import { expect, test } from "vitest";
import {
  fullyRoughFriction,
  laminarFriction,
  roughMachFactor,
  skinFriction,
  smoothFriction,
  transitionalFriction,
  turbulentMachFactor,
} from "./friction.js";

test("smoothFriction() is laminar at first, then transitional, continuous between", () => {
  expect(smoothFriction(2e5)).toBe(laminarFriction(2e5));
  expect(smoothFriction(5e6)).toBe(transitionalFriction(5e6));
  for (let re = 1e5; re < 3e6; re *= 1.001)
    expect(Math.abs(smoothFriction(re * 1.001) / smoothFriction(re) - 1)).toBeLessThan(0.003);
});

test("skinFriction() is the greater of smooth and rough, rounded by at most 5 % of it", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 8, noNaN: true }),
      fc.double({ min: 3, max: 7, noNaN: true }),
      fc.double({ min: 0, max: 3, noNaN: true }),
      (logReynolds, logRatio, mach) => {
        const reynolds = 10 ** logReynolds;
        const roughnessRatio = 10 ** logRatio;
        const smooth = smoothFriction(reynolds) * turbulentMachFactor(mach);
        const rough = fullyRoughFriction(roughnessRatio) * roughMachFactor(mach);
        const found = skinFriction(roughnessRatio)(reynolds, mach);
        expect(found).toBeGreaterThanOrEqual(Math.max(smooth, rough));
        expect(found).toBeLessThanOrEqual(1.0501 * Math.max(smooth, rough));
      },
    ),
  );
});

test("skinFriction() of a polished surface is the smooth one, and is finite at no flow", () => {
  expect(skinFriction(Number.POSITIVE_INFINITY)(1e7, 0)).toBe(smoothFriction(1e7));
  for (const reynolds of [0, 1e-9, 1]) {
    const found = skinFriction(0)(reynolds, 0);
    expect(Number.isFinite(found) && found > 0).toBe(true);
  }
});
