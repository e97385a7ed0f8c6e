import fc from "fast-check";
import { expect, test } from "vitest";
import { referenceInputs, windFrom } from "../reference/trajectories/inputs.js";
import { fly } from "../src/flight/fly.js";
import { prepareFlight } from "../src/flight/model.js";
import { resolveFlightOptions } from "../src/flight/options.js";
import { rigidBody } from "../src/flight/rigid/body.js";
import { pivotRates } from "../src/flight/rigid/pivot.js";
import { rigidRates } from "../src/flight/rigid/rates.js";
import { allOfRigid } from "../src/flight/rigid/switches.js";
import type { FlightInputs } from "../src/index.js";

const degree = Math.PI / 180;
const options = { model: "rigid", tolerance: 1e-8 } as const;
const few = { numRuns: 8 };
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A day of a rocket on two fittings, its fins canted and its thrust off the axis. */
const day = fc.record({
  wind: between(1, 9),
  from: between(0, 360),
  tilt: between(0, 8),
  toward: between(0, 360),
  cant: between(-0.004, 0.004),
  angle: between(0, 0.003),
  offset: between(0, 0.001),
  thrustToward: between(0, 360),
});
type Day = typeof day extends fc.Arbitrary<infer T> ? T : never;

function inputsOf(d: Day): FlightInputs {
  const { rocket } = referenceInputs;
  return {
    ...referenceInputs,
    wind: windFrom(d.wind, d.from),
    guide: { travel: 1.5, tilt: d.tilt * degree, toward: d.toward * degree },
    rocket: {
      ...rocket,
      fittings: [0.9, 1.4].map((at) => ({ kind: "rail button" as const, at })),
      finSets: rocket.finSets.map((set) => ({ ...set, cant: d.cant })),
      mount: {
        ...rocket.mount,
        thrustLine: { angle: d.angle, offset: d.offset, toward: d.thrustToward * degree },
      },
    },
  };
}

function topOf(d: Day) {
  const { apogee, lastFitting } = fly(inputsOf(d), options).events;
  if (!apogee || !lastFitting) throw new Error("an event is missing");
  return { position: apogee.position, time: apogee.time, roll: apogee.rollRate, tipOff: lastFitting.angleOfAttack };
}

test("fly(), rigid: turning wind, guide and thrust line together turns the flight", () => {
  fc.assert(
    fc.property(day, between(0, 360), (d, turn) => {
      const one = topOf(d);
      const other = topOf({
        ...d,
        from: d.from + turn,
        toward: d.toward + turn,
        thrustToward: d.thrustToward + turn,
      });
      const [c, s] = [Math.cos(turn * degree), Math.sin(turn * degree)];
      const [east, north, up] = one.position;
      // steps are chosen by the error of each component, so the turned flight takes others
      expect(other.position[0]).toBeCloseTo(east * c + north * s, 2);
      expect(other.position[1]).toBeCloseTo(north * c - east * s, 2);
      expect(other.position[2]).toBeCloseTo(up, 2);
      expect(other.time).toBeCloseTo(one.time, 4);
      expect(other.tipOff).toBeCloseTo(one.tipOff, 7);
    }),
    few,
  );
});

test("fly(), rigid: mirrored wind, guide, thrust line and cant fly mirrored", () => {
  fc.assert(
    fc.property(day, (d) => {
      const one = topOf(d);
      const other = topOf({ ...d, from: -d.from, toward: -d.toward, thrustToward: -d.thrustToward, cant: -d.cant });
      const [east, north, up] = one.position;
      expect(other.position[0]).toBeCloseTo(-east, 2);
      expect(other.position[1]).toBeCloseTo(north, 2);
      expect(other.position[2]).toBeCloseTo(up, 2);
      expect(other.roll).toBeCloseTo(-one.roll, 4);
    }),
    few,
  );
});

test("rigidRates() and pivotRates() do not ask which sign the quaternion has", () => {
  const component = between(-1, 1);
  fc.assert(
    fc.property(day, fc.tuple(component, component, component, component), component, (d, q, r) => {
      fc.pre(Math.hypot(...q) > 0.1);
      const body = rigidBody(prepareFlight(inputsOf(d), resolveFlightOptions({ ...options, turbulence: 3 })));
      const stretch = body.model.stretches[2]!;
      const state = Float64Array.of(3, 1, 40, 2, 1, 60, ...q, r, 2 * r, -r, 0.4, 0.7);
      const other = Float64Array.from(state, (value, i) => (i >= 6 && i < 10 ? -value : value));
      for (const ratesOf of [rigidRates, pivotRates]) {
        const [one, two] = [new Float64Array(15), new Float64Array(15)];
        ratesOf(body, stretch)(stretch.from + 0.01, state, one);
        ratesOf(body, stretch)(stretch.from + 0.01, other, two);
        for (let i = 0; i < 15; i++) expect(Math.abs(two[i]! - (i >= 6 && i < 10 ? -1 : 1) * one[i]!)).toBe(0);
      }
    }),
    { numRuns: 50 },
  );
});

