import { expect, test } from "vitest";
import type { FinShape } from "../rocket.js";
import { bodyInterference, finCountFactor, finForce, subsonicFinSlope } from "./fins.js";
import { finPlanform } from "./planform.js";

const swept: FinShape = { kind: "trapezoid", root: 0.2, tip: 0.1, span: 0.1, sweep: 0.1 };
const wide: FinShape = { kind: "trapezoid", root: 0.1, tip: 0.1, span: 0.3, sweep: 0 };
const ellipse: FinShape = { kind: "ellipse", root: 0.15, span: 0.1 };
const blunt = { leading: "round", trailing: "square", thicknessRatio: 0.02 } as const;
const sharp = { leading: "sharp", trailing: "sharp", thicknessRatio: 0.03 } as const;
const machs = Array.from({ length: 301 }, (_, i) => i / 100);

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

test("subsonicFinSlope() has the slender limit π AR/2 and the plane limit 2π/β (Prandtl-Glauert)", () => {
  const slender = { aspectRatio: 1e-4, midChordSweep: 0 };
  expect(subsonicFinSlope(slender, 0)).toBeCloseTo((Math.PI / 2) * 1e-4, 10);
  const infinite = { aspectRatio: 1e6, midChordSweep: 0 };
  for (const mach of [0, 0.3, 0.6, 0.8])
    expect(subsonicFinSlope(infinite, mach)).toBeCloseTo((2 * Math.PI) / Math.sqrt(1 - mach * mach), 4);
});

test("finForce() is the subsonic slope at a quarter of the mean chord up to Mach 0.9", () => {
  const { slopeAt, cpAt } = finForce(swept, blunt);
  for (const mach of [0, 0.5, 0.9]) {
    expect(slopeAt(mach)).toBe(subsonicFinSlope(finPlanform(swept), mach));
    expect(cpAt(mach)).toBe(finPlanform(swept).quarterChordAt);
  }
});

test("finForce() of a wide fin at Mach 3 is Ackeret's 4/β less its tips' loss, at the middle of the chord", () => {
  const { slopeAt, cpAt } = finForce(wide, blunt);
  const reduced = Math.sqrt(8) * 6;
  expect(Math.abs(slopeAt(3) / ((4 / Math.sqrt(8)) * (1 - 1 / (2 * reduced))) - 1)).toBeLessThan(0.04);
  expect(Math.abs(cpAt(3) / 0.05 - 1)).toBeLessThan(0.03);
});

test("finForce() is positive and without jumps in value or slope over Mach 0 to 3, and falls from Mach 1.5 on", () => {
  for (const shape of [swept, wide, ellipse])
    for (const section of [blunt, sharp]) {
      const { slopeAt, cpAt } = finForce(shape, section);
      const { rootChord } = finPlanform(shape);
      for (const mach of machs) {
        expect(slopeAt(mach), `Mach ${mach}`).toBeGreaterThan(0);
        expect(cpAt(mach)).toBeGreaterThan(0);
        expect(cpAt(mach)).toBeLessThan(2 * rootChord);
        for (const [of, scale] of [
          [slopeAt, slopeAt(0)],
          [cpAt, rootChord],
        ] as const) {
          const h = 1e-5;
          const [left, middle, right] = [of(mach + 0.005 - h), of(mach + 0.005), of(mach + 0.005 + h)];
          expect(Math.abs(right - left) / scale, `Mach ${mach}`).toBeLessThan(1e-3);
          expect(Math.abs(right - 2 * middle + left) / (h * scale), `Mach ${mach}`).toBeLessThan(0.02);
        }
        if (mach >= 1.5) expect(slopeAt(mach + 0.01), `Mach ${mach}`).toBeLessThan(slopeAt(mach));
      }
    }
});

test("finForce() of a sharp double wedge acts before that of a flat fin, as Busemann's second order has it", () => {
  for (const mach of [1.5, 2, 3]) {
    const [flat, thick] = [finForce(wide, blunt).cpAt(mach), finForce(wide, sharp).cpAt(mach)];
    expect(thick).toBeLessThan(flat);
    expect(flat - thick).toBeLessThan(0.15 * 0.1);
  }
  expect(finForce(wide, { ...sharp, trailing: "square" }).slopeAt(2)).toBeGreaterThan(finForce(wide, blunt).slopeAt(2));
});
