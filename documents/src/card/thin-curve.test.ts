import { burnOf, type ThrustCurve } from "@delaywright/engine";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { thinCurve } from "./thin-curve.js";

const curves = fc
  .tuple(
    fc.array(fc.integer({ min: 60, max: 200 }), { minLength: 30, maxLength: 200 }),
    fc.integer({ min: 1, max: 400 }),
  )
  .map(([inner, peak]): ThrustCurve => {
    const thrusts = [0, 200 + peak, ...inner, 0];
    return { times: thrusts.map((_, index) => index * 0.01), thrusts };
  });

describe("thinCurve()", () => {
  test("keeps impulse, burn time, average and peak, whatever the curve", () => {
    fc.assert(
      fc.property(curves, fc.integer({ min: 8, max: 25 }), (curve, most) => {
        const thin = thinCurve(curve, most);
        fc.pre(thin !== undefined);
        const [whole, less] = [burnOf(curve), burnOf(thin)];
        expect(thin.times.length).toBeLessThanOrEqual(most);
        expect(less.totalImpulse).toBeCloseTo(whole.totalImpulse, 8);
        expect(less.burnTime).toBeCloseTo(whole.burnTime, 9);
        expect(less.peak).toBe(whole.peak);
        expect(thin.times.every((time) => curve.times.includes(time))).toBe(true);
      }),
    );
  });

  test("a curve of straight pieces loses no more than the points that lie on them", () => {
    const times = Array.from({ length: 101 }, (_, index) => index / 50);
    const thrusts = times.map((time) => Math.min(1000 * time, 100, 1000 * (2 - time)));
    const thin = thinCurve({ times, thrusts }, 12);
    if (thin === undefined) throw new Error("12 points are enough");
    for (const [index, time] of thin.times.entries())
      expect(thin.thrusts[index]).toBeCloseTo(thrusts[times.indexOf(time)] ?? 0, 9);
  });

  test("says so where the points are too few to keep these figures", () => {
    expect(thinCurve({ times: [0, 0.1, 1, 2, 2.1], thrusts: [0, 100, 120, 90, 0] }, 3)).toBeUndefined();
  });
});
