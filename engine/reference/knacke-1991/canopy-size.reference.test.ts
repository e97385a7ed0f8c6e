import { expect, test } from "vitest";
import { clusterDescentSpeed, clusterDragFactor } from "../../src/packing/canopy-cluster.js";
import { canopyForSpeed, spillHoleAreaLeft } from "../../src/packing/canopy-size.js";

const GRAVITY = 9.80665;
const INCH = 0.0254;

test("canopyForSpeed() leads from the three printed descent speeds back to their canopies (SOURCE.md)", () => {
  const rows = [
    [1.35, 1.225, 0.9144, 6.6246416],
    [6, 1, 1.8288, 7.7287485],
    [1.35, 1.225, 0.3048, 19.873925],
  ] as const;
  expect(rows).toHaveLength(3);
  for (const [mass, density, diameter, speed] of rows) {
    const found = canopyForSpeed({ mass, density, gravity: GRAVITY, speed }, { cd: 0.75 });
    expect(Math.abs(found / diameter - 1)).toBeLessThan(1e-6);
  }
});

test("spillHoleAreaLeft() of 6 in in 36 in is 0.9722222 (SOURCE.md)", () => {
  expect(Math.abs(spillHoleAreaLeft({ diameter: 36 * INCH, hole: 6 * INCH }) / 0.9722222 - 1)).toBeLessThan(1e-7);
});

test("clusterDragFactor is 0.95 for two canopies and 0.90 for three (SOURCE.md)", () => {
  const rows = [
    [1, 1],
    [2, 0.95],
    [3, 0.9],
  ] as const;
  expect(rows).toHaveLength(Object.keys(clusterDragFactor).length);
  // the handbook's tolerance is 5 %; what is remembered is taken over exactly
  for (const [count, factor] of rows) expect(clusterDragFactor[count]).toBe(factor);
});

test("clusterDescentSpeed() falls by 1/√N before the cluster's losses (SOURCE.md)", () => {
  for (const count of [1, 2, 3] as const) {
    const lossless = clusterDescentSpeed(8, count) * Math.sqrt(clusterDragFactor[count]);
    expect(lossless).toBeCloseTo(8 / Math.sqrt(count), 12);
  }
});
