import { expect, test } from "vitest";
import { dragCoefficient, dragFromTable, dragTable } from "./drag-table.js";
import { exampleRocket } from "./example-rocket.js";
import type { Rocket } from "./rocket.js";

const motor = { diameter: 0.038 };
/** U.S. Standard Atmosphere, 1976, troposphere and above it its tropopause; good enough to vary the Reynolds number. */
const temperatureAt = (height: number) => 288.15 - 0.0065 * height;
const speedOfSoundAt = (height: number) => Math.sqrt(1.4 * 287.053 * temperatureAt(height));
const kinematicViscosityAt = (height: number) => {
  const temperature = temperatureAt(height);
  const density = 1.225 * (temperature / 288.15) ** 4.2559;
  return (1.458e-6 * temperature ** 1.5) / (temperature + 110.4) / density;
};
const air = { speedOfSoundAt, kinematicViscosityAt, heights: { step: 250, count: 13 } };

function greatestDifference(rocket: Rocket, fromMach: number, toMach: number): number {
  const table = dragTable(rocket, motor, air);
  const plain = dragCoefficient(rocket, motor);
  let greatest = 0;
  for (let height = 0; height <= 3000; height += 61) {
    const reynoldsPerMach = speedOfSoundAt(height) / kinematicViscosityAt(height);
    for (let mach = fromMach; mach <= toMach; mach += 0.00123)
      for (const thrusting of [false, true]) {
        const exact = plain(mach, mach * reynoldsPerMach, thrusting);
        greatest = Math.max(greatest, Math.abs(dragFromTable(table, mach, height, thrusting) / exact - 1));
      }
  }
  return greatest;
}

test("dragFromTable() differs from dragCoefficient() by less than 1e-4, Mach 0.05…2 and 0…3 km, painted or smooth", () => {
  for (const roughness of [60e-6, 20e-6, 2e-6])
    expect(greatestDifference({ ...exampleRocket, roughness }, 0.05, 2), `${roughness} m`).toBeLessThan(1e-4);
});

test("dragFromTable() of a polished rocket stays within 3e-4: its fins' layers turn turbulent on the way, Mach 0.1…0.2", () => {
  const polished = { ...exampleRocket, roughness: 0 };
  expect(greatestDifference(polished, 0.05, 0.25)).toBeLessThan(3e-4);
  expect(greatestDifference(polished, 0.25, 2)).toBeLessThan(1e-4);
});

test("dragTable() hits dragCoefficient() at its points", () => {
  const table = dragTable(exampleRocket, motor, air);
  const plain = dragCoefficient(exampleRocket, motor);
  expect([table.machCount, table.machStep, table.heightCount, table.heightStep]).toEqual([801, 0.005, 13, 250]);
  const [mach, height] = [0.6, 750];
  const exact = plain(mach, (mach * speedOfSoundAt(height)) / kinematicViscosityAt(height), true);
  expect(dragFromTable(table, mach, height, true)).toBeCloseTo(exact, 9);
});

test("dragFromTable() is constant beyond its ends", () => {
  const table = dragTable(exampleRocket, motor, air);
  expect(dragFromTable(table, 9, 500, false)).toBe(dragFromTable(table, 4, 500, false));
  expect(dragFromTable(table, 0.5, 9000, false)).toBe(dragFromTable(table, 0.5, 3000, false));
  expect(dragFromTable(table, 0.5, -100, false)).toBe(dragFromTable(table, 0.5, 0, false));
});

test("dragTable() of a constant is one value everywhere, scale included", () => {
  const rocket: Rocket = { ...exampleRocket, drag: { from: "constant", cd: 0.5, scale: 1.1 } };
  const table = dragTable(rocket, motor, air);
  expect(table.heightCount).toBe(1);
  expect(new Set([...table.coasting, ...table.thrusting])).toEqual(new Set([0.5 * 1.1]));
  expect(dragFromTable(table, 0.3, 1234, true)).toBe(0.5 * 1.1);
  expect(dragCoefficient(rocket, motor)(0.3, 1e6, true)).toBe(0.5 * 1.1);
});

test("dragCoefficient() of a given table is linear between its rows, constant beyond, with its own column under thrust", () => {
  const drag = {
    from: "table",
    mach: [0.2, 0.6, 1],
    coasting: [0.5, 0.4, 0.8],
    thrusting: [0.45, 0.35, 0.7],
    scale: 2,
  } as const;
  const rocket: Rocket = { ...exampleRocket, drag };
  const plain = dragCoefficient(rocket, motor);
  const rows = [
    [0, 0.5, 0.45],
    [0.2, 0.5, 0.45],
    [0.4, 0.45, 0.4],
    [0.6, 0.4, 0.35],
    [0.9, 0.7, 0.6125],
    [1, 0.8, 0.7],
    [3, 0.8, 0.7],
  ] as const;
  const table = dragTable(rocket, motor, air);
  expect(table.heightCount).toBe(1);
  for (const [mach, coasting, thrusting] of rows) {
    expect(plain(mach, 1e6, false), `Mach ${mach}`).toBeCloseTo(2 * coasting, 12);
    expect(plain(mach, 1e6, true), `Mach ${mach}`).toBeCloseTo(2 * thrusting, 12);
    expect(dragFromTable(table, mach, 100, false), `Mach ${mach}`).toBeCloseTo(2 * coasting, 9);
  }
});

test("dragCoefficient() of a given table with one row is that row", () => {
  const drag = { from: "table", mach: [0.3], coasting: [0.5], thrusting: [0.4], scale: 1 } as const;
  const plain = dragCoefficient({ ...exampleRocket, drag }, motor);
  expect([plain(0, 0, false), plain(0.3, 0, true), plain(2, 0, false)]).toEqual([0.5, 0.4, 0.5]);
});

test("dragCoefficient() multiplies the build-up by its scale", () => {
  const doubled = dragCoefficient({ ...exampleRocket, drag: { from: "build-up", scale: 2 } }, motor);
  expect(doubled(0.5, 1e7, false)).toBeCloseTo(2 * dragCoefficient(exampleRocket, motor)(0.5, 1e7, false), 12);
});
