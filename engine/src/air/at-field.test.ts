import fc from "fast-check";
import { expect, test } from "vitest";
import { fieldAir, padTemperature, warmedField } from "./at-field.js";
import { STANDARD_GRAVITY } from "./constants.js";
import type { FieldAir } from "./field-air.js";
import { saturationPressure } from "./humidity.js";
import { geopotential, standardAirAt } from "./standard.js";

const anyField: fc.Arbitrary<FieldAir> = fc.record({
  elevation: fc.double({ min: -400, max: 4_000, noNaN: true }),
  latitude: fc.constant(0.9),
  temperature: fc.double({ min: 240, max: 320, noNaN: true }),
  pressure: fc.double({ min: 55_000, max: 107_000, noNaN: true }),
  humidity: fc.double({ min: 0, max: 1, noNaN: true }),
});

test("fieldAir() is the standard atmosphere where nothing was measured", () => {
  for (const elevation of [0, 210, 1_600, 3_000]) {
    const airAt = fieldAir({ elevation, latitude: 0.9 });
    for (let z = 0; z < 84_000; z += 777) {
      const air = airAt(z);
      const standard = standardAirAt(elevation + z);
      for (const key of ["temperature", "pressure", "density", "soundSpeed", "viscosity"] as const) {
        expect(Math.abs(air[key] / standard[key] - 1), `${key} at ${z} m over ${elevation} m`).toBeLessThan(1e-12);
      }
    }
  }
});

test("fieldAir() meets the measured temperature and pressure at the pad", () => {
  fc.assert(
    fc.property(anyField, (field) => {
      const air = fieldAir(field)(0);
      expect(Math.abs(air.temperature / field.temperature! - 1)).toBeLessThan(1e-14);
      expect(Math.abs(air.pressure / field.pressure! - 1)).toBeLessThan(1e-14);
    }),
  );
});

test("fieldAir() shifts the standard's temperatures by a constant", () => {
  const airAt = fieldAir({ elevation: 300, latitude: 0.9, temperature: 300 });
  const shift = 300 - standardAirAt(300).temperature;
  for (const z of [-50, 0, 1_000, 9_000, 15_000, 40_000]) {
    expect(airAt(z).temperature - standardAirAt(300 + z).temperature).toBeCloseTo(shift, 9);
  }
});

test("fieldAir() is in hydrostatic balance in geopotential height", () => {
  fc.assert(
    fc.property(anyField, fc.integer({ min: 0, max: 30_000 }), (field, z) => {
      const airAt = fieldAir(field);
      const rise = 2;
      const thickness = geopotential(field.elevation + z + rise) - geopotential(field.elevation + z - rise);
      const weight = airAt(z).density * STANDARD_GRAVITY * thickness;
      const drop = airAt(z - rise).pressure - airAt(z + rise).pressure;
      // The density at the middle stands for 4 m of air: off by up to 4e-5 across a kink of the profile, 1e-7 elsewhere.
      expect(Math.abs(drop / weight - 1)).toBeLessThan(1e-4);
    }),
  );
});

test("fieldAir() lets density fall with height", () => {
  fc.assert(
    fc.property(anyField, fc.integer({ min: -100, max: 84_000 }), (field, z) => {
      const airAt = fieldAir(field);
      expect(airAt(z + 10).density).toBeLessThan(airAt(z).density);
    }),
  );
});

test("fieldAir() makes moist air thinner and faster for sound at the same pressure", () => {
  const dry = fieldAir({ elevation: 0, latitude: 0.9, temperature: 303.15 })(500);
  const moist = fieldAir({ elevation: 0, latitude: 0.9, temperature: 303.15, humidity: 0.8 })(500);
  expect(moist.density).toBeLessThan(0.99 * dry.density);
  expect(moist.soundSpeed).toBeGreaterThan(dry.soundSpeed);
  expect(moist.temperature).toBe(dry.temperature);
});

test("fieldAir() gives numbers below the pad and far above the atmosphere", () => {
  fc.assert(
    fc.property(anyField, fc.double({ min: -1_000, max: 1e6, noNaN: true }), (field, z) => {
      for (const value of Object.values(fieldAir(field)(z))) expect(Number.isFinite(value)).toBe(true);
    }),
  );
});

test("warmedField() keeps station pressure and vapour pressure", () => {
  const field = { elevation: 210, latitude: 0.9, temperature: 290, pressure: 98_000, humidity: 0.5 };
  const warmed = warmedField(field, 6);
  expect(warmed.temperature).toBe(296);
  expect(warmed.pressure).toBe(98_000);
  expect(warmed.humidity! * saturationPressure(296)).toBeCloseTo(0.5 * saturationPressure(290), 9);
});

test("warmedField() starts from the standard's temperature where none was measured", () => {
  const field = { elevation: 1_000, latitude: 0.9 };
  expect(warmedField(field, -3)).toEqual({ ...field, temperature: padTemperature(field) - 3 });
});
