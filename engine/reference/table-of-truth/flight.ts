import { fly } from "../../src/flight/fly.js";
import type { FlightOptions } from "../../src/flight/options.js";
import type { FlightInputs } from "../../src/index.js";
import { flightD, flightE, flightF, referenceInputs } from "../trajectories/inputs.js";
import { type TruthPart, toldIn } from "./row.js";

/** Independent integrations (check values, section 9, and the pitching flight): coast from burnout [s], height [m] and airspeed [m/s] at the top. */
const independent = {
  a: [13.14852, 1560.05369, undefined],
  d: [13.1293607, 1548.14528, 10.706363],
  e: [12.8126912, 1496.74092, 23.474254],
  f: [13.1502757, 1552.87838, 8.467387],
} as const;

function figures(
  inputs: FlightInputs,
  options: FlightOptions,
): readonly [coast: number, height: number, airspeed: number] {
  const { burnout, apogee } = fly(inputs, options).events;
  if (!burnout || !apogee) throw new Error("an event is missing");
  return [apogee.time - burnout.time, apogee.position[2], apogee.airspeed];
}

const plain = { bodyLift: false, compressibility: false } as const;
const pitched = { d: flightD, e: flightE, f: flightF } as const;
const names = ["d", "e", "f"] as const;

/** Greatest differences of (d), (e), (f) from what is expected of them. */
function misses(options: FlightOptions, expected: (name: "d" | "e" | "f") => readonly (number | undefined)[]): string {
  const most = [0, 0, 0];
  for (const name of names) {
    const found = figures(pitched[name], options);
    expected(name).forEach((value, i) => {
      if (value !== undefined) most[i] = Math.max(most[i] ?? 0, Math.abs((found[i] ?? 0) - value));
    });
  }
  const [coast, height, airspeed] = most as [number, number, number];
  return `coast ${toldIn(coast, "s")}, top ${toldIn(height, "m")}, airspeed there ${toldIn(airspeed, "m/s")}`;
}

/** The flight. */
export const flight: TruthPart = {
  title: "Flight",
  rows: [
    {
      model: "Integrator: boost and coast with drag, falls, vacuum rocket, throw",
      against: "closed forms, 40 digits",
      found: () => "below 1e-8",
      where: "trajectories",
    },
    {
      model: "Aligned, flight (a)",
      against: "an independent integration at 1e-12",
      found: () => {
        const [coast, height] = figures(referenceInputs, { model: "aligned", gravity: 9.80665 });
        const [ofCoast, ofHeight] = independent.a;
        return `coast ${toldIn(Math.abs(coast - ofCoast), "s")}, top ${toldIn(Math.abs(height - ofHeight), "m")}`;
      },
      where: "trajectories",
    },
    {
      model: "Pitching all the way, flights (d), (e), (f)",
      against: "independent integrations at 1e-11",
      found: () => misses({ ...plain, handOver: false }, (name) => independent[name]),
      where: "trajectories",
    },
    {
      model: "Hand-over, flights (d), (e), (f)",
      against: "the same flights pitching all the way",
      found: () => {
        const whole = Object.fromEntries(
          names.map((name) => [name, figures(pitched[name], { ...plain, handOver: false })]),
        );
        return misses(plain, (name) => whole[name] ?? []);
      },
      where: "trajectories",
    },
    {
      model: "Draws",
      against: "the flight at tight tolerance",
      found: () => "time to the top within 1e-4, airspeed at the openings within 0.05 m/s",
      where: "`engine/test`",
    },
    {
      model: "Odds",
      against: "100,000 and more plain random flights of each example by the plain integrator",
      found: () => "within three standard errors at every setting",
      where: "`cli/examples`",
    },
    {
      model: "Rigid body",
      against: "symmetric top, linear swing, roll, throw, pitching with everything else switched off",
      found: () => "as its tests state",
      where: "rigid-body",
    },
  ],
};
