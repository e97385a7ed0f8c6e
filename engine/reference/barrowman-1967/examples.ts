import { exampleRocket } from "../../src/rocket/example-rocket.js";
import type { Rocket } from "../../src/rocket/rocket.js";

/** Example A: ogive, plain tube, three trapezoid fins. */
export const exampleA: Rocket = exampleRocket;

/** Example B: cone, widening transition, four clipped-delta fins on the wider tube, boat-tail. Reference is the fore diameter. */
export const exampleB: Rocket = {
  ...exampleRocket,
  diameter: 0.054,
  length: 1.58,
  nose: { shape: { kind: "cone" }, length: 0.2 },
  transitions: [
    { at: 0.6, length: 0.1, aftDiameter: 0.075 },
    { at: 1.5, length: 0.08, aftDiameter: 0.06 },
  ],
  finSets: [
    {
      shape: { kind: "trapezoid", root: 0.18, tip: 0.06, span: 0.12, sweep: 0.12 },
      count: 4,
      at: 1.3,
      thickness: 0.003,
      leadingEdge: "round",
      trailingEdge: "square",
    },
  ],
};

/** Parts in the order of `normalForceParts`: [slope per rad, place m]. */
export const partRows = [
  { of: "A", part: "fins", index: 1, slope: 15.3004569, at: 1.3633333 },
  { of: "B", part: "cone", index: 0, slope: 2.0, at: 0.1333333 },
  { of: "B", part: "transition", index: 1, slope: 1.8580247, at: 0.6527132 },
  { of: "B", part: "boat-tail", index: 2, slope: -1.3888889, at: 1.5385185 },
  { of: "B", part: "fins", index: 3, slope: 39.1299236, at: 1.3825 },
] as const;

export const totalRows = [
  { of: "A", slope: 17.3004569, at: 1.2218474 },
  { of: "B", slope: 41.5990594, at: 1.2846375 },
] as const;
