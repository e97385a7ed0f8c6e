import { expect, test } from "vitest";
import { integrate } from "../../src/flight/integrate.js";
import { attitudeAlong, noseAxis } from "../../src/flight/rigid/attitude.js";
import { rigidBody } from "../../src/flight/rigid/body.js";
import { pivotRates } from "../../src/flight/rigid/pivot.js";
import { referenceRocket } from "../trajectories/inputs.js";
import { uniform, uniformModel } from "../trajectories/uniform.js";

/**
 * Lagrange's equations of a body whose fitting slides along an upright line, by the fitting's way s and the lean θ, thrust T along the
 * axis, no air: m (s̈ − b sin θ θ̈ − b cos θ θ̇²) = T cos θ − m g, (I + m b²) θ̈ − m b sin θ s̈ = m g b sin θ.
 */
function lagrange(thrust: number, gravity: number, b: number) {
  const { mass: m, inertia } = uniform;
  return (_: number, y: Float64Array, rates: Float64Array): void => {
    const [, way, lean, turn] = [y[0]!, y[1]!, y[2]!, y[3]!];
    const [sine, cosine] = [Math.sin(lean), Math.cos(lean)];
    const [a11, a12, a22] = [m, -m * b * sine, inertia + m * b * b];
    const f1 = thrust * cosine - m * gravity + m * b * cosine * turn * turn;
    const f2 = m * gravity * b * sine;
    const det = a11 * a22 - a12 * a12;
    rates[0] = way;
    rates[1] = (a22 * f1 - a12 * f2) / det;
    rates[2] = turn;
    rates[3] = (a11 * f2 - a12 * f1) / det;
  };
}

test("pivotRates() move as Lagrange's equations of a body on one sliding fitting", () => {
  const [thrust, gravity, at] = [150, 9.8, 1.4];
  const base = uniformModel(thrust, 0, { model: "rigid" });
  const air = { temperature: 288, pressure: 1, density: 1e-290, soundSpeed: 340, viscosity: 1.8e-5 };
  const rocket = { ...referenceRocket, fittings: [0.9, at].map((x) => ({ kind: "rail button" as const, at: x })) };
  const model = {
    ...base,
    inputs: { ...base.inputs, rocket: { ...base.inputs.rocket, fittings: rocket.fittings } },
    airAt: () => air,
    gravityAt: () => gravity,
  };
  const body = rigidBody(model);
  expect(body.pivotWay).toBeCloseTo(0.5, 12);
  const b = at - uniform.xg;
  // a lean to the east with a turn that makes it grow
  const [lean, turn, speed] = [0.1, 0.4, 20];
  const start = new Float64Array(13);
  start.set([b * Math.sin(lean), 0, b * Math.cos(lean)], 0);
  start.set([b * Math.cos(lean) * turn, 0, speed - b * Math.sin(lean) * turn], 3);
  start.set(attitudeAlong([Math.sin(lean), 0, Math.cos(lean)]), 6);
  // turning to the east is about north: body z, as it stands
  start[12] = turn;
  const options = { tolerance: 1e-12, scales: new Array(13).fill(1) };
  const plain = Float64Array.of(0, speed, lean, turn);
  for (const end of [0.05, 0.2, 0.6]) {
    const found = integrate(pivotRates(body, model.stretches[0]!), start, 0, end, options).state;
    const expected = integrate(lagrange(thrust, gravity, b), plain, 0, end, options).state;
    const axis = noseAxis([found[6]!, found[7]!, found[8]!, found[9]!]);
    expect(Math.atan2(axis[0], axis[2]), `lean after ${end} s`).toBeCloseTo(expected[2]!, 9);
    expect(found[12]!, `turn after ${end} s`).toBeCloseTo(expected[3]!, 8);
    // the fitting is on its line, as far along it as Lagrange's
    expect(found[0]! - b * axis[0], `across after ${end} s`).toBeCloseTo(0, 9);
    expect(found[1]! - b * axis[1]).toBeCloseTo(0, 12);
    expect(found[2]! - b * axis[2], `along after ${end} s`).toBeCloseTo(expected[0]!, 8);
  }
});
