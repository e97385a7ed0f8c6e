import { expect, test } from "vitest";
import { fly } from "../../src/flight/fly.js";
import { type Derivatives, type EventSpec, integrate } from "../../src/flight/integrate.js";
import type { FlightInputs } from "../../src/index.js";
import { referenceInputs, referenceRocket } from "./inputs.js";

/** SOURCE.md: check values, section 9, closed forms; recomputed there with 40 digits. Tolerance of the page: 1e-8. */
const g = 9.80665;
const within = 1e-8;
const tight = 1e-12;
const degree = Math.PI / 180;

function near(value: number, expected: number, what: string): void {
  expect(Math.abs(value - expected), `${what}: ${value}`).toBeLessThanOrEqual(within * Math.abs(expected));
}

function run(rates: Derivatives, start: readonly number[], to: number, events: readonly EventSpec[] = []) {
  return integrate(rates, Float64Array.from(start), 0, to, { tolerance: tight, scales: start.map(() => 1), events });
}

const top: EventSpec = { name: "top", value: (_, y) => y[1]!, direction: -1, stops: true };

const boosts = [
  { F: 120, m: 1.5, rho: 1.225, cd: 0.5, d: 0.066, t: 2, k: 0.001047740785, v: 131.87623, h: 136.0245094 },
  { F: 400, m: 6, rho: 1.1, cd: 0.45, d: 0.1016, t: 3.5, k: 0.002006561617, v: 184.8733393, h: 335.5313359 },
];
/** From the boosts' ends. */
const coasts = [
  { vt: 118.4892751, t: 10.13504215, h: 576.8888124 },
  { vt: 171.2417718, t: 14.38255264, h: 1155.21823 },
];

test("integrate() gives boost with drag and the coast after it", () => {
  expect([boosts.length, coasts.length]).toEqual([2, 2]);
  boosts.forEach(({ F, m, rho, cd, d, t, k: printed, v, h }, i) => {
    const k = (rho * cd * Math.PI * d * d) / 8;
    near(k, printed, "k");
    const boost = run(
      (_, y, rates) => {
        rates[0] = y[1]!;
        rates[1] = (F - k * y[1]! * Math.abs(y[1]!)) / m - g;
      },
      [0, 0],
      t,
    );
    near(boost.state[1]!, v, "speed");
    near(boost.state[0]!, h, "height");
    const coast = coasts[i]!;
    near(Math.sqrt((m * g) / k), coast.vt, "terminal speed");
    const rise = run(
      (_, y, rates) => {
        rates[0] = y[1]!;
        rates[1] = -(k / m) * y[1]! * Math.abs(y[1]!) - g;
      },
      [0, boost.state[1]!],
      60,
      [top],
    );
    expect(rise.ended).toBe("event");
    near(rise.time, coast.t, "time of the coast");
    near(rise.state[0]!, coast.h, "height of the coast");
  });
});

const falls = [
  { vt: 5, v0: 0, t: 3, v: 4.999922513, h: 13.23298621 },
  { vt: 20, v0: 0, t: 4, v: 19.22382377, h: 52.52672266 },
  { vt: 5, v0: 25, t: 1, v: 5.133686207, h: 7.766827203 },
  { vt: 6.5, v0: 15, t: 2, v: 6.512314817, h: 15.16344235 },
];

test("integrate() gives the fall from rest and the descent from a speed", () => {
  expect(falls).toHaveLength(4);
  for (const { vt, v0, t, v, h } of falls) {
    const fall = run(
      (_, y, rates) => {
        rates[0] = y[1]!;
        rates[1] = g * (1 - (y[1]! / vt) ** 2);
      },
      [0, v0],
      t,
    );
    near(fall.state[1]!, v, "speed");
    near(fall.state[0]!, h, "drop");
  }
});

const rockets = [
  { c: 2000, m0: 10, flow: 1, t: 3, v: 683.9299379, h: 962.4208599 },
  { c: 1900, m0: 2, flow: 0.1, t: 2.5, v: 229.193021, h: 279.435414 },
];

