import fc from "fast-check";
import { expect, test } from "vitest";
import { notchedFin } from "../../../test/shapes.js";
import { finPlanform } from "./planform.js";

const size = fc.double({ min: 0.01, max: 0.5, noNaN: true });

test("finPlanform() of a trapezoid given as a polygon is the trapezoid's, its mid-chord line's sweep included", () => {
  fc.assert(
    fc.property(size, size, size, size, (root, tip, span, sweep) => {
      const trapezoid = finPlanform({ kind: "trapezoid", root, tip, span, sweep });
      const polygon = finPlanform({
        kind: "polygon",
        points: [
          [0, 0],
          [sweep, span],
          [sweep + tip, span],
          [root, 0],
        ],
      });
      expect(polygon).toEqual(trapezoid);
      expect(trapezoid.midChordSweep).toBeCloseTo(Math.atan((sweep + tip / 2 - root / 2) / span), 9);
      expect(trapezoid.leadingSweep).toBeCloseTo(Math.atan(sweep / span), 9);
      const mean = (sweep / 3) * ((root + 2 * tip) / (root + tip)) + (root + tip - (root * tip) / (root + tip)) / 6;
      expect(trapezoid.quarterChordAt).toBeCloseTo(mean, 9);
    }),
  );
});

test("finPlanform() of a many-cornered ellipse is the half ellipse's", () => {
  const [root, span] = [0.15, 0.1];
  const points = Array.from({ length: 2001 }, (_, i): readonly [number, number] => {
    const angle = (Math.PI * i) / 2000;
    return [(root / 2) * (1 - Math.cos(angle)), i % 2000 === 0 ? 0 : span * Math.sin(angle)];
  });
  const many = finPlanform({ kind: "polygon", points });
  const ellipse = finPlanform({ kind: "ellipse", root, span });
  // 2000 chords of an arc: relative error of some (π/2000)²
  for (const key of ["area", "meanChord", "spanStation", "quarterChordAt", "aspectRatio"] as const)
    expect(many[key] / ellipse[key], key).toBeCloseTo(1, 5);
  expect(ellipse.midChordSweep).toBeCloseTo(0, 12);
});

test("finPlanform() takes out what a notch takes out", () => {
  const { area, rootChord, span } = finPlanform(notchedFin);
  expect(area).toBeCloseTo(0.2 * 0.1 - (0.1 * 0.05) / 2, 12);
  expect([rootChord, span]).toEqual([0.2, 0.1]);
});

test("finPlanform() scales with the fin", () => {
  fc.assert(
    fc.property(size, size, size, (root, span, factor) => {
      const one = finPlanform({ kind: "ellipse", root, span });
      const other = finPlanform({ kind: "ellipse", root: root * factor, span: span * factor });
      expect(other.area / one.area).toBeCloseTo(factor * factor, 9);
      expect(other.quarterChordAt / one.quarterChordAt).toBeCloseTo(factor, 9);
      expect(other.aspectRatio).toBeCloseTo(one.aspectRatio, 9);
    }),
  );
});
