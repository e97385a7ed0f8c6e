import { expect, test } from "vitest";
import {
  landingEnergy,
  landingEnergyLimit,
  sectionLandings,
  speedForEnergy,
} from "../../src/packing/landing-energy.js";

const FOOT_POUND = 0.3048 * 0.45359237 * 9.80665;
/** Relative, as the source states. */
const near = (found: number, printed: number, tolerance: number) =>
  expect(Math.abs(found - printed), `${printed}`).toBeLessThan(tolerance * printed);

test("landingEnergyLimit is 75 ft lbf, 101.6863 J (SOURCE.md)", () => {
  near(landingEnergyLimit, 101.6863, 1e-6);
  near(landingEnergyLimit / FOOT_POUND, 75, 1e-14);
});

test("speedForEnergy() and landingEnergy() give the two printed values (SOURCE.md)", () => {
  const rows = [
    // the printed speed is of the unrounded limit
    [speedForEnergy({ mass: 3, energy: landingEnergyLimit }), 8.2335228],
    [landingEnergy({ mass: 2, speed: 6 }), 36],
  ] as const;
  expect(rows).toHaveLength(2);
  for (const [found, printed] of rows) near(found, printed, 1e-7);
});

test("sectionLandings() finds the reported 72 and 60 ft lbf below the limit (SOURCE.md)", () => {
  for (const feetPounds of [72, 60]) {
    const mass = 2 * feetPounds * FOOT_POUND;
    expect(sectionLandings([mass], { speed: 1 })[0]!.aboveLimit).toBe(false);
  }
});
