import { expect, test } from "vitest";
import { fly } from "../../src/flight/fly.js";
import type { FlightOptions } from "../../src/flight/options.js";
import type { FlightResult } from "../../src/flight/result.js";
import type { FlightInputs } from "../../src/index.js";
import { flightD, flightE, flightF } from "../trajectories/inputs.js";
import { nothingBesidePitching } from "./switched-off.js";

const plain: FlightOptions = { tolerance: 1e-11, handOver: false, compressibility: false, bodyLift: false };

/** Relative, or in the figure's own unit below 1: asked of the models. */
const within = 1e-6;

function figuresOf(flight: FlightResult): readonly number[] {
  const { guideExit, burnout, apogee } = flight.events;
  if (!guideExit || !burnout || !apogee) throw new Error("an event is missing");
  const moments = [0.05, 0.1, 0.2, 0.4, 1, 3, 8].map((after) => flight.at(guideExit.time + after));
  return [guideExit, burnout, apogee, ...moments].flatMap((at) => [
    at.time,
    ...at.position,
    ...at.velocity,
    ...at.axis,
    at.airspeed,
    at.angleOfAttack,
  ]);
}

function furthest(inputs: FlightInputs, options: FlightOptions): number {
  const pitching = figuresOf(fly(inputs, { ...options, model: "pitching" }));
  const rigid = figuresOf(fly(inputs, { ...options, model: "rigid", rigid: nothingBesidePitching }));
  expect(rigid).toHaveLength(pitching.length);
  return Math.max(...pitching.map((value, i) => Math.abs(value - rigid[i]!) / Math.max(1, Math.abs(value))));
}

test("fly(): rigid and pitching agree on the reference flights with everything off that pitching lacks", () => {
  expect(furthest(flightD, plain), "d").toBeLessThan(within);
  expect(furthest(flightE, plain), "e").toBeLessThan(within);
  expect(furthest(flightF, plain), "f").toBeLessThan(within);
});

test("fly(): rigid and pitching agree on (g), with body lift, and on (e) with compressibility", () => {
  expect(furthest(flightE, { ...plain, bodyLift: true }), "g").toBeLessThan(within);
  // slopes over Mach number are read from a table in the rigid model: its error is some 1e-7
  expect(furthest(flightE, { ...plain, compressibility: true }), "e").toBeLessThan(1e-5);
});

test("fly(): reading a built-up drag from rows moves no figure of (d) by 5e-5", () => {
  const inputs = { ...flightD, rocket: { ...flightD.rocket, drag: { from: "build-up", scale: 1 } as const } };
  expect(furthest(inputs, { ...plain, tolerance: 1e-10 })).toBeLessThan(5e-5);
});

test("fly(): each part that pitching lacks, alone, moves the top of (e), and by no more than a few metres", () => {
  const top = (options: FlightOptions) => fly(flightE, { ...plain, model: "rigid", ...options }).events.apogee!;
  const without = top({ rigid: nothingBesidePitching });
  for (const name of ["inertiaChange", "windOverBody"] as const) {
    const apart = Math.abs(
      top({ rigid: { ...nothingBesidePitching, [name]: true } }).position[2] - without.position[2],
    );
    expect(apart, name).toBeGreaterThan(1e-3);
    expect(apart, name).toBeLessThan(10);
  }
});