/** A rocket that starts at `m0`, burns `flow` for `t` with exhaust speed `c`, and has no drag. */
function vacuumRocket({ c, m0, flow, t }: (typeof rockets)[number]): FlightInputs {
  const motor = {
    ...referenceInputs.motor,
    thrust: { times: [0, t], thrusts: [c * flow, c * flow] },
    loadedMass: 1.5 * flow * t,
    propellantMass: flow * t,
  };
  return {
    ...referenceInputs,
    motor,
    rocket: { ...referenceRocket, mass: m0 - motor.loadedMass, drag: { from: "constant", cd: 0, scale: 1 } },
  };
}

test("integrate() and fly() give the vacuum rocket", () => {
  expect(rockets).toHaveLength(2);
  for (const row of rockets) {
    const burn = run(
      (t, y, rates) => {
        rates[0] = y[1]!;
        rates[1] = (row.c * row.flow) / (row.m0 - row.flow * t) - g;
      },
      [0, 0],
      row.t,
    );
    near(burn.state[1]!, row.v, "speed");
    near(burn.state[0]!, row.h, "height");
    for (const model of ["aligned", "pitching", "rigid"] as const) {
      const flight = fly(vacuumRocket(row), { model, gravity: g, tolerance: tight, handOver: false });
      const burnout = flight.events.burnout;
      near(burnout?.velocity[2] ?? 0, row.v, `speed, ${model}`);
      near(burnout?.position[2] ?? 0, row.h, `height, ${model}`);
    }
  }
});

const projectiles = [
  { v: 100, angle: 5, t: 10.15835885, h: 505.9851613, range: 177.0718621 },
  { v: 250, angle: 12, t: 24.93582418, h: 3048.864574, range: 2592.224683 },
];

test("integrate() gives the vacuum projectile", () => {
  expect(projectiles).toHaveLength(2);
  for (const { v, angle, t, h, range } of projectiles) {
    const throwing = run(
      (_, y, rates) => {
        rates[0] = y[1]!;
        rates[1] = -g;
        rates[2] = v * Math.sin(angle * degree);
      },
      [0, v * Math.cos(angle * degree), 0],
      60,
      [top],
    );
    near(throwing.time, t, "time of the top");
    near(throwing.state[0]!, h, "height");
    // the page's range is to the ground: twice the way to the top
    near(2 * throwing.state[2]!, range, "range");
  }
});

test("fly() coasts on the vacuum projectile's parabola once its motor is out", () => {
  const [row] = rockets;
  const inputs = { ...vacuumRocket(row!), guide: { travel: 1.5, tilt: 5 * degree, toward: 90 * degree } };
  const { burnout, apogee, landing } = fly(inputs, { model: "aligned", gravity: g, tolerance: tight }).events;
  if (!burnout || !apogee || !landing) throw new Error("an event is missing");
  const [vx, , vz] = burnout.velocity;
  near(apogee.time - burnout.time, vz / g, "time of the top");
  near(apogee.position[2] - burnout.position[2], vz ** 2 / (2 * g), "height");
  near(apogee.position[0] - burnout.position[0], (vx * vz) / g, "way to the top");
  const fall = Math.sqrt((2 * apogee.position[2]) / g);
  near(landing.time - apogee.time, fall, "time of the fall");
  near(landing.position[0] - apogee.position[0], vx * fall, "way of the fall");
});

/** Last row of section 9: average thrust, thrust over weight at lift-off; tolerance 1e-5. */
const thrustToWeight = [
  [289, 21.0499],
  [293.849, 21.403],
] as const;

test("thrust to weight at lift-off, by the label's and by the curve's average thrust", () => {
  expect(thrustToWeight).toHaveLength(2);
  const model = fly(referenceInputs, { model: "aligned", gravity: g }).model;
  const weight = (model.airframe.mass + referenceInputs.motor.loadedMass) * model.gravityAt(0);
  for (const [thrust, ratio] of thrustToWeight)
    expect(Math.abs(thrust / weight - ratio)).toBeLessThanOrEqual(1e-5 * ratio);
  // the second is the curve's own: impulse over the standard's burn time
  expect(Math.abs(model.burn.averageThrust / weight - 21.403)).toBeLessThanOrEqual(1e-5 * 21.403);
});
