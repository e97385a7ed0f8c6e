import fc from "fast-check";
import { expect, test } from "vitest";
import { referenceInputs, windFrom } from "../reference/trajectories/inputs.js";
import { fly } from "../src/flight/fly.js";
import type { FlightResult } from "../src/flight/result.js";
import type { FlightInputs } from "../src/index.js";

const degree = Math.PI / 180;
/** Loose, for speed: heights and speeds to some 1e-5. */
const loose = { tolerance: 1e-6 };
const few = { numRuns: 12 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A flight of the reference rocket under some weather, mass, drag and guide. */
const day = fc.record({
  wind: between(0, 10),
  from: between(0, 360),
  tilt: between(0, 10),
  toward: between(0, 360),
  mass: between(0.7, 3),
  cd: between(0.3, 0.9),
  travel: between(1, 3),
});
type Day = typeof day extends fc.Arbitrary<infer T> ? T : never;

function inputsOf({ wind, from, tilt, toward, mass, cd, travel }: Day): FlightInputs {
  return {
    ...referenceInputs,
    wind: windFrom(wind, from),
    guide: { travel, tilt: tilt * degree, toward: toward * degree },
    rocket: { ...referenceInputs.rocket, mass, drag: { from: "constant", cd, scale: 1 } },
  };
}

const still = (d: Day): Day => ({ ...d, wind: 0 });

function landing(inputs: FlightInputs): readonly [number, number, number] {
  const { landing: at } = fly(inputs, loose).events;
  if (!at) throw new Error("it did not land");
  return at.position;
}

const apart = (a: readonly number[], b: readonly number[]) => Math.hypot(a[0]! - b[0]!, a[1]! - b[1]!);

test("fly(): in still air more drag never raises the top", () => {
  fc.assert(
    fc.property(day, between(1, 1.5), (d, factor) => {
      const top = (cd: number) => fly(inputsOf({ ...still(d), cd }), loose).events.apogee!.position[2];
      // the tolerance's own noise
      expect(top(d.cd * factor)).toBeLessThanOrEqual(top(d.cd) * (1 + 1e-6));
    }),
    few,
  );
});

test("fly(): more mass at the same drag never raises the guide-exit speed", () => {
  fc.assert(
    fc.property(day, between(0, 2), (d, more) => {
      const exit = (mass: number) => Math.hypot(...fly(inputsOf({ ...d, mass }), loose).events.guideExit!.velocity);
      expect(exit(d.mass + more)).toBeLessThanOrEqual(exit(d.mass) * (1 + 1e-6));
    }),
    few,
  );
});

test("fly(): mirrored wind and guide land mirrored", () => {
  fc.assert(
    fc.property(day, (d) => {
      const [east, north] = landing(inputsOf(d));
      const mirrored = landing(inputsOf({ ...d, from: -d.from, toward: -d.toward }));
      expect(apart(mirrored, [-east, north])).toBeLessThan(0.05);
    }),
    few,
  );
});

test("fly(): turning wind and guide together turns the landing", () => {
  fc.assert(
    fc.property(day, between(0, 360), (d, turn) => {
      const [east, north] = landing(inputsOf(d));
      const turned = landing(inputsOf({ ...d, from: d.from + turn, toward: d.toward + turn }));
      const [c, s] = [Math.cos(turn * degree), Math.sin(turn * degree)];
      // steps are chosen by the error of each component, so the turned flight takes others
      expect(apart(turned, [east * c + north * s, north * c - east * s])).toBeLessThan(0.5);
    }),
    few,
  );
});

test("fly(): without wind and tilt it lands at the pad", () => {
  fc.assert(
    fc.property(day, (d) => {
      expect(apart(landing(inputsOf({ ...still(d), tilt: 0 })), [0, 0])).toBeLessThan(1e-6);
    }),
    few,
  );
});

function numbersOf(flight: FlightResult): number[] {
  const { fastest, hardest, highestMach } = flight.peaks();
  const events = Object.values(flight.events).flatMap((e) =>
    e === null ? [] : [e.time, ...e.position, ...e.velocity, ...e.axis, e.airspeed, e.mach, e.angleOfAttack],
  );
  return [...events, fastest.time, fastest.speed, fastest.mach, hardest.acceleration, highestMach];
}

test("fly(): each event fires once and in order, legs follow one another, and every number is finite", () => {
  fc.assert(
    fc.property(day, fc.constantFrom("pitching", "aligned"), fc.boolean(), (d, model, handOver) => {
      const flight = fly(inputsOf(d), { ...loose, model, handOver });
      expect(flight.ended).toBe("landed");
      const { liftOff, guideExit, burnout, apogee, landing: ground, handOver: handed } = flight.events;
      const times = [liftOff, guideExit, burnout, apogee, ground].map((e) => e!.time);
      for (let i = 1; i < times.length; i++) expect(times[i]!).toBeGreaterThan(times[i - 1]!);
      expect(handed === null).toBe(model === "aligned");
      if (handed !== null) {
        expect(handed.time).toBeGreaterThanOrEqual(guideExit!.time);
        expect(handed.time).toBeLessThanOrEqual(apogee!.time);
        if (!handOver) expect(handed.time).toBe(apogee!.time);
      }
      for (const value of numbersOf(flight)) expect(Number.isFinite(value)).toBe(true);

      // guide, pitching, aligned: each phase once, no gap between steps; what leaves straight into calm air is settled at once
      const phases = flight.legs.map((leg) => leg.phase).filter((p, i, all) => p !== all[i - 1]);
      const straight = model === "aligned" || handed?.time === guideExit!.time;
      expect(phases).toEqual(straight ? ["guide", "aligned"] : ["guide", "pitching", "aligned"]);
      const steps = flight.legs.flatMap((leg) => leg.steps);
      for (let i = 1; i < steps.length; i++) expect(steps[i]!.from).toBe(steps[i - 1]!.to);

      // an apogee is one: up before it, down after it
      for (const share of [0.1, 0.5, 0.9]) {
        expect(flight.at(guideExit!.time + share * (apogee!.time - guideExit!.time)).velocity[2]).toBeGreaterThan(0);
        expect(flight.at(apogee!.time + share * (ground!.time - apogee!.time)).velocity[2]).toBeLessThan(0);
      }
      // events within 1e-6 s: at g, and at some 100 m/s
      expect(Math.abs(apogee!.velocity[2])).toBeLessThan(1e-5);
      expect(Math.abs(ground!.position[2])).toBeLessThan(1e-4);
    }),
    { numRuns: 20 },
  );
});

test("fly() never throws: it says how a flight ended that went badly", () => {
  const heavy = (mass: number) => fly({ ...referenceInputs, rocket: { ...referenceInputs.rocket, mass } }, loose);
  expect(heavy(50)).toMatchObject({ ended: "never-lifted", legs: [] });
  expect(heavy(50).events.liftOff).toBeNull();
  const hopped = heavy(36);
  expect(hopped.ended).toBe("never-left-guide");
  expect(hopped.events.guideExit).toBeNull();
  expect(fly(referenceInputs, { ...loose, timeLimit: 5 }).ended).toBe("time-limit");
  for (const value of [...numbersOf(heavy(50)), ...numbersOf(hopped)]) expect(Number.isFinite(value)).toBe(true);
});

test("fly() returns the options that repeat it", () => {
  const flight = fly(referenceInputs, { ...loose, model: "aligned" });
  const again = fly(flight.model.inputs, { ...flight.options, gravity: 9.8 });
  expect(flight.options).toMatchObject({ model: "aligned", tolerance: 1e-6, gravity: null });
  expect(again.options.gravity).toBe(9.8);
  const { gravity: _, ...rest } = flight.options;
  expect(fly(referenceInputs, rest).events).toEqual(flight.events);
});
