import type { Kinematics } from "@delaywright/engine";
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

/** Times at which the trajectory is told: the integrator's steps, or evenly spaced; from lift-off to the ground. */
export function momentsOf({ result, descent, fired }: Flown, every: number | undefined): number[] {
  const steps = result.legs.flatMap((leg) => leg.steps);
  const first = steps[0]?.from;
  const last = steps.at(-1)?.to;
  if (first === undefined || last === undefined) return [];
  const opens = descent === null || fired === null ? last : Math.min(last, fired.opens);
  const end = descent?.times.at(-1) ?? last;
  if (every !== undefined) return [...evenly(first, end, every).filter((time) => time < end), end];
  const unopened = [first, ...steps.map((step) => step.to)].filter((time) => time < opens);
  return [...unopened, opens, ...(descent?.times ?? [])];
}

/** Motion at a time, before the opening or under the canopies. */
function motionAt({ result, descent, fired }: Flown, time: number): Kinematics {
  return descent !== null && fired !== null && time > fired.opens ? descent.at(time) : result.at(time);
}

function evenly(from: number, to: number, every: number): number[] {
  const start = Math.ceil(from / every - 1e-9);
  const count = Math.max(0, Math.floor(to / every + 1e-9) - start + 1);
  return Array.from({ length: count }, (_, i) => (start + i) * every);
}

/** Rows of a trajectory, one a moment. */
export function* trajectoryRows(flown: Flown, moments: readonly number[]): Generator<Row> {
  for (const time of moments) yield rowOf(motionAt(flown, time));
}

/** The trajectory by columns. */
export function columnsOf(flown: Flown, moments: readonly number[]): Record<string, (number | string)[]> {
  const rows = moments.map((time) => rowOf(motionAt(flown, time)));
  return Object.fromEntries(trajectoryColumns.map((name, i) => [name, rows.map((row) => row[i] as number | string)]));
}
