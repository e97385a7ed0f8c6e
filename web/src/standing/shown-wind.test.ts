import { expect, test } from "vitest";
import { shownWind, windIn } from "./shown-wind.js";

const plain = (text: string): string => text.replace(/\s/gu, " ");

test.each([
  ["4 m/s", "imperial", "9 mph"],
  ["4 m/s", "metric", "4 m/s"],
  ["10 km/h", "metric", "2.8 m/s"],
  ["8 kt", "imperial", "9 mph"],
  ["8 kt", "metric", "4.1 m/s"],
  ["9 mph", "imperial", "9 mph"],
  ["9 mi/h", "imperial", "9 mi/h"],
  ["breezy", "imperial", "breezy"],
] as const)("shownWind() shows %s on a %s display as %s", (typed, units, shown) => {
  expect(plain(shownWind(typed, units))).toBe(shown);
});

test("windIn() is as precise as what is shown, and keeps what was typed in that unit", () => {
  expect(windIn("4 m/s", "imperial")).toEqual({ figure: 9, unit: "mph" });
  expect(windIn("2.25 m/s", "metric")).toEqual({ figure: 2.25, unit: "m/s" });
  expect(windIn(undefined, "metric")).toBeNull();
});
