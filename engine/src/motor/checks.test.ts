import { expect, test } from "vitest";
import { thrustIssues } from "./checks.js";

const codes = (times: number[], thrusts: number[]) => thrustIssues({ times, thrusts }).map(({ code }) => code);

test.each([
  [[], [], ["too-few-points"]],
  [[0], [5], ["too-few-points"]],
  [[0, 1], [5], ["lengths-differ"]],
  [[0, 0], [5, 5], ["time-not-rising"]],
  [[0, 1, 0.5], [5, 5, 5], ["time-not-rising"]],
  [[-0.1, 1], [5, 5], ["time-negative"]],
  [[0, Number.NaN], [5, 5], ["time-not-finite"]],
  [[0, Infinity], [5, 5], ["time-not-finite"]],
  [[0, 1], [5, Number.NaN], ["thrust-not-finite"]],
  [[0, 1], [5, -1], ["thrust-negative"]],
  [[0, 1, 2], [0, 0, 0], ["no-thrust"]],
] as [number[], number[], string[]][])("thrustIssues() of times %j, thrusts %j", (times, thrusts, expected) => {
  expect(codes(times, thrusts)).toEqual(expected);
});

test("thrustIssues() reports every problem at once, each with its place", () => {
  const issues = thrustIssues({ times: [0.1, 0.35, 0.3, -1], thrusts: [0, -5, Number.NaN, 0] }, "thrust");
  expect(issues.map(({ code, path }) => `${code} ${path}`)).toEqual([
    "time-not-rising thrust.times[2]",
    "time-negative thrust.times[3]",
    "thrust-negative thrust.thrusts[1]",
    "thrust-not-finite thrust.thrusts[2]",
  ]);
  expect(issues[0]).toMatchObject({ found: 0.3, accepted: "> 0.35 s" });
});
