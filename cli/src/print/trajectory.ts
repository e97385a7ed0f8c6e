import type { FlightResult, Kinematics } from "@delaywright/engine";
import type { Flown } from "./answer.js";

/** Columns of a trajectory: SI units, east and north of the pad, height above it, angle of attack in radians. */
export const trajectoryColumns = Object.freeze([
  "time",
  "east",
  "north",
  "height",
  "velocityEast",
  "velocityNorth",
  "velocityUp",
  "airspeed",
  "mach",
  "angleOfAttack",
  "phase",
] as const);

type Row = readonly [...number[], string];

function rowOf({ time, position, velocity, airspeed, mach, angleOfAttack, phase }: Kinematics): Row {
  return [time, ...position, ...velocity, airspeed, mach, angleOfAttack, phase];
}

/** Times at which the trajectory is told: the integrator's steps, or evenly spaced; up to the opening, where there is one. */
export function momentsOf({ result, descent, fired }: Flown, every: number | undefined): number[] {
  const steps = result.legs.flatMap((leg) => leg.steps);
  const first = steps[0]?.from;
  const last = steps.at(-1)?.to;
  if (first === undefined || last === undefined) return [];
  const end = descent === null || fired === null ? last : Math.min(last, fired.opens);
  const own = every === undefined ? [first, ...steps.map((step) => step.to)] : evenly(first, end, every);
  return [...own.filter((time) => time < end), end];
}

function evenly(from: number, to: number, every: number): number[] {
  const start = Math.ceil(from / every - 1e-9);
  const count = Math.max(0, Math.floor(to / every + 1e-9) - start + 1);
  return Array.from({ length: count }, (_, i) => (start + i) * every);
}

/** Rows of a trajectory, one a moment. */
export function* trajectoryRows(result: FlightResult, moments: readonly number[]): Generator<Row> {
  for (const time of moments) yield rowOf(result.at(time));
}

/** The trajectory by columns. */
export function columnsOf(result: FlightResult, moments: readonly number[]): Record<string, (number | string)[]> {
  const rows = moments.map((time) => rowOf(result.at(time)));
  return Object.fromEntries(trajectoryColumns.map((name, i) => [name, rows.map((row) => row[i] as number | string)]));
}
