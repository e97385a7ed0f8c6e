import { expect, test } from "vitest";
import { finPlanform } from "../../src/rocket/normal-force/planform.js";
import type { FinShape } from "../../src/rocket/rocket.js";
import { finLift, finThicknessDrag } from "../../src/rocket/supersonic/fin.js";
import { triangleSlope, wings, worstWingDifference } from "./closed-forms.js";

const found = (shape: FinShape) => {
  const { slopeArea, at } = finLift(shape)(Math.SQRT2);
  return { slope: slopeArea / finPlanform(shape).area, at };
};

test("the closed forms meet where they must: sonic edges give 4, slender triangles π AR/2", () => {
  expect(triangleSlope(1 - 1e-9)).toBeCloseTo(4, 6);
  expect(triangleSlope(1e-3) / ((Math.PI / 2) * 4e-3)).toBeCloseTo(1, 4);
});

test("finLift() gives the closed forms: slope within 3 %, place within 1.5 %", () => {
  expect(wings).toHaveLength(9);
  const { slope, at } = worstWingDifference(found);
  expect(slope).toBeLessThan(0.03);
  expect(at).toBeLessThan(0.015);
});

test("finLift() obeys the similarity rule: β times the slope depends on β times the aspect ratio only", () => {
  const stretched: FinShape = { kind: "trapezoid", root: 2, tip: 1, span: 1, sweep: 1 };
  const plain: FinShape = { kind: "trapezoid", root: 1, tip: 0.5, span: 1, sweep: 0.5 };
  // β = 2 on twice the chord is β = 1 on the chord
  expect(finLift(stretched)(Math.sqrt(5)).slopeArea).toBeCloseTo(finLift(plain)(Math.SQRT2).slopeArea, 9);
});

test("finLift() of a fin that is swept forward is that of the same fin swept back (reverse-flow theorem) within 3 %", () => {
  const back: FinShape = { kind: "trapezoid", root: 1, tip: 0.5, span: 1, sweep: 0.5 };
  const forward: FinShape = { kind: "trapezoid", root: 1, tip: 0.5, span: 1, sweep: 0 };
  for (const mach of [1.3, 1.6, 2.5])
    expect(Math.abs(finLift(back)(mach).slopeArea / finLift(forward)(mach).slopeArea - 1), `Mach ${mach}`).toBeLessThan(
      0.03,
    );
});

test("finThicknessDrag() of rectangles is Ackeret's double wedge within 4 %", () => {
  const section = { leading: "sharp", trailing: "sharp" } as const;
  for (const chord of [0.5, 1, 1.5]) {
    const drag = finThicknessDrag(
      { kind: "trapezoid", root: chord, tip: chord, span: 1, sweep: 0 },
      section,
    )(Math.SQRT2);
    expect(Math.abs(drag / (4 * chord) - 1), `chord ${chord}`).toBeLessThan(0.04);
  }
});
