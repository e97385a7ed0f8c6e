import type { ThrustCurve } from "./motor.js";
import { segmentAt } from "./segment.js";

/**
 * Prepares a thrust curve for many calls.
 *
 * @param curve without issues (`thrustIssues`)
 * @returns a function of the time from ignition [s] that gives the thrust [N]: linear between the points, 0 outside them
 * @example
 * prepareThrust({ times: [0, 1], thrusts: [0, 100] })(0.25); // 25
 */
export function prepareThrust(curve: ThrustCurve): (time: number) => number {
  const { times, thrusts } = curve;
  const first = times[0]!;
  const last = times[times.length - 1]!;
  return (time) => {
    if (!(time >= first && time <= last)) return 0;
    const i = segmentAt(times, time);
    const part = (time - times[i]!) / (times[i + 1]! - times[i]!);
    return thrusts[i]! * (1 - part) + thrusts[i + 1]! * part;
  };
}
