import { expect, test } from "vitest";
import { fieldAir } from "../../src/air/at-field.js";
import {
  DRY_AIR_GAS_CONSTANT,
  DRY_AIR_MOLAR_MASS,
  GEOPOTENTIAL_RADIUS,
  HEAT_CAPACITY_RATIO,
  STANDARD_GRAVITY,
} from "../../src/air/constants.js";
import { densityAltitude } from "../../src/air/density-altitude.js";
import type { Air } from "../../src/air/field-air.js";
import { standardGravityAt } from "../../src/air/gravity.js";
import { standardAir, standardAirAt } from "../../src/air/standard.js";
import { dynamicViscosity } from "../../src/air/viscosity.js";
import { bases, lapses } from "./constants.js";
import { geometricRows, geopotentialRows, printedRows, type Row } from "./rows.js";

const off = (found: number, expected: number) => Math.abs(found / expected - 1);

// 1e-6 of the value, and half of the last digit where a column carries fewer digits than that.
function expectRow(
  air: Air,
  [altitude, temperature, pressure, density, soundSpeed, viscosity]: Row,
  halfDigit: number,
) {
  const at = `at ${altitude} m`;
  expect(Math.abs(air.temperature - temperature), at).toBeLessThanOrEqual(halfDigit + 1e-9);
  expect(off(air.pressure, pressure), at).toBeLessThan(1e-6);
  expect(off(air.density, density), at).toBeLessThan(1e-6);
  expect(off(air.soundSpeed, soundSpeed), at).toBeLessThan(1e-6);
  expect(off(air.viscosity, viscosity * 1e-5), at).toBeLessThan(1e-6);
}

test("standardAir() gives US76 by geopotential altitude", () => {
  expect(geopotentialRows).toHaveLength(10);
  for (const row of geopotentialRows) expectRow(standardAir(row[0]), row, 0.0005);
});

test("standardAirAt() gives US76 by geometric altitude", () => {
  expect(geometricRows).toHaveLength(10);
  for (const row of geometricRows) expectRow(standardAirAt(row[0]), row, 0.00005);
});

test("fieldAir() gives US76 by geometric altitude where nothing was measured at sea level", () => {
  const airAt = fieldAir({ elevation: 0, latitude: 0.9 });
  for (const row of geometricRows) expectRow(airAt(row[0]), row, 0.00005);
});

test("standardAirAt() gives a handbook's printed US76", () => {
  expect(printedRows).toHaveLength(8);
  for (const [altitude, temperature, pressure, density, soundSpeed] of printedRows) {
    const air = standardAirAt(altitude);
    // 1e-3, as the copied table asks: its columns carry four digits or more.
    expect(off(air.temperature, temperature)).toBeLessThan(1e-3);
    expect(off(air.pressure, pressure * 1e5)).toBeLessThan(1e-3);
    if (density !== null) expect(off(air.density, density)).toBeLessThan(1e-3);
    expect(off(air.soundSpeed, soundSpeed)).toBeLessThan(1e-3);
  }
});

test("standardAir() has the layer bases and lapse rates of US76", () => {
  expect(bases).toHaveLength(7);
  expect(lapses).toHaveLength(7);
  bases.forEach(([altitude, temperature, pressure], i) => {
    const air = standardAir(altitude);
    expect(air.temperature).toBeCloseTo(temperature, 9);
    // The pressures are printed to four or five digits.
    if (pressure !== null) expect(off(air.pressure, pressure)).toBeLessThan(1e-4);
    expect((standardAir(altitude + 1_000).temperature - air.temperature) / 1_000).toBeCloseTo(lapses[i]!, 12);
  });
});

test("STANDARD_GRAVITY and the other constants are those of US76", () => {
  expect(STANDARD_GRAVITY).toBe(9.80665);
  expect(GEOPOTENTIAL_RADIUS).toBe(6_356_766);
  expect(DRY_AIR_MOLAR_MASS).toBe(28.9644);
  expect(HEAT_CAPACITY_RATIO).toBe(1.4);
  // R to the nine digits it is given with.
  expect(DRY_AIR_GAS_CONSTANT).toBeCloseTo(287.053072, 6);
  expect(standardAir(0)).toMatchObject({ temperature: 288.15, pressure: 101_325 });
});

test("dynamicViscosity() is Sutherland's law with US76's β and S, not with the S of 110 K", () => {
  expect(dynamicViscosity(288.15)).toBeCloseTo((1.458e-6 * 288.15 ** 1.5) / (288.15 + 110.4), 18);
  expect(off(dynamicViscosity(288.15), 1.79117e-5)).toBeGreaterThan(9e-4);
  // The printed sea-level value has four digits.
  expect(off(dynamicViscosity(288.15), 1.789e-5)).toBeLessThan(5e-4);
});

test("standardGravityAt() is US76's inverse square", () => {
  const rows = [
    [1_000, 9.8035653],
    [3_000, 9.7974003],
    [5_000, 9.7912411],
  ] as const;
  expect(rows).toHaveLength(3);
  // 1e-7 m/s², the last printed digit.
  for (const [altitude, gravity] of rows) expect(Math.abs(standardGravityAt(altitude) - gravity)).toBeLessThan(1e-7);
});

test("densityAltitude() inverts US76's densities", () => {
  // Density is printed to 7 decimals: near 20 km, 5e-8 of 0.088 kg/m³ over a scale height of 6.3 km is 4 mm.
  for (const [altitude, , , density] of geopotentialRows) {
    expect(Math.abs(densityAltitude(density) - altitude)).toBeLessThan(0.005);
  }
});
