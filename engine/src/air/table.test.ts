import { expect, test } from "vitest";
import { fieldAir, warmedField } from "./at-field.js";
import type { FieldAir } from "./field-air.js";
import { airTable, tableAir } from "./table.js";

const latitude = 0.9;
const fields: Record<string, FieldAir> = {
  standard: { elevation: 0, latitude },
  worked: { elevation: 210, latitude, temperature: 285.15, pressure: 98_700 },
  warm: { elevation: 40, latitude, temperature: 318, pressure: 100_900, humidity: 0.6 },
  cold: { elevation: 300, latitude, temperature: 245, pressure: 99_000 },
  high: { elevation: 3_200, latitude, temperature: 290, pressure: 69_500, humidity: 0.3 },
  "below the sea": { elevation: -380, latitude, temperature: 310, pressure: 106_000, humidity: 0.2 },
};
const names = Object.keys(fields);
const off = (found: number, exact: number) => Math.abs(found / exact - 1);

function worst(field: FieldAir, top: number, from: number, change = 0) {
  const table = airTable(field, top);
  const airAt = fieldAir(warmedField(field, change));
  let density = 0;
  let soundSpeed = 0;
  for (let z = from; z < top; z += 3.7) {
    const found = tableAir(table, z, change);
    const exact = airAt(z);
    density = Math.max(density, off(found.density, exact.density));
    soundSpeed = Math.max(soundSpeed, off(found.soundSpeed, exact.soundSpeed));
  }
  return { density, soundSpeed };
}

test.each(names)("airTable() is within 1e-6 of fieldAir() up to 20 km above the sea (%s)", (name) => {
  const field = fields[name]!;
  const error = worst(field, 19_900 - field.elevation, -10);
  expect(error.density).toBeLessThan(1e-6);
  expect(error.soundSpeed).toBeLessThan(1e-6);
});

test.each(names)("airTable() is within 4e-5 of fieldAir() at the kinks above (%s)", (name) => {
  const error = worst(fields[name]!, 60_000, 15_000);
  // A quarter of the step times the largest jump of the lapse rate there, 2.8 K/km, over the coldest 188 K.
  expect(error.density).toBeLessThan(4e-5);
  expect(error.soundSpeed).toBeLessThan(4e-5);
});

test.each(names)("airTable() follows the pad's temperature within 2e-5 over 8 K (%s)", (name) => {
  for (const change of [-8, -6, -3.5, -1, 1, 3.5, 6, 8]) {
    const error = worst(fields[name]!, 12_000, 0, change);
    expect(error.density, `${change} K`).toBeLessThan(2e-5);
    expect(error.soundSpeed, `${change} K`).toBeLessThan(2e-5);
  }
});

test("airTable() gives the nodes themselves exactly and reaches the top", () => {
  const table = airTable(fields["worked"]!, 1_234);
  expect((table.count - 1) * table.step).toBeGreaterThanOrEqual(1_234);
  expect((table.count - 2) * table.step).toBeLessThan(1_234);
  const i = 57;
  expect(table.density[i]).toBe(fieldAir(fields["worked"]!)(i * table.step).density);
});

test("airTable() has two heights at least", () => {
  expect(airTable(fields["standard"]!, 0).count).toBe(2);
});

test("tableAir() holds the last height's values above it", () => {
  const table = airTable(fields["standard"]!, 500);
  const top = tableAir(table, (table.count - 1) * table.step);
  expect(tableAir(table, 5_000)).toEqual(top);
  expect(top.density).toBe(table.density.at(-1));
});
