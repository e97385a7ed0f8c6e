import { expect, test } from "vitest";
import {
  bayVolume,
  chargeForPressure,
  endForce,
  powderGas,
  pressureForForce,
  pressureOfCharge,
  usualPressures,
} from "../../src/packing/ejection-charge.js";
import { bays, GRAM, INCH, POUND_FORCE, PSI } from "./bays.js";

/** Relative as the source states, or half of the last printed digit where that is coarser. */
const near = (found: number, printed: number, tolerance: number, halfDigit = 0) =>
  expect(Math.abs(found - printed), `${printed}`).toBeLessThanOrEqual(Math.max(tolerance * printed, halfDigit));

test("powderGas has the printed constants, but for the rounding of 265.92 to 266 (SOURCE.md)", () => {
  const gasConstant = powderGas.gasConstant * (265.92 / 266);
  const { temperature } = powderGas;
  const rows = [
    [gasConstant, 119.2279],
    [temperature, 1837.2222],
    [gasConstant * temperature, 219_048.1],
    // universal gas constant [J/(mol K)], CODATA 2018, exact
    [8.314462618 / gasConstant, 0.0697359],
  ] as const;
  expect(rows).toHaveLength(4);
  for (const [found, printed] of rows) near(found, printed, 1e-6);
  // "13 % lower", printed without decimals
  expect(Math.round(100 * (1 - 103.9 / gasConstant))).toBe(13);
});

test("chargeForPressure() gives the printed charges for a volume and pressure (SOURCE.md)", () => {
  /** Pressure, volume, grams, half of the last printed digit. */
  const rows = [
    [15 * PSI, INCH ** 3, 0.007734659, 5e-10],
    [15 * PSI, 0.001, 0.4719978, 5e-8],
    [PSI, 0.001, 0.03146652, 5e-9],
    [15 * PSI, bayVolume({ diameter: INCH, length: INCH }), 0.006074787, 5e-10],
  ] as const;
  expect(rows).toHaveLength(4);
  for (const [pressure, volume, grams, halfDigit] of rows)
    near(chargeForPressure({ pressure, volume }) / GRAM, grams, 1e-7, halfDigit);
});

test("bayVolume(), chargeForPressure() and endForce() give the four printed bays (SOURCE.md)", () => {
  expect(bays).toHaveLength(4);
  for (const [diameter, length, cubicInches, cubicCentimetres, at15, at10, pounds, newtons] of bays) {
    const volume = bayVolume({ diameter, length });
    const force = endForce({ pressure: 15 * PSI, diameter });
    near(volume / INCH ** 3, cubicInches, 1e-6);
    near(volume * 1e6, cubicCentimetres, 1e-6);
    near(chargeForPressure({ pressure: 15 * PSI, volume }) / GRAM, at15, 1e-6);
    near(chargeForPressure({ pressure: 10 * PSI, volume }) / GRAM, at10, 1e-6);
    near(force / POUND_FORCE, pounds, 1e-6);
    near(force, newtons, 1e-6);
  }
});

test("pressureOfCharge() and pressureForForce() lead from the printed bays back to 15 and 10 psi (SOURCE.md)", () => {
  expect(bays).toHaveLength(4);
  for (const [diameter, length, , , at15, at10, , newtons] of bays) {
    const volume = bayVolume({ diameter, length });
    near(pressureOfCharge({ charge: at15 * GRAM, volume }), 15 * PSI, 1e-6);
    near(pressureOfCharge({ charge: at10 * GRAM, volume }), 10 * PSI, 1e-6);
    near(pressureForForce({ force: newtons, diameter }), 15 * PSI, 1e-6);
  }
});

test("usualPressures are 8, 15 and 20 psi (SOURCE.md)", () => {
  const rows = [
    [usualPressures.least, 8],
    [usualPressures.usual, 15],
    [usualPressures.most, 20],
  ] as const;
  expect(rows).toHaveLength(3);
  // exact in psi; doubles may differ in the last bit
  for (const [found, psi] of rows) near(found / PSI, psi, 1e-14);
});
