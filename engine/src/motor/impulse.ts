import type { ThrustCurve } from "./motor.js";
import { segmentAt } from "./segment.js";

/** Impulse of a thrust curve. */
export interface Impulse {
  /** Of the whole curve [N s]. */
  readonly total: number;
  /**
   * Given so far.
   * @param time from ignition [s]
   * @returns [N s], 0 before the curve, `total` after it, never falling (to rounding)
   */
  at(time: number): number;
}

/**
 * Prepares the cumulative impulse of a thrust curve: exact, quadratic between the curve's points.
 *
 * @param curve without issues (`thrustIssues`)
 * @returns total impulse and impulse given by a time
 * @example
 * prepareImpulse({ times: [0, 1], thrusts: [0, 100] }).at(0.5); // 12.5
 */
export function prepareImpulse(curve: ThrustCurve): Impulse {
  const { times, thrusts } = curve;
  const last = times.length - 1;
  const before = new Float64Array(times.length);
  for (let i = 1; i <= last; i++) {
    before[i] = before[i - 1]! + ((thrusts[i - 1]! + thrusts[i]!) / 2) * (times[i]! - times[i - 1]!);
  }
  const total = before[last]!;
  const at = (time: number) => {
    if (time <= times[0]!) return 0;
    if (time >= times[last]!) return total;
    const i = segmentAt(times, time);
    const gone = time - times[i]!;
    const slope = (thrusts[i + 1]! - thrusts[i]!) / (times[i + 1]! - times[i]!);
    return before[i]! + gone * (thrusts[i]! + (slope * gone) / 2);
  };
  return { total, at };
}
