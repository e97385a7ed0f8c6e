import { referenceInputs, windFrom } from "../../reference/trajectories/inputs.js";
import { burnOf, type FlightInputs, type Motor, type Recovery } from "../../src/index.js";
import type { Random } from "../random.js";

const degree = Math.PI / 180;
const GRAVITY = 9.80665;

/** Invented motors: thrust [s], [N], masses [kg], and the rockets they carry [kg], [m]. */
const motors = [
  {
    times: [0, 0.025, 0.149, 0.621, 1.093, 1.192, 1.242],
    thrusts: [0, 57.2, 64.4, 63.2, 58.4, 20.9, 0],
    mass: 0.35,
    d: 0.041,
  },
  { times: [0, 0.02, 0.1, 1.6, 2, 2.1], thrusts: [0, 120, 190, 150, 40, 0], mass: 1.1, d: 0.066 },
  {
    times: [0, 0.05, 0.2, 0.6, 1.0, 1.4, 1.6, 1.75],
    thrusts: [0, 320, 380, 360, 320, 260, 110, 0],
    mass: 1.5,
    d: 0.066,
  },
  {
    times: [0, 0.036, 0.218, 0.907, 1.597, 1.742, 1.815],
    thrusts: [0, 144, 162, 159, 147, 52.5, 0],
    mass: 0.9,
    d: 0.054,
  },
  {
    times: [0, 0.032, 0.259, 0.646, 1.939, 2.909, 3.232],
    thrusts: [0, 188.8, 172.6, 113.3, 101.4, 84.2, 0],
    mass: 1.0,
    d: 0.066,
  },
  {
    times: [0, 0.044, 0.22, 0.88, 1.649, 2.045, 2.199],
    thrusts: [0, 247.7, 289.6, 232.5, 141, 80, 0],
    mass: 1.8,
    d: 0.079,
  },
  {
    times: [0, 0.078, 0.47, 1.958, 3.445, 3.759, 3.915],
    thrusts: [0, 243.7, 274.1, 269.1, 248.8, 88.8, 0],
    mass: 3.2,
    d: 0.102,
  },
  {
    times: [0, 0.059, 0.293, 1.174, 2.201, 2.729, 2.935],
    thrusts: [0, 521.1, 609.3, 489, 296.6, 168.3, 0],
    mass: 5,
    d: 0.102,
  },
] as const;

/** A plan, and the flight as it comes: other drag, impulse, burn time and shape of thrust. */
export interface DrawnPlan {
  readonly planned: FlightInputs;
  readonly flown: FlightInputs;
  /** Logarithms of the flown factors on drag and impulse. */
  readonly lnDrag: number;
  readonly lnImpulse: number;
}

/** Draws a rocket, a motor, a canopy or two and a day. */
export function drawnPlan(random: Random): DrawnPlan {
  const chosen = random.pick(motors);
  const scale = random.between(0.85, 1.35);
  const propellant = burnOf({ times: chosen.times, thrusts: chosen.thrusts }).totalImpulse / 2000;
  const motor: Motor = {
    ...referenceInputs.motor,
    thrust: { times: chosen.times, thrusts: chosen.thrusts },
    loadedMass: 2 * propellant + 0.02,
    propellantMass: propellant,
  };
  const descent = random.between(4.5, 8);
  const mass = chosen.mass * scale;
  const canopyFor = (speed: number): number =>
    Math.sqrt((4 * 2 * (mass + propellant) * GRAVITY) / (Math.PI * 0.775 * 1.225 * speed * speed));
  const dual = random.chance(0.3);
  const recovery: Recovery = {
    motorCharge: "primary",
    lineStretch: random.between(0.2, 0.7),
    main: {
      canopy: { shape: "flat circular", diameter: canopyFor(descent) },
      ...(dual ? { opensAt: random.between(90, 180) } : {}),
    },
    ...(dual ? { drogue: { canopy: { shape: "flat circular", diameter: canopyFor(random.between(14, 24)) } } } : {}),
  };
  const planned: FlightInputs = {
    ...referenceInputs,
    air: {
      elevation: random.between(0, 1500),
      latitude: 45 * degree,
      temperature: 273.15 + random.between(0, 35),
    },
    wind: windFrom(random.between(0, 6), random.between(0, 360)),
    rocket: {
      ...referenceInputs.rocket,
      diameter: chosen.d,
      mass,
      drag: { from: "constant", cd: random.between(0.4, 0.75), scale: 1 },
    },
    motor,
    guide: {
      travel: random.between(1.2, 3),
      tilt: random.between(0, 5) * degree,
      toward: random.between(0, 360) * degree,
    },
    recovery,
  };
  const [lnDrag, lnImpulse, lnBurn] = [0.12 * random.normal(), 0.03 * random.normal(), 0.03 * random.normal()];
  const stretch = Math.exp(lnBurn);
  // the flown thrust has the planned impulse times its factor, over a longer or shorter burn and of a slightly other shape
  const waves = [0.04 * random.normal(), 0.04 * random.normal()];
  const length = chosen.times.at(-1)!;
  const wavedBy = (t: number): number =>
    waves.reduce((sum, wave, k) => sum + wave * Math.cos(((k + 1) * Math.PI * t) / length), 1);
  const shaped = chosen.thrusts.map((f, i) => f * wavedBy(chosen.times[i]!));
  const impulseOf = (thrusts: readonly number[]): number => burnOf({ times: chosen.times, thrusts }).totalImpulse;
  const level = (Math.exp(lnImpulse) / stretch) * (impulseOf(chosen.thrusts) / impulseOf(shaped));
  const flown: FlightInputs = {
    ...planned,
    rocket: { ...planned.rocket, drag: { ...planned.rocket.drag, scale: Math.exp(lnDrag) } },
    motor: {
      ...motor,
      thrust: { times: chosen.times.map((t) => t * stretch), thrusts: shaped.map((f) => f * level) },
    },
  };
  return { planned, flown, lnDrag, lnImpulse };
}
