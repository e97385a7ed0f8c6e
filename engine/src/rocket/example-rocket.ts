import type { Ballast, Rocket } from "./rocket.js";

/** An invented rocket for examples and tests: ogive nose, plain tube, three trapezoid fins. */
export const exampleRocket: Rocket = {
  diameter: 0.066,
  length: 1.5,
  mass: 0.9,
  balance: 0.88,
  inertia: 0.17,
  inertiaSource: "given",
  nose: { shape: { kind: "ogive" }, length: 0.3 },
  transitions: [],
  finSets: [
    {
      shape: { kind: "trapezoid", root: 0.2, tip: 0.1, span: 0.1, sweep: 0.1 },
      count: 3,
      at: 1.28,
      thickness: 0.003,
      leadingEdge: "round",
      trailingEdge: "square",
    },
  ],
  fittings: [
    { kind: "rail button", at: 0.95 },
    { kind: "rail button", at: 1.4 },
  ],
  roughness: 20e-6,
  mount: { diameter: 0.038, motorAftAt: 1.51, length: 0.3, retention: "positive" },
  drag: { from: "build-up", scale: 1 },
};

/** No ballast. */
export const noBallast: Ballast = { mass: 0, at: 0 };
