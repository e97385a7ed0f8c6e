import { expect, test } from "vitest";
import { usualLandingSpeeds } from "../../src/packing/canopy-size.js";
import { bayVolume } from "../../src/packing/ejection-charge.js";
import { usualHarnessLength } from "../../src/packing/harness.js";
import { defaultPackingOptions } from "../../src/packing/packing.js";
import { staticPortArea, staticPortDiameter } from "../../src/packing/static-port.js";

const INCH = 0.0254;
/** Relative, as the source states. */
const near = (found: number, printed: number, tolerance = 1e-6) =>
  expect(Math.abs(found - printed), `${printed}`).toBeLessThan(tolerance * printed);

test("staticPortArea() is a quarter-inch hole for 100 cubic inches, 0.0193257 mm² for a cm³ (SOURCE.md)", () => {
  near(staticPortArea(1e-6) * 1e6, 0.0193257, 3e-6); // six printed digits: half of the last is 2.6e-6
  near(staticPortDiameter({ volume: 100 * INCH ** 3, count: 1 }), INCH / 4);
});

test("staticPortDiameter() gives the printed holes of a bay of 3 by 8 in (SOURCE.md)", () => {
  const volume = bayVolume({ diameter: 3 * INCH, length: 8 * INCH });
  near(volume / INCH ** 3, 56.5487);
  /** Holes, mm, in. */
  const rows = [
    [1, 4.77513, 0.187997],
    [3, 2.75692, 0.10854],
    [4, 2.38756, 0.093999],
  ] as const;
  expect(rows).toHaveLength(3);
  for (const [count, millimetres, inches] of rows) {
    const diameter = staticPortDiameter({ volume, count });
    // 1e-6 or half of the last printed digit, whichever is coarser
    expect(Math.abs(diameter * 1000 - millimetres)).toBeLessThanOrEqual(5e-6);
    expect(Math.abs(diameter / INCH - inches)).toBeLessThanOrEqual(5e-7);
  }
});

test("usualHarnessLength() is 3 to 5 body lengths (SOURCE.md)", () => {
  expect(usualHarnessLength(2)).toEqual({ least: 6, most: 10 });
});

test("usualLandingSpeeds are 4.5 to 6 m/s, and the default lies among them (SOURCE.md)", () => {
  expect(usualLandingSpeeds).toEqual({ least: 4.5, most: 6 });
  expect(defaultPackingOptions.landingSpeed).toBeGreaterThanOrEqual(4.5);
  expect(defaultPackingOptions.landingSpeed).toBeLessThanOrEqual(6);
});
