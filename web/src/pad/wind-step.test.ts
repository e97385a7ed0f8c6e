import { describe, expect, test } from "vitest";
import { steppedWind, turnedWind } from "./wind-step.js";

describe("steppedWind()", () => {
  test.each([
    ["2.2 m/s", 1, "2.5 m/s"],
    ["2.2 m/s", -1, "2 m/s"],
    ["2 m/s", 1, "2.5 m/s"],
    ["0.5 m/s", -1, "0 m/s"],
    ["0 m/s", -1, "0 m/s"],
    ["10km/h", -1, "2.5 m/s"],
    ["5 mph", 1, "2.5 m/s"],
  ] as const)("%s by %i is %s on a metric display", (typed, way, wind) => {
    expect(steppedWind(typed, way, "metric")).toBe(wind);
  });

  test.each([
    ["5 mph", 1, "6 mph"],
    ["4 m/s", 1, "10 mph"],
    ["4 m/s", -1, "8 mph"],
    ["1.6 m/s", 1, "5 mph"],
    ["0.1 m/s", -1, "0 mph"],
  ] as const)("%s by %i is %s on an imperial display: one mile an hour from what it shows", (typed, way, wind) => {
    expect(steppedWind(typed, way, "imperial")).toBe(wind);
  });

  test("starts calm in the flyer's own units", () => {
    expect(steppedWind(undefined, 1, "metric")).toBe("0.5 m/s");
    expect(steppedWind(undefined, 1, "imperial")).toBe("1 mph");
  });
});

test("turnedWind() goes round the compass in whole steps", () => {
  expect(turnedWind("240 deg", 1)).toBe("255 deg");
  expect(turnedWind("244 deg", -1)).toBe("240 deg");
  expect(turnedWind("350 deg", 1)).toBe("0 deg");
  expect(turnedWind("0 deg", -1)).toBe("345 deg");
  expect(turnedWind(undefined, 1)).toBe("15 deg");
});
