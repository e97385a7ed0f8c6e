import { expect, test } from "vitest";
import { turbulentMachFactor } from "../../src/rocket/drag/friction.js";

const rows: readonly (readonly [mach: number, printed: number])[] = [
  [0.5, 0.9772736],
  [0.8, 0.9443086],
  [1.5, 0.8332452],
  [2, 0.7440266],
];

test("turbulentMachFactor() gives the printed values (SOURCE.md)", () => {
  expect(rows).toHaveLength(4);
  for (const [mach, printed] of rows)
    expect(Math.abs(turbulentMachFactor(mach) - printed), `Mach ${mach}`).toBeLessThan(1e-6);
});

test("turbulentMachFactor() differs from a launcher course's form by 0.3 % at Mach 0.5 (SOURCE.md)", () => {
  expect(Math.abs(turbulentMachFactor(0.5) * (1 + 0.08 * 0.25) - 1)).toBeCloseTo(0.003, 3);
});
