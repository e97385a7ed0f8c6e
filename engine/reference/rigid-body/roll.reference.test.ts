import { expect, test } from "vitest";
import { integrate } from "../../src/flight/integrate.js";
import { massIn } from "../../src/flight/model.js";
import { attitudeAlong } from "../../src/flight/rigid/attitude.js";
import { rigidBody } from "../../src/flight/rigid/body.js";
import { rigidRates } from "../../src/flight/rigid/rates.js";
import { normalForceParts } from "../../src/rocket/normal-force/parts.js";
import type { FinShape, Rocket } from "../../src/rocket/rocket.js";
import { finRolls } from "../../src/rocket/roll.js";
import { referenceRocket } from "../trajectories/inputs.js";
import { uniformModel } from "../trajectories/uniform.js";

const cant = 0.01;
const canted: Rocket = { ...referenceRocket, finSets: referenceRocket.finSets.map((set) => ({ ...set, cant })) };

function spinning(rocket: Rocket, thrust = 1e-9) {
  const base = uniformModel(thrust, 0, { model: "rigid" });
  const { finSets, mount } = rocket;
  const model = { ...base, inputs: { ...base.inputs, rocket: { ...base.inputs.rocket, finSets, mount } } };
  return { model, body: rigidBody(model), stretch: model.stretches[0]! };
}

test("finRolls() of a trapezoid have Barrowman's strip integrals", () => {
  const [roll] = finRolls(canted, normalForceParts(canted));
  // SOURCE.md: memory, recomputed: (cr + ct) r² s/2 + (cr + 2 ct) r s²/3 + (cr + 3 ct) s³/12
  const [cr, ct, s, r] = [0.2, 0.1, 0.1, 0.033];
  const area = (s * (cr + ct)) / 2;
  const integral = ((cr + ct) * r * r * s) / 2 + ((cr + 2 * ct) * r * s * s) / 3 + ((cr + 3 * ct) * s ** 3) / 12;
  expect(roll!.damping).toBeCloseTo(integral / area, 14);
  expect(roll!.forcing).toBeCloseTo(r + (s * (cr + 2 * ct)) / (3 * (cr + ct)), 14);
  expect(roll!.cant).toBe(cant);
});

test("finRolls() agree with sums over strips, for every outline", () => {
  const [root, span, radius] = [0.2, 0.1, 0.033];
  const outlines: readonly (readonly [FinShape, (y: number) => number])[] = [
    [{ kind: "trapezoid", root, tip: 0.07, span, sweep: 0.03 }, (y) => root + ((0.07 - root) * y) / span],
    [{ kind: "ellipse", root, span }, (y) => root * Math.sqrt(1 - (y / span) ** 2)],
    [
      {
        kind: "polygon",
        points: [
          [0, 0],
          [0.09, span],
          [0.14, span],
          [root, 0],
        ],
      },
      (y) => root + ((0.05 - root) * y) / span,
    ],
  ];
  expect(outlines).toHaveLength(3);
  for (const [shape, chord] of outlines) {
    const rocket = { ...canted, finSets: canted.finSets.map((set) => ({ ...set, shape })) };
    const [roll] = finRolls(rocket, normalForceParts(rocket));
    const sums = [0, 0, 0];
    const strips = 20_000;
    for (let i = 0; i < strips; i++) {
      const y = (span * (i + 0.5)) / strips;
      for (let power = 0; power < 3; power++) sums[power]! += chord(y) * (radius + y) ** power;
    }
    expect(roll!.forcing, shape.kind).toBeCloseTo(sums[1]! / sums[0]!, 6);
    expect(roll!.damping, shape.kind).toBeCloseTo(sums[2]! / sums[0]!, 6);
  }
});

test("finRolls() of canted fins turn the body towards V cant forcing / damping, with the closed form's time", () => {
  const { model, body, stretch } = spinning(canted);
  const [roll] = finRolls(canted, model.parts);
  const V = 100;
  const start = new Float64Array(13);
  start[5] = V;
  start.set(attitudeAlong([0, 0, 1]), 6);
  const steady = (V * cant * roll!.forcing) / roll!.damping;
  const rate = (0.5 * 1.225 * V * model.area * roll!.slopeAt(0) * roll!.damping) / body.rollInertia.airframe;
  for (const t of [0.2 / rate, 1 / rate, 3 / rate]) {
    const { state } = integrate(rigidRates(body, stretch), start, 0, t, {
      tolerance: 1e-11,
      scales: new Array(13).fill(1),
    });
    expect(state[10]! / (steady * (1 - Math.exp(-rate * t)))).toBeCloseTo(1, 7);
  }
  // right-handed about the way to the nose
  expect(steady).toBeGreaterThan(0);
});

test("rigidRates(): thrust off its line turns the body with T (offset + angle · arm) / I, away from where it points", () => {
  const [angle, offset] = [0.004, 0.0015];
  const mount = { ...referenceRocket.mount, thrustLine: { angle, offset, toward: Math.PI / 2 } };
  const { model, body, stretch } = spinning({ ...referenceRocket, mount }, 200);
  const still = { ...model, airAt: () => ({ ...model.airAt(0), density: 1e-290 }) };
  const start = new Float64Array(13);
  start[5] = 1;
  start.set(attitudeAlong([0, 0, 1]), 6);
  const rates = new Float64Array(13);
  rigidRates(rigidBody(still), stretch)(0, start, rates);
  const { balance, inertia, mass } = massIn(model, stretch, 0);
  const arm = model.inputs.rocket.mount.motorAftAt - balance;
  const expected = (200 * (offset * Math.cos(angle) + Math.sin(angle) * arm)) / inertia;
  // upright, body z is north: a turn about it that is negative takes the nose west, for a push that points east
  expect(rates[12]! / -expected).toBeCloseTo(1, 10);
  expect(Math.abs(rates[11]!)).toBeLessThan(1e-9);
  expect(rates[3]!).toBeCloseTo((200 * Math.sin(angle)) / mass, 10);
  expect(body.thrustLine.along).toBeCloseTo(Math.cos(angle), 14);
});
