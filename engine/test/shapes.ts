import type { FinShape, NoseShape } from "../src/index.js";

/** A nose of every kind. */
export const noseShapes: readonly NoseShape[] = [
  { kind: "cone" },
  { kind: "ogive" },
  { kind: "parabola" },
  { kind: "ellipsoid" },
  { kind: "haack", c: 0 },
  { kind: "haack", c: 1 / 3 },
  { kind: "power", exponent: 0.5 },
];

/** A fin whose tip has a notch [m]. */
export const notchedFin: FinShape = {
  kind: "polygon",
  points: [
    [0, 0],
    [0, 0.1],
    [0.05, 0.1],
    [0.1, 0.05],
    [0.15, 0.1],
    [0.2, 0.1],
    [0.2, 0],
  ],
};
