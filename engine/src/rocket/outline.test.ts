import { expect, test } from "vitest";
import { exampleRocket } from "./example-rocket.js";
import {
  baseDiameter,
  bodyDiameterAt,
  bodyFineness,
  bodyPlanform,
  bodyStretches,
  bodyWettedArea,
  largestDiameter,
  referenceArea,
} from "./outline.js";
import type { Rocket } from "./rocket.js";

const stepped: Rocket = {
  ...exampleRocket,
  diameter: 0.054,
  length: 1.6,
  nose: { shape: { kind: "cone" }, length: 0.2 },
  transitions: [
    { at: 0.6, length: 0.1, aftDiameter: 0.075 },
    { at: 1.5, length: 0.08, aftDiameter: 0.06 },
  ],
};

test("bodyPlanform() gives the side view of the pitching reference flight (g): exact ogive, 1.50 m", () => {
  const { area, centroid } = bodyPlanform(exampleRocket);
  // ten decimals and seven decimals printed
  expect(Math.abs(area - 0.092431889)).toBeLessThan(1e-10);
  expect(Math.abs(centroid - 0.7979776)).toBeLessThan(1e-7);
});

test("bodyStretches() covers the body without gaps up to its length", () => {
  const stretches = bodyStretches(stepped);
  expect(stretches.map((stretch) => stretch.kind)).toEqual(["tube", "transition", "tube", "transition", "tube"]);
  let at = stepped.nose.length;
  for (const { start, end } of stretches) {
    expect(start).toBe(at);
    at = end;
  }
  expect(at).toBe(stepped.length);
});

test("bodyDiameterAt() follows nose, tubes and transitions", () => {
  const rows = [
    [-1, 0],
    [0.1, 0.027],
    [0.4, 0.054],
    [0.65, 0.0645],
    [1, 0.075],
    [1.54, 0.0675],
    [1.59, 0.06],
    [9, 0.06],
  ] as const;
  for (const [x, diameter] of rows) expect(bodyDiameterAt(stepped, x), `at ${x} m`).toBeCloseTo(diameter, 12);
});

test("bodyPlanform() and bodyWettedArea() equal sums over thin slices", () => {
  const slices = 200_000;
  const dx = stepped.length / slices;
  let [area, moment, wetted] = [0, 0, 0];
  for (let i = 0; i < slices; i++) {
    const x = (i + 0.5) * dx;
    const diameter = bodyDiameterAt(stepped, x);
    const slope = (bodyDiameterAt(stepped, x + dx / 4) - bodyDiameterAt(stepped, x - dx / 4)) / dx;
    area += diameter * dx;
    moment += diameter * x * dx;
    wetted += Math.PI * diameter * Math.hypot(1, slope) * dx;
  }
  const planform = bodyPlanform(stepped);
  // the slices' own error, of first order at the corners
  expect(planform.area / area).toBeCloseTo(1, 6);
  expect(planform.centroid / (moment / area)).toBeCloseTo(1, 6);
  expect(bodyWettedArea(stepped) / wetted).toBeCloseTo(1, 4);
});

test("largestDiameter(), baseDiameter(), bodyFineness() and referenceArea() read the outline", () => {
  expect(largestDiameter(stepped)).toBe(0.075);
  expect(baseDiameter(stepped)).toBe(0.06);
  expect(baseDiameter(exampleRocket)).toBe(0.066);
  expect(bodyFineness(stepped)).toBeCloseTo(1.6 / 0.075, 12);
  expect(referenceArea(2)).toBeCloseTo(Math.PI, 12);
});
