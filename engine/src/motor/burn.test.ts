import { expect, test } from "vitest";
import { burnOf } from "./burn.js";

test("burnOf() starts and ends where the thrust passes 5 % of its peak", () => {
  const burn = burnOf({ times: [0, 1, 2], thrusts: [0, 100, 0] });
  expect(burn.peak).toBe(100);
  expect(burn.start).toBeCloseTo(0.05, 12);
  expect(burn.end).toBeCloseTo(1.95, 12);
  expect(burn.averageThrust).toBeCloseTo(100 / 1.9, 9);
});

test("burnOf() starts at a first point above 5 % and ends at a last one above it", () => {
  const burn = burnOf({ times: [0.2, 1, 3], thrusts: [60, 100, 30] });
  expect([burn.start, burn.end]).toEqual([0.2, 3]);
});

test("burnOf() goes through a dip below 5 % to the last fall", () => {
  const burn = burnOf({ times: [0, 1, 2, 3, 4], thrusts: [100, 0, 50, 0, 0] });
  expect(burn.start).toBe(0);
  expect(burn.end).toBeCloseTo(2.9, 12);
});

test("burnOf() counts the tail in the impulse, not in the burn", () => {
  const burn = burnOf({ times: [0, 1, 1.001, 10], thrusts: [100, 100, 4, 0] });
  expect(burn.end).toBeLessThan(1.001);
  expect(burn.totalImpulse).toBeCloseTo(100 + 0.052 + 2 * 8.999, 9);
});
