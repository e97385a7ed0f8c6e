import fc from "fast-check";
import { expect, test } from "vitest";
import { notchedFin } from "../../../test/shapes.js";
import type { FinShape } from "../rocket.js";
import { finChords } from "./chords.js";
import { finLift } from "./fin.js";

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const fins: fc.Arbitrary<FinShape> = fc
  .record({ root: size(0.05, 0.4), tip: size(0, 1), span: size(0.02, 0.2), sweep: size(-0.05, 0.3) })
  .map(({ root, tip, span, sweep }) => ({ kind: "trapezoid", root, tip: tip * root, span, sweep }));

test("finChords() of a notched fin are two chords across the notch and none beyond the tip", () => {
  const chords = finChords(notchedFin);
  expect(chords(0.02)).toEqual([[0, 0.2]]);
  const [front, rear] = chords(0.075);
  expect(front?.[1]).toBeCloseTo(0.075, 12);
  expect(rear?.[0]).toBeCloseTo(0.125, 12);
  expect(chords(0.11)).toEqual([]);
  expect(finChords({ kind: "ellipse", root: 0.2, span: 0.1 })(0.1)).toEqual([]);
});

test("finLift() is finite, positive, acts on the fin (within 5 % of its root, the error of the boxes) and scales with it", () => {
  fc.assert(
    fc.property(fins, size(1.2, 3.7), (shape, mach) => {
      if (shape.kind !== "trapezoid") throw new Error("only trapezoids here");
      const { slopeArea, at } = finLift(shape)(mach);
      expect(slopeArea).toBeGreaterThan(0);
      expect(at).toBeGreaterThan(Math.min(0, shape.sweep) - 0.05 * shape.root);
      expect(at).toBeLessThan(Math.max(shape.root, shape.sweep + shape.tip) + 0.05 * shape.root);
      const { root, tip, span, sweep } = shape;
      const twice = finLift({ kind: "trapezoid", root: 2 * root, tip: 2 * tip, span: 2 * span, sweep: 2 * sweep })(
        mach,
      );
      expect(twice.slopeArea / slopeArea).toBeCloseTo(4, 6);
      expect(twice.at / at).toBeCloseTo(2, 6);
    }),
    { numRuns: 40 },
  );
});

test("finLift() of a trapezoid given as a polygon is the trapezoid's", () => {
  const trapezoid: FinShape = { kind: "trapezoid", root: 0.2, tip: 0.1, span: 0.1, sweep: 0.1 };
  const points = [
    [0, 0],
    [0.1, 0.1],
    [0.2, 0.1],
    [0.2, 0],
  ] as const;
  for (const mach of [1.2, 2]) expect(finLift({ kind: "polygon", points })(mach)).toEqual(finLift(trapezoid)(mach));
});
