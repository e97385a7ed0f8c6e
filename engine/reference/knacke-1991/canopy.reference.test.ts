import { expect, test } from "vitest";
import { canopyData, canopyDragArea, descentSpeed, fillTimeAtConstantSpeed } from "../../src/packing/canopy.js";
import type { Canopy } from "../../src/packing/recovery.js";
import { canopyRows } from "./canopies.js";

const GRAVITY = 9.80665;
const flat = (diameter: number): Canopy => ({ shape: "flat circular", diameter, cd: 0.75 });
/** Relative, as the source states. */
const near = (found: number, printed: number) => expect(Math.abs(found - printed)).toBeLessThan(1e-6 * printed);

test("canopyData holds every row of the handbook (SOURCE.md)", () => {
  expect(canopyRows).toHaveLength(15);
  expect(Object.keys(canopyData)).toHaveLength(15);
  for (const [shape, cdLow, cdHigh, cxLow, cxHigh, fill] of canopyRows) {
    const data = canopyData[shape];
    expect([data.cdLow, data.cdHigh], shape).toEqual([cdLow, cdHigh]);
    expect(data.cd, shape).toBeCloseTo((cdLow + cdHigh) / 2, 12);
    expect(data.openingForce, shape).toBeCloseTo((cxLow + cxHigh) / 2, 12);
    if (fill !== null) expect(data.fillConstant, shape).toBe(fill);
    else expect(data.fillConstant, shape).toBe(canopyData[data.fillConstantOf ?? shape].fillConstant);
    expect(data.fillConstantOf === undefined, shape).toBe(fill !== null);
  }
});

test("descentSpeed() gives the three printed speeds (SOURCE.md)", () => {
  const rows = [
    [1.35, 1.225, 0.9144, 6.6246416],
    [6, 1, 1.8288, 7.7287485],
    [1.35, 1.225, 0.3048, 19.873925],
  ] as const;
  expect(rows).toHaveLength(3);
  for (const [mass, density, diameter, printed] of rows)
    near(descentSpeed({ mass, density, canopy: flat(diameter), gravity: GRAVITY }), printed);
});

test("canopyDragArea() and fillTimeAtConstantSpeed() give the printed opening's values (SOURCE.md)", () => {
  near(canopyDragArea(flat(0.9144)), 0.4925197);
  near(fillTimeAtConstantSpeed(flat(0.9144), 15), 0.48768);
});
