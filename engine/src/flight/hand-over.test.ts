import { expect, test } from "vitest";
import { flightD, flightE, flightF } from "../../reference/trajectories/inputs.js";
import { uniformModel } from "../../reference/trajectories/uniform.js";
import { veeringWind } from "../../test/fast.js";
import { exampleRocket } from "../rocket/example-rocket.js";
import { settledSwing } from "./bounds.js";
import { fly } from "./fly.js";
import { swingLeft } from "./hand-over.js";
import type { FlightInputs } from "./inputs.js";
import { evaluateDense, integrate } from "./integrate.js";
import { pitchingRates } from "./pitching.js";
import type { Leg } from "./trajectory.js";

const cases: Readonly<Record<string, FlightInputs>> = {
  "d, built-up drag": { ...flightD, rocket: exampleRocket },
  "e, built-up drag": { ...flightE, rocket: exampleRocket },
  "f, body lift and compressibility": flightF,
  "d, winds aloft": { ...flightD, wind: veeringWind },
};

test("fly(): the hand-over moves coast and airspeed at the top by no more than allowed, in winds aloft too", () => {
  for (const [name, inputs] of Object.entries(cases)) {
    const whole = fly(inputs, { handOver: false }).events;
    const handed = fly(inputs).events;
    if (!whole.apogee || !handed.apogee || !handed.handOver) throw new Error("an event is missing");
    expect(handed.handOver.time, name).toBeLessThan(handed.apogee.time);
    // physics: at most 0.04 s and 0.5 m/s
    expect(Math.abs(handed.apogee.time - whole.apogee.time), name).toBeLessThan(0.04);
    expect(Math.abs(handed.apogee.airspeed - whole.apogee.airspeed), name).toBeLessThan(0.5);
  }
});

function stateAt(legs: readonly Leg[], time: number) {
  const leg = legs.find((l) => l.phase === "pitching" && l.steps[0]!.from <= time && l.steps.at(-1)!.to >= time)!;
  const step = leg.steps.find((s) => s.to >= time)!;
  return { stretch: leg.stretch, state: evaluateDense(step, time, new Float64Array(12)) };
}

test("fly() hands over at the moment at which the swing falls to its bound", () => {
  const flight = fly(flightD);
  const time = flight.events.handOver?.time ?? 0;
  const { stretch, state } = stateAt(flight.legs, time);
  expect(Math.abs(swingLeft(flight.model, stretch, time, state).amplitude / settledSwing - 1)).toBeLessThan(1e-6);
});

test("swingLeft() tells the velocity that the rest of the swing still adds", () => {
  const model = uniformModel(1e-9, 0);
  const stretch = model.stretches[0]!;
  const small = 1e-4;
  const speed = 100;
  for (const [angle, rate] of [
    [1, 0],
    [0, 20],
    [-0.6, 15],
  ] as const) {
    const start = Float64Array.of(0, 0, 0, 0, 0, speed, small * angle, 0, 1, 0, small * rate, 0);
    const { impulse } = swingLeft(model, stretch, 0, start);
    const { state } = integrate(pitchingRates(model, stretch), start, 0, 9, {
      tolerance: 1e-11,
      scales: [1, 1, 1, small, 1, 1, small, small, 1, small, small, small],
    });
    // without thrust, drag and gravity the coefficients stay as they are: exact but for the square of the angle and exp(-17)
    const scale = small * speed;
    expect(Math.abs(impulse[0] - state[3]!) / scale, `${angle}, ${rate}`).toBeLessThan(1e-6);
    expect(Math.abs(state[3]!) / scale, `${angle}, ${rate}`).toBeGreaterThan(1e-3);
  }
});
