import { expect, test } from "vitest";
import { alignedRates } from "../../src/flight/aligned.js";
import { fly } from "../../src/flight/fly.js";
import { integrate } from "../../src/flight/integrate.js";
import type { FlightResult } from "../../src/flight/result.js";
import { flightD, flightE, flightF } from "./inputs.js";

const degree = Math.PI / 180;

/** SOURCE.md: the pitching flight, reference flights (d) to (g). Tolerances of the page: times 1e-4 s, heights and speeds 1e-5, angles 1e-3 deg. */
const rows: readonly (readonly [
  what: string,
  kind: "time" | "size" | "angle",
  d: number,
  e: number,
  f: number,
  g: number,
])[] = [
  ["guide exit time", "time", 0.14069481, 0.14068126, 0.17053557, 0.14068126],
  ["guide exit speed", "size", 26.4192835, 26.4210901, 33.9471185, 26.4210901],
  ["path from the vertical 0.4 s after exit", "angle", 2.85414, 9.19024, 1.54925, 8.21371],
  ["axis from the vertical 0.4 s after exit", "angle", 5.33295, 12.55025, 4.95874, 11.98035],
  ["angle of attack 0.1 s after exit", "angle", 3.79908, 5.26492, 3.80844, 5.54158],
  ["angle of attack 0.4 s after exit", "angle", 0.11768, 0.20407, 0.91039, 0.1902],
  ["angle of attack 1.0 s after exit", "angle", 0.01021, 0.01314, 0.00009, 0.01537],
  ["burnout height", "size", 324.972878, 319.437673, 325.488042, 320.487183],
  ["burnout speed", "size", 305.500782, 304.782, 305.59821, 304.86556],
  ["apogee time", "time", 14.8534516, 14.5367821, 14.8743666, 14.5922841],
  ["apogee height", "size", 1548.14528, 1496.74092, 1552.87838, 1505.50164],
  ["apogee east", "size", -101.810265, -291.11849, -54.1986485, -261.559213],
  ["apogee north", "size", 0, -168.077338, 0, -151.011282],
  ["apogee ground speed", "size", 0.430928, 9.157872, 1.812531, 7.660275],
  ["apogee airspeed", "size", 10.706363, 23.474254, 8.467387, 21.988598],
  ["coast", "time", 13.1293607, 12.8126912, 13.1502757, 12.8681932],
];

const fromVertical = (v: readonly [number, number, number]) => Math.acos(v[2] / Math.hypot(...v)) / degree;

function figures(flight: FlightResult): Readonly<Record<string, number>> {
  const { guideExit, burnout, apogee } = flight.events;
  if (!guideExit || !burnout || !apogee) throw new Error("an event is missing");
  const after = (s: number) => flight.at(guideExit.time + s);
  return {
    "guide exit time": guideExit.time,
    "guide exit speed": Math.hypot(...guideExit.velocity),
    "path from the vertical 0.4 s after exit": fromVertical(after(0.4).velocity),
    "axis from the vertical 0.4 s after exit": fromVertical(after(0.4).axis),
    "angle of attack 0.1 s after exit": after(0.1).angleOfAttack / degree,
    "angle of attack 0.4 s after exit": after(0.4).angleOfAttack / degree,
    "angle of attack 1.0 s after exit": after(1.0).angleOfAttack / degree,
    "burnout height": burnout.position[2],
    "burnout speed": Math.hypot(...burnout.velocity),
    "apogee time": apogee.time,
    "apogee height": apogee.position[2],
    "apogee east": apogee.position[0],
    "apogee north": apogee.position[1],
    "apogee ground speed": Math.hypot(...apogee.velocity),
    "apogee airspeed": apogee.airspeed,
    coast: apogee.time - burnout.time,
  };
}

