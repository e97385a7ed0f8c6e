import fc from "fast-check";
import { expect, test } from "vitest";
import { geopotential, standardAir, standardAirAt } from "./standard.js";

test("geopotential() is 0 at sea level and falls behind the geometric altitude above it", () => {
  expect(geopotential(0)).toBe(0);
  expect(geopotential(11_000)).toBeCloseTo(10_980.998, 3);
});

test("standardAir() lets pressure and density fall with height", () => {
  const altitude = fc.double({ min: -5_000, max: 84_000, noNaN: true });
  fc.assert(
    fc.property(altitude, fc.double({ min: 0.1, max: 10_000, noNaN: true }), (low, rise) => {
      const below = standardAir(low);
      const above = standardAir(low + rise);
      expect(above.density).toBeLessThan(below.density);
      expect(above.pressure).toBeLessThan(below.pressure);
    }),
  );
});

test("standardAir() has no jump at a layer's base", () => {
  for (const base of [0, 11_000, 20_000, 32_000, 47_000, 51_000, 71_000, 84_852]) {
    const below = standardAir(base - 1e-6);
    const above = standardAir(base + 1e-6);
    // Two micrometres of air are 3e-10 of its pressure.
    expect(Math.abs(below.pressure / above.pressure - 1)).toBeLessThan(1e-9);
    expect(Math.abs(below.temperature / above.temperature - 1)).toBeLessThan(1e-9);
  }
});

test("standardAir() stays a number far outside the standard", () => {
  for (const altitude of [-20_000, 100_000, 200_000, 1e6]) {
    for (const value of Object.values(standardAir(altitude))) expect(Number.isNaN(value)).toBe(false);
  }
});

test("standardAirAt() is standardAir() at the geopotential altitude", () => {
  expect(standardAirAt(8_000)).toEqual(standardAir(geopotential(8_000)));
});
