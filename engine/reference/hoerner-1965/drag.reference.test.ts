import { expect, test } from "vitest";
import { baseDragCoasting, baseDragFromBoundaryLayer } from "../../src/rocket/drag/base.js";
import { bodyFormFactor } from "../../src/rocket/drag/body.js";
import { finFormFactor } from "../../src/rocket/drag/fins.js";
import { fittingData } from "../../src/rocket/drag/fittings.js";
import { roughMachFactor } from "../../src/rocket/drag/friction.js";

type Row = readonly [at: number, printed: number];

const laws: readonly (readonly [name: string, law: (at: number) => number, rows: readonly Row[]])[] = [
  [
    "bodyFormFactor",
    bodyFormFactor,
    [
      [8, 1.0799631],
      [10, 1.0544342],
      [15, 1.027894],
      [20, 1.0176455],
    ],
  ],
  [
    "finFormFactor",
    finFormFactor,
    [
      [0.02, 1.0400096],
      [0.03, 1.0600486],
      [0.05, 1.100375],
      [0.1, 1.206],
    ],
  ],
  [
    "baseDragFromBoundaryLayer",
    (forebody) => baseDragFromBoundaryLayer(forebody, 1),
    [
      [0.1, 0.0917061],
      [0.15, 0.0748777],
      [0.2, 0.064846],
      [0.3, 0.0529465],
    ],
  ],
  ["roughMachFactor", roughMachFactor, [[0.8, 0.8967001]]],
];

test.each(laws)("%s() gives the printed values (SOURCE.md)", (_, law, rows) => {
  for (const [at, printed] of rows) expect(Math.abs(law(at) - printed), `at ${at}`).toBeLessThanOrEqual(1e-6 * printed);
});

test("the reference laws of drag have all their rows", () => {
  expect(laws.flatMap(([, , rows]) => rows)).toHaveLength(13);
});

test("baseDragCoasting() is about 0.2 at a projectile's speed, within the 20 % of the source (1950, first page)", () => {
  expect(Math.abs(baseDragCoasting(0.8) - 0.2)).toBeLessThan(0.2 * 0.2);
});

test("fittingData has a block's 1.0 to 1.2 and a lug's 1.2 on the frontal area (ch. V; memory, 30 %)", () => {
  expect(fittingData["rail button"].cd).toBe(1.1);
  expect(fittingData["rail guide"].cd).toBe(1.1);
  expect(fittingData["launch lug"].cd).toBe(1.2);
});
