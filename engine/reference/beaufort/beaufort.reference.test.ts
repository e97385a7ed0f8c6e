import { expect, test } from "vitest";
import { beaufortForce, beaufortSpeed } from "../../src/wind/beaufort.js";

/** Slowest and fastest of each force from 0: knots, miles per hour, metres per second; null: open. */
const rows = [
  [0, null, 0, null, 0, 0.2],
  [1, 3, 1, 3, 0.3, 1.5],
  [4, 6, 4, 7, 1.6, 3.3],
  [7, 10, 8, 12, 3.4, 5.4],
  [11, 16, 13, 18, 5.5, 7.9],
  [17, 21, 19, 24, 8.0, 10.7],
  [22, 27, 25, 31, 10.8, 13.8],
  [28, 33, 32, 38, 13.9, 17.1],
  [34, 40, 39, 46, 17.2, 20.7],
  [41, 47, 47, 54, 20.8, 24.4],
  [48, 55, 55, 63, 24.5, 28.4],
  [56, 63, 64, 72, 28.5, 32.6],
  [64, null, 73, null, 32.7, null],
] as const;

test("beaufortForce() gives the limits in metres per second", () => {
  expect(rows).toHaveLength(13);
  rows.forEach(([, , , , slowest, fastest], force) => {
    expect(beaufortForce(slowest)).toBe(force);
    if (fastest !== null) expect(beaufortForce(fastest)).toBe(force);
  });
});

test.each([
  ["knots", 0, 1852 / 3600],
  ["miles per hour", 2, 0.44704],
] as const)("beaufortForce() agrees with the limits in %s to half a unit", (_, column, unit) => {
  rows.forEach((row, force) => {
    const [slowest, fastest] = [row[column], row[column + 1] as number | null];
    expect(beaufortForce((slowest + 0.5) * unit)).toBeGreaterThanOrEqual(force);
    expect(beaufortForce(Math.max(0, slowest - 0.5) * unit)).toBeLessThanOrEqual(force);
    if (fastest !== null) expect(beaufortForce((fastest - 0.5) * unit)).toBeLessThanOrEqual(force);
    if (fastest !== null) expect(beaufortForce((fastest + 0.5) * unit)).toBeGreaterThanOrEqual(force);
  });
});

test("beaufortSpeed() of force 4 is 6.688 m/s", () => {
  expect(beaufortSpeed(4)).toBeCloseTo(6.688, 12);
});
