import { expect, test } from "vitest";
import { noseShapes } from "../../test/shapes.js";
import { exampleRocket } from "./example-rocket.js";
import { bodyDiameterAt, bodyPlanform } from "./outline.js";
import { type OutlinePoints, outlinePoints } from "./outline-points.js";
import type { FinSet, Rocket } from "./rocket.js";

/** Twice the area under the upper profile: the side view. */
function sideArea({ body }: OutlinePoints): number {
  return body.slice(1).reduce((sum, b, i) => sum + (b.x - body[i]!.x) * (b.r + body[i]!.r), 0);
}

/** Area of a closed polygon by the trapezoid rule. */
function areaOf(points: readonly { x: number; y: number }[]): number {
  return Math.abs(points.reduce((sum, b, i) => sum + (points.at(i - 1)!.x - b.x) * (points.at(i - 1)!.y + b.y), 0)) / 2;
}

const stepped: Rocket = {
  ...exampleRocket,
  transitions: [
    { at: 0.5, length: 0.1, aftDiameter: 0.1 },
    { at: 1.4, length: 0.1, aftDiameter: 0.06 },
  ],
};

test("outlinePoints() body lies on the body's own radius, from tip to tail, whatever the nose and its steps", () => {
  for (const rocket of [exampleRocket, stepped])
    for (const shape of noseShapes)
      for (const steps of [1, 8, 32]) {
        const { body } = outlinePoints({ ...rocket, nose: { ...rocket.nose, shape } }, steps);
        expect(body[0]).toEqual({ x: 0, r: 0 });
        expect(body.at(-1)!.x).toBe(rocket.length);
        body.forEach(({ x, r }, i) => {
          expect(r).toBeCloseTo(bodyDiameterAt({ ...rocket, nose: { ...rocket.nose, shape } }, x) / 2, 12);
          if (i > 0) expect(x).toBeGreaterThan(body[i - 1]!.x);
        });
      }
});

test("outlinePoints() side view has the area of the engine's own", () => {
  for (const shape of noseShapes) {
    const rocket = { ...stepped, nose: { ...stepped.nose, shape } };
    // chords of 32 steps lie inside a convex nose
    const ratio = sideArea(outlinePoints(rocket)) / bodyPlanform(rocket).area;
    expect(ratio, shape.kind).toBeLessThan(1 + 1e-12);
    expect(ratio, shape.kind).toBeGreaterThan(0.9995);
  }
});

test("outlinePoints() tells transitions by their ends", () => {
  const { body } = outlinePoints(stepped, 4);
  expect(body.slice(4).map(({ x, r }) => [x, r])).toEqual([
    [0.3, 0.033],
    [0.5, 0.033],
    [0.6, 0.05],
    [1.4, 0.05],
    [1.5, 0.03],
  ]);
});

test("outlinePoints() draws every fin shape at its place on the tube", () => {
  const fins = (shape: FinSet["shape"], at: number): FinSet => ({ ...exampleRocket.finSets[0]!, shape, at });
  const points = [
    [0, 0],
    [0.05, 0.06],
    [0.08, 0.06],
    [0.1, 0],
  ] as const;
  const rocket = {
    ...stepped,
    finSets: [
      fins({ kind: "trapezoid", root: 0.2, tip: 0.1, span: 0.1, sweep: 0.12 }, 1),
      fins({ kind: "ellipse", root: 0.1, span: 0.06 }, 0.35),
      fins({ kind: "polygon", points }, 1.2),
    ],
  };
  const [trapezoid, ellipse, free] = outlinePoints(rocket).fins;
  const corners = [
    [1, 0.05],
    [1.12, 0.15],
    [1.22, 0.15],
    [1.2, 0.05],
  ] as const;
  expect(trapezoid).toHaveLength(4);
  trapezoid!.forEach(({ x, y }, i) => {
    expect(x).toBeCloseTo(corners[i]![0], 12);
    expect(y).toBeCloseTo(corners[i]![1], 12);
  });
  // 32 chords of half an ellipse, on the narrower tube
  expect(ellipse).toHaveLength(33);
  expect(areaOf(ellipse!) / ((Math.PI * 0.1 * 0.06) / 4)).toBeCloseTo(1, 2);
  expect(ellipse![0]).toEqual({ x: 0.35, y: 0.033 });
  expect(ellipse!.at(-1)!.x).toBeCloseTo(0.45, 12);
  expect(ellipse!.at(-1)!.y).toBe(0.033);
  expect(Math.max(...ellipse!.map(({ y }) => y))).toBeCloseTo(0.093, 12);
  free!.forEach(({ x, y }, i) => {
    expect(x).toBeCloseTo(1.2 + points[i]![0], 12);
    expect(y).toBeCloseTo(0.05 + points[i]![1], 12);
  });
});

test("outlinePoints() tells where the fittings are, as plain data", () => {
  const points = outlinePoints(exampleRocket);
  expect(points.fittings).toEqual([0.95, 1.4]);
  expect(structuredClone(points)).toEqual(points);
});
