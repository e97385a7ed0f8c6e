import { expect, test } from "vitest";
import { validityLimits, validityWarnings } from "./validity.js";

test("validityWarnings() is silent inside the ranges and where nothing is known", () => {
  expect(validityWarnings({})).toEqual([]);
  expect(validityWarnings({ mach: 0.9, angleOfAttack: 0.2, fineness: 20, reynolds: 1e7 })).toEqual([]);
});

test("validityWarnings() names every range that was left, with value and limit", () => {
  const found = validityWarnings({ mach: 3.1, angleOfAttack: 0.5, fineness: 4, reynolds: 2e9 });
  expect(found).toEqual([
    { code: "mach-through-bridge", value: 3.1, limit: 0.9 },
    { code: "mach-above-validated", value: 3.1, limit: 3 },
    { code: "angle-of-attack-above-validated", value: 0.5, limit: Math.PI / 12 },
    { code: "fineness-below-validated", value: 4, limit: 5 },
    { code: "reynolds-above-validated", value: 2e9, limit: 1e9 },
  ]);
  expect(validityWarnings({ fineness: 31 })).toEqual([{ code: "fineness-above-validated", value: 31, limit: 30 }]);
  expect(validityWarnings({ mach: 1.1 })).toEqual([{ code: "mach-through-bridge", value: 1.1, limit: 0.9 }]);
  expect(validityLimits).toHaveLength(6);
});
