import { prepareImpulse } from "./impulse.js";
import type { ThrustCurve } from "./motor.js";

/** Part of the peak thrust at which the certification standard's burn starts and ends. */
const BURN_THRESHOLD = 0.05;

/** The figures by which a motor is certified. */
export interface Burn {
  /** Highest thrust [N]. */
  readonly peak: number;
  /** Of the whole curve [N s]. */
  readonly totalImpulse: number;
  /** First rise through 5 % of the peak [s] from ignition. */
  readonly start: number;
  /** Burnout: the last fall through 5 % of the peak [s] from ignition. */
  readonly end: number;
  /** `end` - `start` [s]. */
  readonly burnTime: number;
  /** `totalImpulse` over `burnTime` [N]. */
  readonly averageThrust: number;
}

/**
 * Burn time and average thrust as the motor-certification standard defines them.
 *
 * A curve whose first point is at or above 5 % of the peak starts there; one whose last point is, ends there. The tails
 * outside the burn count in the total impulse, and so in the average thrust.
 *
 * @param curve without issues (`thrustIssues`)
 * @returns peak, impulse, start, end, duration and average of the burn
 * @source NFPA 1125 (2012/2017); definition from memory, clause not seen
 * @example
 * burnOf({ times: [0, 1, 2], thrusts: [0, 100, 0] }).end; // 1.95
 */
export function burnOf(curve: ThrustCurve): Burn {
  const { times, thrusts } = curve;
  const peak = Math.max(...thrusts);
  const threshold = BURN_THRESHOLD * peak;
  const crossing = (below: number, above: number) =>
    times[below]! +
    ((threshold - thrusts[below]!) / (thrusts[above]! - thrusts[below]!)) * (times[above]! - times[below]!);

  const firstAbove = thrusts.findIndex((thrust) => thrust >= threshold);
  const lastAbove = thrusts.findLastIndex((thrust) => thrust >= threshold);
  const start = firstAbove === 0 ? times[0]! : crossing(firstAbove - 1, firstAbove);
  const end = lastAbove === times.length - 1 ? times[lastAbove]! : crossing(lastAbove + 1, lastAbove);
  const burnTime = end - start;
  const totalImpulse = prepareImpulse(curve).total;
  return { peak, totalImpulse, start, end, burnTime, averageThrust: totalImpulse / burnTime };
}
