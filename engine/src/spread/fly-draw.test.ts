import { expect, test } from "vitest";
import { flightD } from "../../reference/trajectories/inputs.js";
import { openingOf } from "../../test/opening.js";
import { usualSpread } from "../../test/plan.js";
import { fly } from "../flight/fly.js";
import { resolveFlightOptions } from "../flight/options.js";
import { drawnInputs } from "./drawn-inputs.js";
import { noSpread } from "./drawn-values.js";
import { type EnsembleSpec, prepareEnsemble } from "./ensemble.js";
import {
  APOGEE_AIRSPEED,
  APOGEE_HEIGHT,
  APOGEE_TIME,
  COAST,
  FLEW,
  flightSize,
  joinChunks,
  LANDING_EAST,
} from "./ensemble-chunk.js";
import { rigidDrawTolerance, turbulenceSeed } from "./fly-draw.js";
import { sampleSize } from "./outcomes.js";

const seed = 4;
const rigid: EnsembleSpec = {
  inputs: {
    ...flightD,
    rocket: { ...flightD.rocket, fittings: [0.9, 1.4].map((at) => ({ kind: "rail button", at })) },
  },
  options: resolveFlightOptions({ model: "rigid" }),
  spread: usualSpread,
  opening: openingOf([8, 12], 2, () => 1),
  seed,
  top: 3000,
  topMach: 1.6,
};

test("prepareEnsemble() of the rigid model flies what fly() does with the draw's inputs and its turbulence", () => {
  const { flights, samples } = prepareEnsemble(rigid)(0, 4);
  for (let draw = 0; draw < 4; draw++) {
    const flight = fly(drawnInputs(rigid.inputs, usualSpread, seed, draw), {
      model: "rigid",
      tolerance: rigidDrawTolerance,
      turbulence: turbulenceSeed(seed, draw),
    });
    const { apogee, burnout, landing } = flight.events;
    const row = flights.subarray(draw * flightSize, (draw + 1) * flightSize);
    expect(row[FLEW]).toBe(1);
    expect(row[APOGEE_TIME]).toBe(apogee!.time);
    expect(row[APOGEE_HEIGHT]).toBe(apogee!.position[2]);
    expect(row[COAST]).toBeCloseTo(apogee!.time - burnout!.time, 9);
    expect(row[LANDING_EAST]).toBe(landing!.position[0]);
    // judged by the mean wind of the draws' own table; the flight met a gust as well
    const wind = flight.model.windAt(apogee!.position[2]);
    const through = apogee!.velocity.map((v, i) => v - wind[i]!);
    expect(row[APOGEE_AIRSPEED]).toBeCloseTo(Math.hypot(...through), 2);
    // an opening that was sampled is where the flight was then
    const at = draw * 2 * 2 * sampleSize;
    const opened = flight.at(apogee!.time + samples[at + 2]!);
    expect(samples[at + 1]).toBeCloseTo(opened.position[2], 6);
  }
});

test("prepareEnsemble() of the rigid model does not depend on how the draws are split", () => {
  const whole = prepareEnsemble(rigid)(0, 6);
  const runs = [prepareEnsemble(rigid)(4, 6), prepareEnsemble(rigid)(0, 4)];
  expect(joinChunks(runs)).toEqual(whole);
  expect(prepareEnsemble({ ...rigid, seed: 5 })(0, 6).flights).not.toEqual(whole.flights);
});

test("prepareEnsemble() of the rigid model flies the nominal flight, without gusts, where nothing varies", () => {
  const [time, height] = (() => {
    const { flights } = prepareEnsemble({ ...rigid, spread: noSpread, tolerance: 1e-9 })(0, 1);
    return [flights[APOGEE_TIME], flights[APOGEE_HEIGHT]];
  })();
  const { apogee } = fly(rigid.inputs, { model: "rigid" }).events;
  expect(time).toBeCloseTo(apogee!.time, 9);
  expect(height).toBeCloseTo(apogee!.position[2], 6);
});
