import { expect, test } from "vitest";
import { flightD, flightE } from "../../reference/trajectories/inputs.js";
import { fastWork, veeringWind } from "../../test/fast.js";
import { descend } from "../flight/descent.js";
import { fly } from "../flight/fly.js";
import type { FlightInputs } from "../flight/inputs.js";
import type { Recovery } from "../packing/recovery.js";
import { CanopyFall } from "./flight-sample-descent.js";

const main: Recovery["main"] = { canopy: { shape: "flat circular", diameter: 1 } };
const recovery: Recovery = { motorCharge: "primary", lineStretch: 0.5, main };
const wide = (diameter: number): Recovery["main"] => ({ canopy: { shape: "flat circular", diameter } });
const drogue: Recovery["drogue"] = { canopy: { shape: "conical ribbon", diameter: 0.3 } };

const cases: Readonly<Record<string, readonly [FlightInputs, number]>> = {
  "one canopy in wind": [{ ...flightE, recovery }, 1],
  "an opening on the way up": [{ ...flightD, recovery }, -4],
  "a fast opening on the way down": [{ ...flightD, recovery }, 6],
  "drogue, then main": [{ ...flightE, recovery: { ...recovery, drogue, main: { ...main, opensAt: 200 } } }, 1],
  "drogue, main already below its height": [
    { ...flightE, recovery: { ...recovery, drogue, main: { ...main, opensAt: 5000 } } },
    1,
  ],
  "drogue, main together with it": [{ ...flightD, recovery: { ...recovery, drogue } }, 1],
  "a canopy too large": [{ ...flightE, recovery: { ...recovery, main: wide(5) } }, 1],
  "a canopy too large, in wind that veers": [
    { ...flightD, recovery: { ...recovery, main: wide(6) }, wind: veeringWind },
    1,
  ],
  "a drogue too large, then main": [
    { ...flightE, recovery: { ...recovery, drogue: wide(4), main: { ...wide(6), opensAt: 200 } } },
    1,
  ],
  "wind that veers with height": [{ ...flightD, recovery, wind: veeringWind }, 1],
};

test("CanopyFall.fall() lands where the plain descent does, in the same time and at the same speed", () => {
  expect(Object.keys(cases)).toHaveLength(10);
  for (const [name, [inputs, after]] of Object.entries(cases)) {
    const flight = fly(inputs, { tolerance: 1e-8 });
    const start = flight.at(flight.events.apogee!.time + after);
    const { landing, openings, at } = descend(flight.model, start, 1e-9);
    const fall = new CanopyFall(fastWork(inputs), flight.model);
    expect(fall.fall(Float64Array.of(...start.position, ...start.velocity), start.time, 1), name).toBe(true);
    // steps of 1e-5, and wind and air from tables: a part in ten thousand of the way and the time, a hundredth of a metre a second
    const [east, north, height, ...velocity] = fall.state;
    expect(Math.abs(fall.time - landing!.time), name).toBeLessThan(1e-4 * landing!.time);
    expect(Math.hypot(east! - landing!.position[0], north! - landing!.position[1]), name).toBeLessThan(
      0.02 + 1e-4 * Math.hypot(landing!.position[0], landing!.position[1]),
    );
    expect(Math.abs(height!), name).toBeLessThan(1e-3);
    expect(Math.abs(Math.hypot(...velocity) - landing!.groundSpeed), name).toBeLessThan(0.01);
    expect(Math.abs(-velocity[2]! - landing!.descentSpeed), name).toBeLessThan(0.01);
    const knots = [...new Set([...openings.map((o) => o.time), landing!.time])];
    expect(fall.knots, name).toHaveLength(knots.length);
    knots.forEach((time, i) => {
      expect(Math.abs(fall.knots[i]! - time), name).toBeLessThan(1e-4 * time);
    });
    for (let k = 0; k <= 50; k++) {
      const time = start.time + (k / 50) * (fall.time - start.time);
      expect(Math.abs(fall.heightAt(time) - at(time).position[2]), `${name}, ${time} s`).toBeLessThan(0.1);
    }
  }
});

test("CanopyFall.fall() is the same again after another fall", () => {
  const inputs: FlightInputs = { ...flightE, recovery: { ...recovery, drogue, main: { ...main, opensAt: 200 } } };
  const flight = fly(inputs, { tolerance: 1e-6 });
  const start = (after: number) => flight.at(flight.events.apogee!.time + after);
  const fall = new CanopyFall(fastWork(inputs), flight.model);
  const landing = (after: number) => {
    const { position, velocity, time } = start(after);
    fall.fall(Float64Array.of(...position, ...velocity), time, 1);
    return [fall.time, ...fall.state, ...fall.knots];
  };
  const first = landing(1);
  landing(5);
  expect(landing(1)).toEqual(first);
});

test("CanopyFall.fall() follows a canopy that sinks at a fifth of a metre a second, again and again", () => {
  const inputs: FlightInputs = { ...flightE, recovery: { ...recovery, main: wide(30) } };
  const flight = fly(inputs, { tolerance: 1e-6 });
  const { position, velocity, time } = flight.at(flight.events.apogee!.time + 1);
  const start = Float64Array.of(...position, ...velocity);
  const fall = new CanopyFall(fastWork(inputs), flight.model);
  for (let i = 0; i < 3; i++) {
    expect(fall.fall(start, time, 1), `fall ${i}`).toBe(true);
    // the steady speed grows from 0.18 m/s at the ground with the inverse root of the density, some 8 % over its way
    const mean = position[2] / (fall.time - time);
    expect(mean).toBeGreaterThan(0.18);
    expect(mean).toBeLessThan(0.2);
  }
});

test("CanopyFall.fall() opened just above the ground lands before the canopy is full", () => {
  const inputs: FlightInputs = { ...flightD, recovery };
  const flight = fly(inputs, { tolerance: 1e-8 });
  const { time, position, velocity } = flight.at(flight.events.landing!.time - 0.02);
  const fall = new CanopyFall(fastWork(inputs), flight.model);
  expect(fall.fall(Float64Array.of(...position, ...velocity), time, 1)).toBe(true);
  expect(fall.time).toBeCloseTo(flight.events.landing!.time, 3);
  expect(Math.abs(fall.state[2]!)).toBeLessThan(1e-3);
});
