import type { Descent } from "./descent.js";
import type { FlightResult } from "./result.js";
import { speedOf } from "./trajectory.js";

/** A trajectory by columns of one length: plain data. */
export interface TrajectoryColumns {
  /** From ignition [s]. */
  readonly time: Float64Array;
  /** From the pad [m]. */
  readonly east: Float64Array;
  readonly north: Float64Array;
  readonly height: Float64Array;
  /** Over ground [m/s]. */
  readonly speed: Float64Array;
  /** Through the air [m/s]. */
  readonly airspeed: Float64Array;
  readonly mach: Float64Array;
  /** [rad] */
  readonly angleOfAttack: Float64Array;
  /** Row of the opening; null where nothing opens. */
  readonly opening: number | null;
}

/**
 * Columns of one flight from its first motion to the ground, opened or not.
 *
 * Unopened: evenly spaced times. Opened: the same number of rows, two thirds of them evenly spaced up to the opening and the
 * rest from there, since the way down is long and nearly straight.
 *
 * @param opened the way down, or null to follow the unopened flight to the ground
 * @param opens time of the opening [s]; null with `opened` null
 * @param count rows, ≥ 4
 * @returns columns of `count` rows; of none where the rocket never moved
 * @example
 * trajectoryColumns(fly(inputs), null, null, 96).height;
 */
export function trajectoryColumns(
  flight: FlightResult,
  opened: Descent | null,
  opens: number | null,
  count: number,
): TrajectoryColumns {
  const steps = flight.legs.flatMap((leg) => leg.steps);
  const first = steps[0]?.from;
  const last = steps[steps.length - 1]?.to;
  const end = opened?.times[opened.times.length - 1];
  const opening = end === undefined || opens === null ? null : Math.round((count * 2) / 3) - 1;
  const rows = first === undefined || last === undefined ? 0 : count;
  const column = (): Float64Array => new Float64Array(rows);
  const out = {
    time: column(),
    east: column(),
    north: column(),
    height: column(),
    speed: column(),
    airspeed: column(),
    mach: column(),
    angleOfAttack: column(),
    opening: rows === 0 ? null : opening,
  };
  for (let i = 0; i < rows; i++) {
    const under = opening !== null && i > opening;
    const time = under
      ? between(opens!, end!, (i - opening) / (rows - 1 - opening))
      : between(first!, opening === null ? last! : opens!, i / (opening ?? rows - 1));
    const now = under ? opened!.at(time) : flight.at(time);
    out.time[i] = time;
    [out.east[i], out.north[i], out.height[i]] = now.position;
    out.speed[i] = speedOf(now.velocity);
    out.airspeed[i] = now.airspeed;
    out.mach[i] = now.mach;
    out.angleOfAttack[i] = now.angleOfAttack;
  }
  return out;
}

function between(from: number, to: number, share: number): number {
  return share === 1 ? to : from + share * (to - from);
}
