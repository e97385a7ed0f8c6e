import { expect, test } from "vitest";
import { integrate } from "../../src/flight/integrate.js";
import type { FlightModel } from "../../src/flight/model.js";
import { rigidBody } from "../../src/flight/rigid/body.js";
import { rigidRates } from "../../src/flight/rigid/rates.js";
import { uniformModel } from "../trajectories/uniform.js";

/** A body in empty space: no thrust after the last stretch begins, air that weighs nothing. */
const empty: FlightModel = (() => {
  const model = uniformModel(1e-9, 0, { model: "rigid" });
  const air = { temperature: 288, pressure: 1, density: 1e-290, soundSpeed: 340, viscosity: 1.8e-5 };
  return { ...model, airAt: () => air };
})();

const body = rigidBody(empty);
const coast = empty.stretches.at(-1)!;
const transverse = empty.airframe.inertia;
const roll = body.rollInertia.airframe;

/** Energy of the turn and angular momentum in the world. */
function kept(y: Float64Array): readonly number[] {
  const [w, i, j, k] = [y[6]!, y[7]!, y[8]!, y[9]!];
  const [p, q, r] = [roll * y[10]!, transverse * y[11]!, transverse * y[12]!];
  const s = 2 / (w * w + i * i + j * j + k * k);
  const momentum = [
    (1 - s * (j * j + k * k)) * p + s * (i * j - w * k) * q + s * (i * k + w * j) * r,
    s * (i * j + w * k) * p + (1 - s * (i * i + k * k)) * q + s * (j * k - w * i) * r,
    s * (i * k - w * j) * p + s * (j * k + w * i) * q + (1 - s * (i * i + j * j)) * r,
  ];
  const energy = 0.5 * (roll * y[10]! ** 2 + transverse * (y[11]! ** 2 + y[12]! ** 2));
  return [energy, ...momentum];
}

test("rigidRates() of a free symmetric top keep energy and angular momentum to 1e-9 over 1,000 turns", {
  timeout: 180_000,
}, () => {
  const spin = 1.3;
  const start = Float64Array.of(0, 0, 500, 3, 1, 40, 0.5, -0.5, -0.5, -0.5, spin, 0.9, -0.4);
  const before = kept(start);
  const momentum = Math.hypot(...before.slice(1));
  // about the angular momentum the axis goes round at H / It
  const turn = (2 * Math.PI * transverse) / momentum;
  const rates = rigidRates(body, coast);
  let state: Float64Array = start;
  for (let turns = 0; turns < 1000; turns += 100) {
    const from = coast.from + turns * turn;
    const run = integrate(rates, state, from, from + 100 * turn, {
      tolerance: 1e-13,
      scales: [1e6, 1e6, 1e6, 1e6, 1e6, 1e6, 1, 1, 1, 1, 1, 1, 1],
    });
    expect(run.ended).toBe("reached-end");
    state = run.state;
  }
  const after = kept(state);
  expect(Math.abs(after[0]! / before[0]! - 1)).toBeLessThan(1e-9);
  const drift = Math.hypot(...after.slice(1).map((value, i) => value - before[i + 1]!)) / momentum;
  expect(drift).toBeLessThan(1e-9);
  // Euler: the spin stays, the transverse rate goes round at (It - Ix)/It of it
  expect(state[10]).toBeCloseTo(spin, 12);
  const rate = (1 - roll / transverse) * spin;
  const angle = rate * 1000 * turn;
  const [q, r] = [0.9, -0.4];
  expect(state[11]! - (q * Math.cos(angle) + r * Math.sin(angle))).toBeCloseTo(0, 7);
  expect(state[12]! - (r * Math.cos(angle) - q * Math.sin(angle))).toBeCloseTo(0, 7);
});
