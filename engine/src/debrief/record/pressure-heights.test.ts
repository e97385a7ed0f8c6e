import { expect, test } from "vitest";
import { fieldAir, geopotential } from "../../index.js";
import { heightsFromPressure, heightsInDaysAir, standardElevation } from "./pressure-heights.js";

// check values, section 15 (U.S. Standard Atmosphere 1976, recomputed): pad 950.00 hPa, apogee 845.00 hPa
const pad = 95_000;
const apogee = 84_500;

/** Geopotential metres gained above a pad, as the check values print them. */
const gained = (geometric: number, elevation: number): number =>
  geopotential(elevation + geometric) - geopotential(elevation);

test("standardElevation() of 950.00 hPa is the check value's 540.33748 geopotential metres", () => {
  expect(geopotential(standardElevation(pad))).toBeCloseTo(540.33748, 4);
});

test("heightsFromPressure() gives the worked log's 965.06146 m", () => {
  const elevation = standardElevation(pad);
  // the table is linear in the logarithm of pressure over 25 m: within 2 mm
  expect(Math.abs(gained(heightsFromPressure(pad)(apogee), elevation) - 965.06146)).toBeLessThan(0.003);
});

test("heightsFromPressure() with 30 degrees at the pad gives the worked log's 1027.82686 m", () => {
  const elevation = standardElevation(pad);
  const air = { elevation, latitude: 0.8, temperature: 303.15 };
  expect(Math.abs(gained(heightsFromPressure(pad, air)(apogee), elevation) - 1027.82686)).toBeLessThan(0.003);
});

test("heightsFromPressure() is the inverse of the field's air, below the pad too; only the ratio to the pad counts", () => {
  const air = { elevation: 1200, latitude: 0.8, temperature: 290, pressure: 87_000 };
  const at = fieldAir(air);
  const heights = heightsFromPressure(87_000, air);
  const high = heightsFromPressure(87_300, air);
  for (const z of [-60, 0, 7, 333, 3100, 12_345]) {
    expect(Math.abs(heights(at(z).pressure) - z)).toBeLessThan(0.003);
    expect(Math.abs(high((at(z).pressure * 87_300) / 87_000) - z)).toBeLessThan(0.003);
  }
});

test("heightsFromPressure() gives NaN where a pressure is none", () => {
  for (const broken of [0, -5, Number.NaN]) expect(heightsFromPressure(pad)(broken)).toBeNaN();
});

test("heightsInDaysAir() stretches an instrument's standard height by the worked log's factor 1.0650377", () => {
  const elevation = standardElevation(pad);
  const day = heightsInDaysAir(elevation, { elevation, latitude: 0.8, temperature: 303.15 });
  const standard = heightsFromPressure(pad)(apogee);
  expect(day(standard) / standard).toBeCloseTo(1.0650377, 4);
  expect(day(0)).toBeCloseTo(0, 6);
  expect(day(Number.NaN)).toBeNaN();
});
