import { expect, test } from "vitest";
import { forceReduction, openingLoad } from "../../src/packing/opening-load.js";

/** [A, X1 for j = 1, X1 for j = 2] */
const reductions = [
  [0.05, 0.102698, 0.0790421],
  [0.2, 0.205396, 0.1991735],
  [0.5, 0.3247595, 0.3668808],
  [1, 0.4592793, 0.5625],
  [5, 0.8264463, 0.8789062],
  [100, 0.9900745, 0.9933665],
] as const;

test("forceReduction() gives the printed values to 1e-7 (SOURCE.md)", () => {
  expect(reductions).toHaveLength(6);
  for (const [ballistic, one, two] of reductions) {
    expect(Math.abs(forceReduction(ballistic, 1) - one), `A ${ballistic}, j 1`).toBeLessThan(1e-7);
    expect(Math.abs(forceReduction(ballistic, 2) - two), `A ${ballistic}, j 2`).toBeLessThan(1e-7);
  }
});

/** [mass, speed, density, diameter, A, X1, force, force of an infinite mass] */
const openings = [
  [1.6, 15, 1.1, 0.9144, 0.8074349, 0.5009798, 51.90843, 103.61383],
  [6, 25, 1.05, 1.8288, 0.3965082, 0.3143256, 345.42327, 1098.9345],
] as const;

test("openingLoad() gives the two printed openings to 1e-6 (SOURCE.md)", () => {
  expect(openings).toHaveLength(2);
  for (const [mass, speed, density, diameter, ballistic, reduction, force, infinite] of openings) {
    const load = openingLoad({ mass, density, canopy: { shape: "flat circular", diameter, cd: 0.75 } }, speed);
    for (const [found, printed] of [
      [load.ballistic, ballistic],
      [load.reduction, reduction],
      [load.force, force],
      [load.infiniteMassForce, infinite],
    ] as const)
      expect(Math.abs(found - printed), `${printed}`).toBeLessThan(1e-6 * printed);
  }
});