test("fly(), rigid: the same seed blows the same gusts, another seed others, and none without a wind", () => {
  const d = { wind: 6, from: 250, tilt: 2, toward: 250, cant: 0, angle: 0, offset: 0, thrustToward: 0 };
  const fast = { ...options, tolerance: 1e-6 };
  const top = (turbulence: number | null, wind = d.wind) =>
    fly(inputsOf({ ...d, wind }), { ...fast, turbulence }).events.apogee!.position;
  expect(top(1)).toEqual(top(1));
  expect(top(1)).not.toEqual(top(2));
  expect(top(1)).not.toEqual(top(null));
  const [calm, still] = [top(1, 0), top(null, 0)];
  for (const i of [0, 1, 2]) expect(calm[i]!).toBeCloseTo(still[i]!, 3);
});

test("fly(), rigid: tip-off: the wind turns the rocket about its aft fitting, downwind where that lies behind the centre of pressure", () => {
  const d = { wind: 8, from: 270, tilt: 0, toward: 0, cant: 0, angle: 0, offset: 0, thrustToward: 0 };
  const inputs = inputsOf(d);
  const eastward = (travel: number, aft: number) => {
    const fittings = [aft - 0.3, aft].map((at) => ({ kind: "rail button" as const, at }));
    const { guideExit, lastFitting, apogee } = fly(
      { ...inputs, rocket: { ...inputs.rocket, fittings }, guide: { ...inputs.guide, travel } },
      options,
    ).events;
    expect(lastFitting!.time).toBeGreaterThan(guideExit!.time);
    expect(guideExit!.axis[2]).toBeCloseTo(1, 15);
    expect(apogee!.time).toBeGreaterThan(lastFitting!.time);
    return lastFitting!.axis[0];
  };
  // the wind goes east; the centre of pressure is 1.22 m from the tip
  expect(eastward(1, 1.4)).toBeGreaterThan(1e-4);
  expect(eastward(1, 1.05)).toBeLessThan(-1e-5);
  // a fast rocket is off the guide before it has turned
  expect(Math.abs(eastward(4, 1.4))).toBeLessThan(0.5 * Math.abs(eastward(1, 1.4)));
});

test("fly(), rigid: each event fires once and in order, legs follow one another, and every number is finite", () => {
  fc.assert(
    fc.property(day, fc.option(fc.integer({ min: 0, max: 99 })), fc.boolean(), (d, turbulence, pastTop) => {
      const flight = fly(inputsOf(d), { ...options, tolerance: 1e-6, turbulence, rigid: { ...allOfRigid, pastTop } });
      expect(flight.ended).toBe("landed");
      const { liftOff, guideExit, lastFitting, burnout, apogee, landing, handOver } = flight.events;
      const times = [liftOff, guideExit, lastFitting, burnout, apogee, landing].map((event) => event!.time);
      for (let i = 1; i < times.length; i++) expect(times[i]!).toBeGreaterThan(times[i - 1]!);
      expect(handOver).toBeNull();
      const phases = flight.legs.map((leg) => leg.phase).filter((phase, i, all) => phase !== all[i - 1]);
      expect(phases).toEqual(["guide", "pivot", "rigid", ...(pastTop ? [] : ["aligned"])]);
      const steps = flight.legs.flatMap((leg) => leg.steps);
      for (let i = 1; i < steps.length; i++) expect(steps[i]!.from).toBe(steps[i - 1]!.to);
      for (const at of [guideExit, lastFitting, burnout, apogee, landing])
        for (const value of [
          ...at!.position,
          ...at!.velocity,
          ...at!.axis,
          at!.airspeed,
          at!.angleOfAttack,
          at!.rollRate,
        ])
          expect(Number.isFinite(value)).toBe(true);
      expect(Math.abs(apogee!.velocity[2])).toBeLessThan(1e-5);
      // a unit axis, whatever the quaternion's length became
      for (const share of [0.1, 0.5, 0.9])
        expect(Math.hypot(...flight.at(share * apogee!.time).axis)).toBeCloseTo(1, 6);
    }),
    few,
  );
});

test("fly(), rigid: never throws: it says how a flight ended that went badly", () => {
  const d = { wind: 3, from: 90, tilt: 3, toward: 0, cant: 0, angle: 0, offset: 0, thrustToward: 0 };
  const inputs = inputsOf(d);
  const heavy = (mass: number) => fly({ ...inputs, rocket: { ...inputs.rocket, mass } }, options);
  expect(heavy(50).ended).toBe("never-lifted");
  expect(heavy(36).ended).toBe("never-left-guide");
  expect(fly(inputs, { ...options, timeLimit: 5 }).ended).toBe("time-limit");
});
