import type { Issue } from "../issues.js";
import type { ThrustCurve } from "./motor.js";

function timeIssues(times: readonly number[], path: string): Issue[] {
  const issues: Issue[] = [];
  times.forEach((time, i) => {
    const place = { path: `${path}.times[${i}]`, found: time };
    const before = times[i - 1];
    if (!Number.isFinite(time)) issues.push({ code: "time-not-finite", ...place, accepted: "finite, s" });
    else if (time < 0) issues.push({ code: "time-negative", ...place, accepted: ">= 0 s" });
    else if (before !== undefined && time <= before)
      issues.push({ code: "time-not-rising", ...place, accepted: `> ${before} s` });
  });
  return issues;
}

function valueIssues(thrusts: readonly number[], path: string): Issue[] {
  const issues: Issue[] = [];
  thrusts.forEach((thrust, i) => {
    const place = { path: `${path}.thrusts[${i}]`, found: thrust };
    if (!Number.isFinite(thrust)) issues.push({ code: "thrust-not-finite", ...place, accepted: "finite, N" });
    else if (thrust < 0) issues.push({ code: "thrust-negative", ...place, accepted: ">= 0 N" });
  });
  if (thrusts.length > 0 && thrusts.every((thrust) => thrust === 0))
    issues.push({ code: "no-thrust", path: `${path}.thrusts`, found: 0, accepted: "> 0 N somewhere" });
  return issues;
}

/**
 * Everything that makes a thrust curve unusable, all at once.
 *
 * Codes: `too-few-points`, `lengths-differ`, `time-not-finite`, `time-negative`, `time-not-rising`,
 * `thrust-not-finite`, `thrust-negative`, `no-thrust`.
 *
 * @param curve as read
 * @param path where the curve stands in the inputs, for example `motor.thrust`
 * @returns every issue; empty for a curve that all functions here take
 * @example
 * thrustIssues({ times: [0, 0], thrusts: [0, 10] }).map((issue) => issue.code); // ["time-not-rising"]
 */
export function thrustIssues(curve: ThrustCurve, path = "motor.thrust"): Issue[] {
  const { times, thrusts } = curve;
  const issues: Issue[] = [];
  if (times.length < 2) issues.push({ code: "too-few-points", path, found: times.length, accepted: ">= 2 points" });
  if (times.length !== thrusts.length) {
    const accepted = `${times.length}, one for each time`;
    issues.push({ code: "lengths-differ", path: `${path}.thrusts`, found: thrusts.length, accepted });
  }
  return [...issues, ...timeIssues(times, path), ...valueIssues(thrusts, path)];
}
