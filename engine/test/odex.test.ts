import { Solver } from "odex";
import { expect, test } from "vitest";
import { flightD, flightE, referenceInputs } from "../reference/trajectories/inputs.js";
import { fly } from "../src/flight/fly.js";
import { evaluateDense } from "../src/flight/integrate.js";
import type { FlightModel } from "../src/flight/model.js";
import { ratesOf } from "../src/flight/peaks.js";
import type { FlightResult } from "../src/flight/result.js";
import type { Leg } from "../src/flight/trajectory.js";
import { exampleRocket } from "../src/rocket/example-rocket.js";

const sizeOf = (leg: Leg): number => leg.steps[0]!.coefficients.length / 5;
const within = 1e-8;

/** Flies one leg with the general-purpose library: the same right-hand side, an extrapolation method of high order. */
function odexLeg(model: FlightModel, leg: Leg, start: readonly number[], from: number, to: number): number[] {
  const derivatives = ratesOf(model, leg.phase, leg.stretch);
  const n = sizeOf(leg);
  const out = new Float64Array(n);
  const solver = new Solver(n);
  solver.relativeTolerance = 1e-13;
  solver.absoluteTolerance = 1e-13;
  return solver.solve(
    (t, y) => {
      derivatives(t, Float64Array.from(y), out);
      return Array.from(out);
    },
    from,
    [...start],
    to,
  ).y;
}

const first = (leg: Leg): number => leg.steps[0]!.from;
const last = (leg: Leg): number => leg.steps[leg.steps.length - 1]!.to;

/** Whole phases, each flown by both from the phase's first state to its last, stretch by stretch without a reset between. */
function compare(flight: FlightResult): number {
  let compared = 0;
  let state: readonly number[] = [];
  flight.legs.forEach((leg, i) => {
    const n = sizeOf(leg);
    const before = flight.legs[i - 1];
    if (before?.phase !== leg.phase) state = Array.from(evaluateDense(leg.steps[0]!, first(leg), new Float64Array(n)));
    state = odexLeg(flight.model, leg, state, first(leg), last(leg));
    const own = evaluateDense(leg.steps[leg.steps.length - 1]!, last(leg), new Float64Array(n));
    // relative to the size of the vector that a component belongs to: position, velocity, axis and its rate
    const group = leg.phase === "guide" ? 1 : 3;
    for (let k = 0; k < n; k += group) {
      const size = Math.hypot(...own.subarray(k, k + group));
      const least = k < 6 ? 1 : 0.1;
      const miss = Math.hypot(...state.slice(k, k + group).map((v, j) => v - own[k + j]!));
      expect(miss / Math.max(size, least), `${leg.phase} to ${last(leg)} s, from component ${k}`).toBeLessThan(within);
    }
    compared += 1;
  });
  return compared;
}

const tight = { tolerance: 1e-12 };

test("fly() agrees with a general-purpose library on the pitching flight to the top", () => {
  const flight = fly(flightD, { ...tight, handOver: false });
  const upward = flight.legs.filter((leg) => leg.phase !== "aligned");
  // guide, then seven more stretches of the thrust curve with burnout, then the coast
  expect(compare({ ...flight, legs: upward })).toBeGreaterThanOrEqual(9);
});

test("fly() agrees with a general-purpose library on the handed-over and the aligned flight in wind, to the ground", () => {
  for (const options of [tight, { ...tight, model: "aligned" as const }]) {
    const flight = fly(flightE, options);
    expect(flight.ended).toBe("landed");
    expect(compare(flight)).toBeGreaterThanOrEqual(9);
  }
});

test("fly() agrees with a general-purpose library with built-up drag, body lift and compressibility", () => {
  const flight = fly({ ...flightE, rocket: exampleRocket }, { ...tight, handOver: false });
  expect(compare({ ...flight, legs: flight.legs.filter((leg) => leg.phase !== "aligned") })).toBeGreaterThanOrEqual(9);
});

test("fly() agrees with a general-purpose library in still air, to the ground", () => {
  const flight = fly(referenceInputs, { ...tight, model: "aligned" });
  expect(compare(flight)).toBeGreaterThanOrEqual(9);
});
