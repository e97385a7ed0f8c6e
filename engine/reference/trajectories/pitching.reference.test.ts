import { expect, test } from "vitest";
import { fly } from "../../src/flight/fly.js";
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

test("fly(): the hand-over costs at most 0.04 s of coast and 0.5 m/s at the top, and far less than the aligned model", () => {
  for (const [name, inputs] of Object.entries({ d: flightD, e: flightE, f: flightF })) {
    const options = { bodyLift: false, compressibility: false };
    const whole = figures(fly(inputs, { ...options, handOver: false }));
    const handed = fly(inputs, options);
    const short = figures(handed);
    console.log(
      name,
      handed.events.handOver?.time,
      short["coast"]! - whole["coast"]!,
      short["apogee airspeed"]! - whole["apogee airspeed"]!,
    );
    expect(handed.events.handOver?.time, name).toBeLessThan(handed.events.apogee?.time ?? 0);
    expect(Math.abs(short["coast"]! - whole["coast"]!), name).toBeLessThan(0.04);
    expect(Math.abs(short["apogee airspeed"]! - whole["apogee airspeed"]!), name).toBeLessThan(0.5);
  }
});
