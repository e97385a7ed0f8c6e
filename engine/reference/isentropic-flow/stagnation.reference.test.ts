import { expect, test } from "vitest";
import { stagnationPressureRatio } from "../../src/rocket/drag/stagnation.js";

const rows: readonly (readonly [mach: number, printed: number])[] = [
  [0.3, 1.022703],
  [0.5, 1.0640722],
  [0.8, 1.1704018],
  [1, 1.2756131],
];

test("stagnationPressureRatio() gives the printed values (SOURCE.md)", () => {
  expect(rows).toHaveLength(4);
  for (const [mach, printed] of rows)
    expect(Math.abs(stagnationPressureRatio(mach) - printed), `Mach ${mach}`).toBeLessThan(1e-7);
});
