import { expect, test } from "vitest";
import { shearPin, shearPins, shearPinsLoad } from "../../src/packing/shear-pins.js";

const INCH = 0.0254;
const POUND_FORCE = 0.45359237 * 9.80665;

/** 1e-5, or half of the last printed digit where that is coarser (SOURCE.md). */
const printed = (found: number, value: number, halfDigit: number) =>
  expect(Math.abs(found - value), `${value}`).toBeLessThanOrEqual(Math.max(1e-5 * value, halfDigit));

/** Size, diameter [in], root and stress area [in²], loads at both [N], [lbf]. */
const rows = [
  ["2-56", 0.086, 0.0030978, 0.0036962, 107.92, 128.77, 24.26, 28.95],
  ["4-40", 0.112, 0.0049669, 0.0060328, 173.04, 210.17, 38.9, 47.25],
  ["6-32", 0.138, 0.0074517, 0.0090852, 259.61, 316.52, 58.36, 71.16],
] as const;

test("shearPin() gives the printed areas and loads (SOURCE.md)", () => {
  expect(rows).toHaveLength(3);
  expect(shearPins.map(({ size }) => size)).toEqual(rows.map(([size]) => size));
  for (const [size, diameter, root, stress, rootNewtons, stressNewtons, rootPounds, stressPounds] of rows) {
    const pin = shearPin(size)!;
    printed(pin.diameter / INCH, diameter, 0);
    printed(pin.rootArea / INCH ** 2, root, 5e-8);
    printed(pin.stressArea / INCH ** 2, stress, 5e-8);
    printed(pin.load.root, rootNewtons, 0.005);
    printed(pin.load.stress, stressNewtons, 0.005);
    printed(pin.load.root / POUND_FORCE, rootPounds, 0.005);
    printed(pin.load.stress / POUND_FORCE, stressPounds, 0.005);
    // "28 % more", printed without decimals
    expect(Math.round(100 * (pin.load.dry / pin.load.stress - 1))).toBe(28);
  }
});

/** Size, least and most of the loads in common practice [lbf]. */
const practice = [
  ["2-56", 25, 35],
  ["4-40", 40, 50],
  ["6-32", 60, 75],
] as const;

test("shearPin() lies within 25 % of the middle of the common-practice loads, by root and by stress area (SOURCE.md)", () => {
  expect(practice).toHaveLength(3);
  for (const [size, least, most] of practice) {
    const { load } = shearPin(size)!;
    const middle = ((least + most) / 2) * POUND_FORCE;
    for (const found of [load.root, load.stress]) expect(Math.abs(found / middle - 1), size).toBeLessThanOrEqual(0.25);
  }
});

test("shearPinsLoad() adds the printed loads up (SOURCE.md)", () => {
  const { total } = shearPinsLoad(rows.map(([size], i) => ({ size, count: i + 1 })));
  // each printed to 0.005 N, counted 1 + 2 + 3 times
  expect(Math.abs(total!.root - (107.92 + 2 * 173.04 + 3 * 259.61))).toBeLessThan(0.03);
  expect(Math.abs(total!.stress - (128.77 + 2 * 210.17 + 3 * 316.52))).toBeLessThan(0.03);
});