test("fly() gives the reference flights (d) to (g) with the pitching model all the way to apogee", () => {
  expect(rows).toHaveLength(16);
  const plain = { handOver: false, bodyLift: false, compressibility: false };
  const got = {
    d: figures(fly(flightD, plain)),
    e: figures(fly(flightE, plain)),
    f: figures(fly(flightF, plain)),
    g: figures(fly(flightE, { ...plain, bodyLift: true })),
  };
  for (const [what, kind, d, e, f, g] of rows)
    for (const [column, expected] of Object.entries({ d, e, f, g })) {
      const value = got[column as "d" | "e" | "f" | "g"][what] as number;
      const allowed = kind === "time" ? 1e-4 : kind === "angle" ? 1e-3 : 1e-5 * Math.max(1, Math.abs(expected));
      expect(Math.abs(value - expected), `(${column}) ${what}: ${value}`).toBeLessThanOrEqual(allowed);
    }
});

test("fly(): the hand-over costs at most 0.04 s of coast and 0.5 m/s at the top", () => {
  for (const [name, inputs] of Object.entries({ d: flightD, e: flightE, f: flightF })) {
    const options = { bodyLift: false, compressibility: false };
    const whole = figures(fly(inputs, { ...options, handOver: false }));
    const handed = fly(inputs, options);
    const short = figures(handed);
    expect(handed.events.handOver?.time, name).toBeLessThan(handed.events.apogee?.time ?? 0);
    expect(Math.abs(short["coast"]! - whole["coast"]!), name).toBeLessThan(0.04);
    expect(Math.abs(short["apogee airspeed"]! - whole["apogee airspeed"]!), name).toBeLessThan(0.5);
  }
});

/** SOURCE.md: last two rows of the page's table: coast and airspeed at the top of a body that is nose-first from some moment on. */
const nosefirst = {
  "from 1.0 s after exit": { d: [13.0621, 11.533], e: [12.7335, 24.261], f: [13.0932, 9.46] },
  "at once": { d: [12.8359, 20.952], e: [12.2113, 35.498], f: [12.932, 17.634] },
} as const;
/** Half of the last printed digit, and the page's own tolerance for a step integrator. */
const ofCoast = 1.5e-4;
const ofAirspeed = 6e-4 + 25e-5;

test("fly() with the aligned model gives the coast and airspeed of a body that turns at once", () => {
  expect(Object.keys(nosefirst["at once"])).toHaveLength(3);
  for (const [name, inputs] of Object.entries({ d: flightD, e: flightE, f: flightF })) {
    const got = figures(fly(inputs, { model: "aligned" }));
    const [coast, airspeed] = nosefirst["at once"][name as "d" | "e" | "f"];
    expect(Math.abs(got["coast"]! - coast), `${name} coast ${got["coast"]}`).toBeLessThan(ofCoast);
    expect(Math.abs(got["apogee airspeed"]! - airspeed), `${name} ${got["apogee airspeed"]}`).toBeLessThan(ofAirspeed);
  }
});

test("alignedRates() from 1.0 s after the guide give the coast and airspeed of the page", () => {
  expect(Object.keys(nosefirst["from 1.0 s after exit"])).toHaveLength(3);
  for (const [name, inputs] of Object.entries({ d: flightD, e: flightE, f: flightF })) {
    const flight = fly(inputs, { handOver: false, bodyLift: false, compressibility: false });
    const { guideExit, burnout } = flight.events;
    if (!guideExit || !burnout) throw new Error("an event is missing");
    const start = flight.at(guideExit.time + 1);
    let time = start.time;
    let state: Float64Array = Float64Array.of(...start.position, ...start.velocity);
    for (const stretch of flight.model.stretches.filter((s) => s.to > start.time)) {
      const run = integrate(alignedRates(flight.model, stretch, false), state, time, stretch.to, {
        tolerance: 1e-10,
        scales: [100, 100, 100, 10, 10, 10],
        events: [{ name: "top", value: (_, y) => y[5]!, direction: -1, stops: true }],
      });
      ({ time, state } = run);
      if (run.ended === "event") break;
    }
    const wind = flight.model.windAt(state[2]!);
    const airspeedAtTop = Math.hypot(state[3]! - wind[0], state[4]! - wind[1], state[5]!);
    const [coast, airspeed] = nosefirst["from 1.0 s after exit"][name as "d" | "e" | "f"];
    expect(Math.abs(time - burnout.time - coast), `${name} coast ${time - burnout.time}`).toBeLessThan(ofCoast);
    expect(Math.abs(airspeedAtTop - airspeed), `${name} ${airspeedAtTop}`).toBeLessThan(ofAirspeed);
  }
});
