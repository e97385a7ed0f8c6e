import fc from "fast-check";
import { expect, test } from "vitest";
import { landingEnergy, landingEnergyLimit, sectionLandings, speedForEnergy } from "./landing-energy.js";

const positive = fc.double({ min: 0.05, max: 50, noNaN: true });

test("speedForEnergy() undoes landingEnergy()", () => {
  fc.assert(
    fc.property(positive, positive, (mass, speed) => {
      expect(speedForEnergy({ mass, energy: landingEnergy({ mass, speed }) }) / speed).toBeCloseTo(1, 12);
    }),
  );
});

test("sectionLandings() judges each section by itself, the limit still allowed", () => {
  const rows = sectionLandings([1, 2, 2.01], { speed: 10, limit: 100 });
  expect(rows.map(({ mass, energy }) => [mass, energy])).toEqual([
    [1, 50],
    [2, 100],
    [2.01, expect.closeTo(100.5, 9)],
  ]);
  expect(rows.map(({ aboveLimit }) => aboveLimit)).toEqual([false, false, true]);
  expect(rows.map(({ speedAtLimit }) => speedAtLimit)).toEqual([
    expect.closeTo(Math.sqrt(200), 12),
    expect.closeTo(10, 12),
    expect.closeTo(Math.sqrt(200 / 2.01), 12),
  ]);
});

test("sectionLandings() takes the competition's limit where none is given", () => {
  const { speedAtLimit } = sectionLandings([2], { speed: 1 })[0]!;
  expect(landingEnergy({ mass: 2, speed: speedAtLimit })).toBeCloseTo(landingEnergyLimit, 9);
  expect(sectionLandings([2 * 101.7], { speed: 1 })[0]!.aboveLimit).toBe(true);
  expect(sectionLandings([2 * 101.6], { speed: 1 })[0]!.aboveLimit).toBe(false);
});
