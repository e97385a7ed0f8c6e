import { expect, test } from "vitest";
import { normalGravity } from "../../src/air/gravity.js";
import { heights, rows } from "./rows.js";

const radians = (degrees: number) => (degrees * Math.PI) / 180;

test("normalGravity() gives the WGS 84 table", () => {
  expect(rows).toHaveLength(6);
  for (const [latitude, gravities] of rows) {
    expect(gravities).toHaveLength(4);
    gravities.forEach((gravity, i) => {
      const found = normalGravity(radians(latitude), heights[i]!);
      expect(Math.abs(found - gravity), `${latitude} degrees, ${heights[i]} m`).toBeLessThan(1e-7);
    });
  }
});

test("normalGravity() meets the defining constants at the equator and the poles", () => {
  expect(normalGravity(0, 0)).toBe(9.7803253359);
  expect(normalGravity(Math.PI / 2, 0)).toBeCloseTo(9.8321849378, 12);
});

test("normalGravity() is the closed form with the printed k and e²", () => {
  const [k, eSquared] = [0.00193185265, 0.00669437999];
  for (const [latitude] of rows) {
    const s = Math.sin(radians(latitude)) ** 2;
    // k is printed to 12 decimals, e² to 14.
    expect(normalGravity(radians(latitude), 0)).toBeCloseTo(
      (9.7803253359 * (1 + k * s)) / Math.sqrt(1 - eSquared * s),
      9,
    );
  }
});

test("normalGravity() gives the printed 9.7997 at 55 degrees and 5000 m", () => {
  expect(Math.abs(normalGravity(radians(55), 5_000) - 9.7997)).toBeLessThan(0.00005);
});

test("normalGravity() has the free-air gradient near the ground", () => {
  const gradient = (normalGravity(radians(45), 1_000) - normalGravity(radians(45), 0)) / 1_000;
  expect(Math.abs(gradient / -3.0848e-6 - 1)).toBeLessThan(1e-3);
  // The usual rounding.
  expect(Math.abs(gradient / -3.086e-6 - 1)).toBeLessThan(1e-3);
});
