import { expect, test } from "vitest";
import { flightD } from "../../../reference/trajectories/inputs.js";
import { fly } from "../../flight/fly.js";
import { burnOf } from "../../motor/burn.js";
import { lagged, shownAt } from "./barometer.js";
import { climbFlights, gridStep } from "./climb-flights.js";
import { linearRound } from "./climb-round.js";
import { thrustWaves, wavedThrust } from "./waved-thrust.js";

test("climbFlights() flies as the plain flight does", () => {
  const { fly: again } = climbFlights(flightD, "pitching", 14, 900);
  const climb = again((drawn) => {
    drawn.dragScale = 1.2;
    drawn.totalImpulse = 0.96;
  })!;
  const { rocket, motor } = flightD;
  const plain = fly({
    ...flightD,
    rocket: { ...rocket, drag: { ...rocket.drag, scale: 1.2 * rocket.drag.scale } },
    motor: { ...motor, thrust: { ...motor.thrust, thrusts: motor.thrust.thrusts.map((f) => 0.96 * f) } },
  });
  const { time } = plain.events.liftOff!;
  for (let i = 10; i < climb.length; i += 20)
    expect(Math.abs(climb[i]! - plain.at(time + i * gridStep).position[2]), `${i}`).toBeLessThan(0.15);
});

test("lagged() of a steady climb hangs behind by speed times lag (closed form)", () => {
  const steady = Float64Array.from({ length: 400 }, (_, i) => 50 * i * gridStep);
  const shown = lagged(steady, 0.1);
  expect(steady[399]! - shown[399]!).toBeCloseTo(50 * 0.1, 9);
  // y = s (t − τ + τ exp(−t/τ))
  const t = 5 * gridStep;
  expect(shown[5]).toBeCloseTo(50 * (t - 0.1 + 0.1 * Math.exp(-t / 0.1)), 12);
  expect(lagged(steady, 0)).toBe(steady);
});

test("shownAt() shifts the clock, is nothing before lift-off and stays beyond the end", () => {
  const climb = Float64Array.of(0, 1, 4, 9);
  const at = shownAt(climb, Float64Array.of(-1, 0.5 * gridStep, 2 * gridStep, 90), gridStep);
  expect([...at]).toEqual([0, 0, 1, 9]);
});

test("wavedThrust() keeps the impulse and turns the thrust by its wave (closed form of the knots)", () => {
  const flat = { times: [0, 0.5, 1, 1.5, 2], thrusts: [0, 100, 100, 100, 0] };
  for (const wave of thrustWaves) {
    const { times, thrusts } = wavedThrust(flat, wave, 0.1);
    expect(burnOf({ times, thrusts }).totalImpulse).toBeCloseTo(burnOf(flat).totalImpulse, 9);
    expect(thrusts[1]! / thrusts[3]!).toBeCloseTo(
      (1 + 0.1 * Math.cos((wave * Math.PI) / 4)) / (1 + 0.1 * Math.cos((3 * wave * Math.PI) / 4)),
      12,
    );
  }
});

test("linearRound() is the weighted mean of a prior and correlated observations (closed form)", () => {
  // two observations of one level with variances 1 and 2 and covariance 0.5; prior 3 ± 2
  const ones = Float64Array.of(1, 1);
  const round = linearRound([{ values: ones, prior: 3, sd: 2 }], Float64Array.of(5, 8), {
    own: Float64Array.of(0.5, 1.5),
    together: Float64Array.of(0.5, 0.5, 0.5, 0.5),
  })!;
  // inverse of [[1, .5], [.5, 2]] is [[2, −.5], [−.5, 1]] / 1.75
  const precision = (2 - 0.5 - 0.5 + 1) / 1.75 + 1 / 4;
  expect(round.covariance[0]).toBeCloseTo(1 / precision, 12);
  expect(round.moves[0]).toBeCloseTo(((1.5 * 5 + 0.5 * 8) / 1.75 + 3 / 4) / precision, 12);
});

test("linearRound() leaves a column of no freedom where it is, and gives up on a singular system", () => {
  const errors = { own: Float64Array.of(1, 1), together: new Float64Array(4) };
  const free = { values: Float64Array.of(1, 1), prior: 0, sd: Number.POSITIVE_INFINITY };
  const fixed = { values: Float64Array.of(0, 1), prior: 0, sd: 0 };
  const { moves } = linearRound([free, fixed], Float64Array.of(2, 4), errors)!;
  expect(moves[0]).toBeCloseTo(3, 12);
  expect(moves[1]).toBe(0);
  expect(linearRound([free, free], Float64Array.of(2, 4), errors)).toBeNull();
});
