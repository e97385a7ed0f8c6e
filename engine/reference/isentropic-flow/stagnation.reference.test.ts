import { expect, test } from "vitest";
import { stagnationPressureRatio } from "../../src/rocket/drag/stagnation.js";
import { rows } from "./rows.js";

test("stagnationPressureRatio() gives the printed values (SOURCE.md)", () => {
  expect(rows).toHaveLength(4);
  for (const [mach, printed] of rows)
    expect(Math.abs(stagnationPressureRatio(mach) - printed), `Mach ${mach}`).toBeLessThan(1e-7);
});
