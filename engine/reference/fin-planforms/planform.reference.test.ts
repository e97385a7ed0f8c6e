import { expect, test } from "vitest";
import { finPlanform } from "../../src/rocket/normal-force/planform.js";
import type { FinShape } from "../../src/rocket/rocket.js";

interface Row {
  readonly shape: FinShape;
  readonly area: number;
  readonly meanChord: number;
  readonly spanStation: number;
  readonly quarterChordAt: number;
}

const rows: readonly Row[] = [
  {
    shape: { kind: "ellipse", root: 0.15, span: 0.1 },
    area: 0.0117809725,
    meanChord: 0.1273239545,
    spanStation: 0.0424413182,
    quarterChordAt: 0.0431690114,
  },
  {
    shape: { kind: "trapezoid", root: 0.2, tip: 0.1, span: 0.1, sweep: 0.1 },
    area: 0.015,
    meanChord: 0.1555555556,
    spanStation: 0.0444444444,
    quarterChordAt: 0.0833333333,
  },
  {
    shape: {
      kind: "polygon",
      points: [
        [0, 0],
        [0.05, 0.06],
        [0.14, 0.09],
        [0.2, 0.09],
        [0.18, 0],
      ],
    },
    area: 0.01275,
    meanChord: 0.1492026144,
    spanStation: 0.0394117647,
    quarterChordAt: 0.0768562092,
  },
];

/** Half of the tenth decimal that the source prints. */
const HALF_DIGIT = 5e-11;

test("finPlanform() gives area, mean chord, its station and quarter point (SOURCE.md)", () => {
  expect(rows).toHaveLength(3);
  for (const row of rows) {
    const found = finPlanform(row.shape);
    for (const key of ["area", "meanChord", "spanStation", "quarterChordAt"] as const)
      expect(Math.abs(found[key] - row[key]), `${row.shape.kind} ${key}`).toBeLessThan(1e-9 * row[key] + HALF_DIGIT);
  }
});
