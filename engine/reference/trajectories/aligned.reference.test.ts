import { expect, test } from "vitest";
import { fly } from "../../src/flight/fly.js";
import type { FlightInputs } from "../../src/index.js";
import { referenceInputs, tableDrag, windFrom } from "./inputs.js";

const degree = Math.PI / 180;
const flights: Readonly<Record<"a" | "b" | "c", FlightInputs>> = {
  a: referenceInputs,
  b: { ...referenceInputs, rocket: { ...referenceInputs.rocket, drag: tableDrag } },
  // x is east here: the wind blows towards +x, the guide leans upwind
  c: { ...referenceInputs, wind: windFrom(5, 270), guide: { travel: 1.5, tilt: 5 * degree, toward: 270 * degree } },
};

/** SOURCE.md: check values, section 9, reference flights (a), (b), (c). Last entry: tolerance, relative or in the unit given. */
const rows: readonly (readonly [
  what: string,
  a: number,
  b: number,
  c: number,
  tolerance: number,
  kind: "absolute" | "relative",
])[] = [
  ["lift-off time", 0.002145194, 0.002145194, 0.002137031, 1e-4, "absolute"],
  ["guide exit time", 0.14069497, 0.14069277, 0.14068142, 1e-4, "absolute"],
  ["guide exit speed", 26.4192615, 26.4208132, 26.4210681, 1e-4, "relative"],
  ["burnout speed", 303.562508, 303.352766, 302.697449, 1e-5, "relative"],
  ["burnout altitude", 334.080086, 336.242439, 322.027371, 1e-5, "relative"],
  ["burnout x", 0, 0, -85.79662, 1e-4, "relative"],
  ["apogee time", 14.8726108, 15.5305902, 14.2516904, 1e-5, "relative"],
  ["apogee altitude", 1560.05369, 1657.05153, 1457.3749, 1e-5, "relative"],
  ["apogee x", 0, 0, -505.8971, 1e-4, "relative"],
  ["apogee horizontal speed", 0, 0, -18.728641, 1e-4, "relative"],
  ["apogee airspeed", 0, 0, 28.915765, 1e-4, "relative"],
  ["max ground speed", 311.829715, 313.078594, 311.066101, 1e-5, "relative"],
  ["max ground speed time", 1.58617, 1.56838, 1.58517, 2e-3, "absolute"],
  ["max acceleration", 266.08771, 266.241479, 266.34273, 1e-5, "relative"],
  ["max Mach", 0.9192999, 0.9229454, 0.9236761, 1e-5, "relative"],
  ["coast from the curve's end", 13.122611, 13.78059, 12.50169, 1e-4, "absolute"],
  ["coast from the 5 % end", 13.14852, 13.806499, 12.5276, 1e-4, "absolute"],
];

test("fly() gives the reference flights (a), (b) and (c) with the aligned model", () => {
  expect(rows).toHaveLength(17);
  for (const [column, inputs] of Object.entries(flights)) {
    const flight = fly(inputs, { model: "aligned", gravity: 9.80665 });
    expect(flight.ended).toBe("landed");
    const { liftOff, guideExit, burnout, apogee } = flight.events;
    if (!liftOff || !guideExit || !burnout || !apogee) throw new Error("an event is missing");
    const end = flight.at(1.75);
    const got: Readonly<Record<string, number>> = {
      "lift-off time": liftOff.time,
      "guide exit time": guideExit.time,
      "guide exit speed": Math.hypot(...guideExit.velocity),
      "burnout speed": Math.hypot(...end.velocity),
      "burnout altitude": end.position[2],
      "burnout x": end.position[0],
      "apogee time": apogee.time,
      "apogee altitude": apogee.position[2],
      "apogee x": apogee.position[0],
      "apogee horizontal speed": apogee.velocity[0],
      "apogee airspeed": apogee.airspeed,
      "max ground speed": flight.peaks().fastest.speed,
      "max ground speed time": flight.peaks().fastest.time,
      "max acceleration": flight.peaks().hardest.acceleration,
      "max Mach": flight.peaks().highestMach,
      "coast from the curve's end": apogee.time - 1.75,
      "coast from the 5 % end": apogee.time - burnout.time,
    };
    for (const [what, a, b, c, tolerance, kind] of rows) {
      const expected = { a, b, c }[column as "a" | "b" | "c"];
      const allowed = kind === "relative" ? tolerance * Math.max(1, Math.abs(expected)) : tolerance;
      expect(Math.abs((got[what] as number) - expected), `(${column}) ${what}: ${got[what]}`).toBeLessThanOrEqual(
        allowed,
      );
    }
  }
});
