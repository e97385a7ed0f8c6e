import { expect, test } from "vitest";
import { drydenScales } from "../../src/wind/dryden.js";

const FOOT = 0.3048;
const LIGHT = (15 * 1852) / 3600;
const off = (found: number, expected: number) => Math.abs(found / expected - 1);

/** Height [ft], Lu = Lv [ft], the same [m], Lw [ft], sigma w [m/s], sigma u [m/s]. MIL-F-8785C. */
const rows = [
  [20, 143.5888, 43.7659, 20, 0.771667, 1.488652],
  [100, 505.1693, 153.9756, 100, 0.771667, 1.324063],
  [500, 944.6572, 287.9315, 500, 0.771667, 0.953962],
  [1000, 1000, 304.8, 1000, 0.771667, 0.771667],
] as const;

// 1e-6, the digits printed.
test("drydenScales() gives the scales of MIL-F-8785C", () => {
  expect(rows).toHaveLength(4);
  for (const [height, horizontalFeet, horizontal, verticalFeet, sigmaVertical, sigmaHorizontal] of rows) {
    const { lengths, intensities } = drydenScales(height * FOOT, LIGHT, "8785C");
    expect(off(lengths.along / FOOT, horizontalFeet)).toBeLessThan(1e-6);
    // Six digits are printed here.
    expect(off(lengths.across, horizontal)).toBeLessThan(2e-6);
    expect(off(lengths.vertical / FOOT, verticalFeet)).toBeLessThan(1e-6);
    expect(off(intensities.vertical, sigmaVertical)).toBeLessThan(1e-6);
    expect(off(intensities.along, sigmaHorizontal)).toBeLessThan(1e-6);
    expect(intensities.across).toBe(intensities.along);
  }
});

test("drydenScales() gives 2 Lw = h and Lu = 2 Lv by MIL-HDBK-1797", () => {
  for (const [height, horizontalFeet] of rows) {
    const { lengths } = drydenScales(height * FOOT, LIGHT, "1797");
    expect(off(lengths.along / FOOT, horizontalFeet)).toBeLessThan(1e-6);
    expect(off(2 * lengths.across, lengths.along)).toBeLessThan(1e-12);
    expect(off(2 * lengths.vertical, height * FOOT)).toBeLessThan(1e-12);
  }
});
