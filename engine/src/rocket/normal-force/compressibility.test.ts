import fc from "fast-check";
import { expect, test } from "vitest";
import { bridgeOverMach, monotoneBridge } from "./compressibility.js";

const value = fc.double({ min: -10, max: 10, noNaN: true });

test("monotoneBridge() meets its ends and never turns back, whatever slopes are wanted", () => {
  fc.assert(
    fc.property(value, value, value, value, (y0, slope0, y1, slope1) => {
      const bridge = monotoneBridge(0.9, y0, slope0, 1.2, y1, slope1);
      expect(bridge(0.9)).toBeCloseTo(y0, 9);
      expect(bridge(1.2)).toBeCloseTo(y1, 9);
      const steps = Array.from({ length: 100 }, (_, i) => bridge(0.9 + 0.003 * (i + 1)) - bridge(0.9 + 0.003 * i));
      const direction = Math.sign(y1 - y0);
      for (const step of steps) expect(step * direction).toBeGreaterThanOrEqual(-1e-9);
    }),
  );
});

test("monotoneBridge() keeps the wanted slopes where they are monotone", () => {
  const bridge = monotoneBridge(0, 0, 0.5, 1, 1, 2);
  const h = 1e-6;
  expect((bridge(h) - bridge(0)) / h).toBeCloseTo(0.5, 5);
  expect((bridge(1) - bridge(1 - h)) / h).toBeCloseTo(2, 5);
});

test("bridgeOverMach() keeps both rules outside the bridge and is continuous", () => {
  const joined = bridgeOverMach(
    (mach) => 1 + mach,
    (mach) => 4 / mach,
  );
  expect(joined(0.5)).toBe(1.5);
  expect(joined(2)).toBe(2);
  for (const edge of [0.9, 1.2]) expect(joined(edge - 1e-9)).toBeCloseTo(joined(edge + 1e-9), 6);
});
