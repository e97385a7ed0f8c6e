import { expect, test } from "vitest";
import { bodyInterference, finChordFraction, finCountFactor, finSlopeOverMach } from "./fins.js";
import { finPlanform } from "./planform.js";

const planform = finPlanform({ kind: "trapezoid", root: 0.2, tip: 0.1, span: 0.1, sweep: 0.1 });
const wide = finPlanform({ kind: "trapezoid", root: 0.1, tip: 0.1, span: 0.3, sweep: 0 });
const machs = Array.from({ length: 401 }, (_, i) => i / 100);

test("finCountFactor() is N/2 for three and four, less for more, nothing for the weakest plane of one or two", () => {
  expect([1, 2, 3, 4].map(finCountFactor)).toEqual([0, 0, 1.5, 2]);
  const more = [5, 6, 7, 8, 9].map(finCountFactor);
  [2.37, 2.739, 2.989, 3.24, 3.645].forEach((factor, i) => {
    expect(more[i]).toBeCloseTo(factor, 12);
  });
});

test("bodyInterference() is 1 without a body and tends to 2 beside a wide one", () => {
  expect(bodyInterference(0, 0.1)).toBe(1);
  expect(bodyInterference(1e6, 0.1)).toBeCloseTo(2, 6);
});

test("finSlopeOverMach() has the slender limit π AR/2 and the two-dimensional limits 2π and 4/β", () => {
  const slender = finSlopeOverMach({ ...planform, aspectRatio: 1e-4, midChordSweep: 0 });
  expect(slender(0)).toBeCloseTo((Math.PI / 2) * 1e-4, 10);
  const infinite = finSlopeOverMach({ ...planform, aspectRatio: 1e6, midChordSweep: 0 });
  expect(infinite(0)).toBeCloseTo(2 * Math.PI, 4);
  expect(infinite(Math.SQRT2)).toBeCloseTo(4, 4);
});

test("finSlopeOverMach() is positive, continuous and falls above Mach 1.2", () => {
  for (const fin of [planform, wide]) {
    const slope = finSlopeOverMach(fin);
    for (const mach of machs) {
      expect(slope(mach), `Mach ${mach}`).toBeGreaterThan(0);
      expect(Math.abs(slope(mach + 1e-7) - slope(mach)), `Mach ${mach}`).toBeLessThan(1e-4);
      if (mach >= 1.2) expect(slope(mach + 0.01)).toBeLessThanOrEqual(slope(mach));
      if (mach <= 0.89) expect(slope(mach + 0.01)).toBeGreaterThan(slope(mach));
    }
  }
});

test("finChordFraction() moves from a quarter towards a half and never back", () => {
  for (const fin of [planform, wide]) {
    const fraction = finChordFraction(fin);
    expect(fraction(0)).toBe(0.25);
    expect(fraction(100)).toBeCloseTo(0.5, 2);
    for (const mach of machs) expect(fraction(mach + 0.01)).toBeGreaterThanOrEqual(fraction(mach) - 1e-12);
  }
});
