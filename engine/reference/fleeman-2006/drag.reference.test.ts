import { expect, test } from "vitest";
import { baseDrag, baseDragCoasting } from "../../src/rocket/drag/base.js";
import { bodyFrictionEstimate } from "../../src/rocket/drag/friction.js";
import { noseDrag } from "../../src/rocket/drag/nose.js";
import { waveDrag } from "../../src/rocket/supersonic/tangent-cone.js";
import { base, wave } from "./rows.js";

test("baseDragCoasting() gives the printed values (SOURCE.md)", () => {
  expect(base).toHaveLength(6);
  // 1e-6 relative, or half of the sixth decimal where the source prints no finer
  for (const [mach, printed] of base)
    expect(Math.abs(baseDragCoasting(mach) - printed), `Mach ${mach}`).toBeLessThanOrEqual(5e-7);
});

test("baseDrag() is relieved by the share of the base that the motor fills: factor 1 − Ae/A (SOURCE.md; memory)", () => {
  const state = { mach: 0.6, baseDiameter: 0.1, motorDiameter: 0.05, diameter: 0.1 };
  expect(baseDrag({ ...state, thrusting: true })).toBeCloseTo(0.1668 * 0.75, 12);
  expect(baseDrag({ ...state, thrusting: false })).toBeCloseTo(0.1668, 12);
});

test("waveDrag() and noseDrag() give the printed values (SOURCE.md)", () => {
  expect(wave).toHaveLength(6);
  for (const [mach, fineness, printed] of wave) {
    const found = waveDrag(Math.atan(0.5 / fineness), mach);
    // 1e-6 relative, or half of the seventh decimal where the source prints no finer
    const tolerance = Math.max(1e-6 * printed, 5e-8);
    expect(Math.abs(found - printed), `Mach ${mach}, fineness ${fineness}`).toBeLessThanOrEqual(tolerance);
    expect(noseDrag({ shape: { kind: "cone" }, length: fineness }, 1)(mach)).toBeCloseTo(found, 12);
  }
});

test("bodyFrictionEstimate() gives the printed value for L/d 15, 1 m, Mach 0.5 at sea level (SOURCE.md)", () => {
  // U.S. Standard Atmosphere, 1976, at 0 m
  const [density, soundSpeed] = [1.2249992, 340.2941];
  const dynamicPressure = 0.5 * density * (0.5 * soundSpeed) ** 2;
  const found = bodyFrictionEstimate({ fineness: 15, length: 1, mach: 0.5, dynamicPressure });
  expect(Math.abs(found - 0.1672032)).toBeLessThan(1e-5 * 0.1672032);
});
