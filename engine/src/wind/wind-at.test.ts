import fc from "fast-check";
import { expect, test } from "vitest";
import type { AloftWind, PowerLawWind } from "./profile.js";
import { windAt } from "./wind-at.js";

const power: PowerLawWind = {
  kind: "power",
  east: 3,
  north: -4,
  referenceHeight: 2,
  exponent: 0.2,
  gradientHeight: 300,
};
const aloft: AloftWind = { kind: "aloft", heights: [50, 100, 400], east: [2, 6, 6], north: [0, -2, 4] };

test("windAt() of a power law is the reading at its height and zero at the ground and below", () => {
  const wind = windAt(power);
  expect(wind(2)).toEqual([3, -4, 0]);
  expect(Math.hypot(...wind(0))).toBe(0);
  expect(Math.hypot(...wind(-10))).toBe(0);
});

test("windAt() of a power law with exponent 0 still is zero at the ground", () => {
  const wind = windAt({ ...power, exponent: 0 });
  expect(wind(1)).toEqual([3, -4, 0]);
  expect(Math.hypot(...wind(0))).toBe(0);
});

test("windAt() of a power law stops growing at the gradient height", () => {
  const wind = windAt(power);
  expect(wind(300)[0]).toBeGreaterThan(wind(299)[0]);
  expect(wind(3_000)).toEqual(wind(300));
  expect(windAt({ ...power, gradientHeight: Infinity })(3_000)[0]).toBeGreaterThan(wind(300)[0]);
});

test("windAt() of a power law never turns and never falls with height", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 2_000, noNaN: true }),
      fc.double({ min: 0, max: 500, noNaN: true }),
      (z, rise) => {
        const [east, north] = windAt(power)(z);
        const [eastAbove, northAbove] = windAt(power)(z + rise);
        expect(eastAbove * north).toBeCloseTo(northAbove * east, 9);
        expect(Math.hypot(eastAbove, northAbove)).toBeGreaterThanOrEqual(Math.hypot(east, north));
      },
    ),
  );
});

test("windAt() of winds aloft meets its rows and is linear by components between them", () => {
  const wind = windAt(aloft);
  expect(wind(50)).toEqual([2, 0, 0]);
  expect(wind(75)).toEqual([4, -1, 0]);
  expect(wind(100)).toEqual([6, -2, 0]);
  expect(wind(250)).toEqual([6, 1, 0]);
});

test("windAt() of winds aloft is constant beyond its rows, down to the ground and below", () => {
  const wind = windAt(aloft);
  for (const z of [-5, 0, 49]) expect(wind(z)).toEqual([2, 0, 0]);
  for (const z of [400, 401, 9_000]) expect(wind(z)).toEqual([6, 4, 0]);
});

test("windAt() of winds aloft takes a single row", () => {
  const wind = windAt({ kind: "aloft", heights: [100], east: [1], north: [2] });
  for (const z of [0, 100, 200]) expect(wind(z)).toEqual([1, 2, 0]);
});
