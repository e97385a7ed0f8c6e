import type { FlightInputs, PowerLawWind, Rocket } from "../../src/index.js";
import { exampleRocket } from "../../src/rocket/example-rocket.js";

const degree = Math.PI / 180;

/** Common inputs of the reference flights: check values, section 9 and the pitching flight. An invented rocket. */
export const referenceRocket: Rocket = {
  ...exampleRocket,
  fittings: [],
  drag: { from: "constant", cd: 0.55, scale: 1 },
};

export function windFrom(speedAtTen: number, from: number): PowerLawWind {
  return {
    kind: "power",
    east: -speedAtTen * Math.sin(from * degree),
    north: -speedAtTen * Math.cos(from * degree),
    referenceHeight: 10,
    exponent: 1 / 7,
    gradientHeight: Number.POSITIVE_INFINITY,
  };
}

export const referenceInputs: FlightInputs = {
  air: { elevation: 0, latitude: 45 * degree },
  wind: windFrom(0, 0),
  rocket: referenceRocket,
  motor: {
    thrust: { times: [0, 0.05, 0.2, 0.6, 1.0, 1.4, 1.6, 1.75], thrusts: [0, 320, 380, 360, 320, 260, 110, 0] },
    diameter: 0.038,
    length: 0.25,
    loadedMass: 0.5,
    propellantMass: 0.25,
    delay: { kind: "none" },
  },
  ballast: { mass: 0, at: 0 },
  guide: { travel: 1.5, tilt: 0, toward: 0 },
  recovery: { motorCharge: "primary", lineStretch: 0.5, main: { canopy: { shape: "flat circular", diameter: 1 } } },
};

/** (b): drag over Mach number. */
export const tableDrag: Rocket["drag"] = {
  from: "table",
  mach: [0, 0.3, 0.6, 0.8, 0.9, 1.0, 1.1, 1.2, 1.5, 2.0],
  coasting: [0.5, 0.48, 0.47, 0.5, 0.58, 0.72, 0.76, 0.74, 0.66, 0.56],
  thrusting: [0.5, 0.48, 0.47, 0.5, 0.58, 0.72, 0.76, 0.74, 0.66, 0.56],
  scale: 1,
};

export const flightD: FlightInputs = { ...referenceInputs, wind: windFrom(5, 270) };
export const flightE: FlightInputs = {
  ...referenceInputs,
  wind: windFrom(7, 240),
  guide: { travel: 1.5, tilt: 5 * degree, toward: 240 * degree },
};
export const flightF: FlightInputs = {
  ...flightD,
  guide: { travel: 2.4, tilt: 0, toward: 0 },
  rocket: {
    ...referenceRocket,
    finSets: [
      { ...referenceRocket.finSets[0]!, shape: { kind: "trapezoid", root: 0.2, tip: 0.1, span: 0.075, sweep: 0.1 } },
    ],
  },
};
