import { expect, test } from "vitest";
import type { WindowData } from "../answer/window-data.js";
import {
  edgeCell,
  isGood,
  tiltWords,
  todaysTilt,
  todaysWind,
  windBound,
  windBoundSaid,
  windowSentence,
  windowStops,
  windowTodaySentence,
} from "./window.en.js";

const plain = (text: string): string => text.replaceAll("\u00a0", " ");
const degree = Math.PI / 180;
type Given = WindowData["given"];
const given = (speed: number, tilt = 0) =>
  ({
    wind: { kind: "ground", speed, height: 2, from: 240 * degree },
    guide: { travel: 1.8, tilt, toward: 240 * degree },
  }) as Given;
test("windBound() is half a metre a second or a whole mile an hour, never above what was found", () => {
  expect([2.75, 2.999, 3, 0.4].map((wind) => plain(windBound(wind)))).toEqual(["2.5 m/s", "2.5 m/s", "3 m/s", "0 m/s"]);
  // 1 mph is 0.447 04 m/s exactly: NIST SP 811 (2008), B.8
  expect([2.75, 5 * 0.447_04].map((wind) => plain(windBound(wind, "imperial")))).toEqual(["6 mph", "5 mph"]);
  expect(windBoundSaid(2.75)).toBeCloseTo(2.5, 9);
  expect(windBoundSaid(2.75, "imperial")).toBeCloseTo(6 * 0.447_04, 5);
  expect(windBoundSaid(0)).toBe(0);
});

type End = WindowData["ends"][number];
const byOdds = (wind: number | null, by: End["by"] = "clean"): End => ({ wind, beyond: false, by, check: null });
const beyond: End = { wind: 8, beyond: true, by: null, check: null };
const byRule = (wind: number | null): End => ({
  wind,
  beyond: false,
  by: "rule",
  check: {
    id: "landing-inside",
    code: "landing-inside",
    verdict: "stop",
    value: 0.501,
    limit: 0.5,
    unit: "odds",
    details: [],
    missing: [],
    sense: "most",
    source: "own default",
    edition: "",
    status: "own default, no source",
  },
});
const window = (ends: readonly End[], today: Given): WindowData => ({
  context: { plan: "P", rocket: "R", motor: "M", windGiven: true },
  given: today,
  limits: { openingSpeed: 20, openingHeight: 100, leastClean: 0.8, leastHolds: 0.99 },
  delay: 9,
  winds: [0, 4, 8],
  tilts: [0, 5 * degree],
  toward: 240 * degree,
  clean: [
    [0.95, 0.9, 0.5],
    [0.9, 0.6, 0.2],
  ],
  holds: [
    [1, 1, 0.9],
    [1, 1, 0.9],
  ],
  edges: [8, 8],
  beyond: [true, true],
  ends,
  landings: [null, null],
  seed: 1,
  draws: 512,
  model: "pitching",
});

test("windowSentence() says up to which wind at today's lean, never more than was found, and what ends it", () => {
  const sentence = (...of: Parameters<typeof window>) => plain(windowSentence(window(...of)));
  expect(sentence([byOdds(5.49), byOdds(2)], given(2))).toBe(
    "At 9 s, with the guide upright: still good up to 5 m/s of wind. Past it clean is below 80 %.",
  );
  expect(sentence([byOdds(5.5), byOdds(2.5, "holds")], given(2, 5 * degree))).toBe(
    "At 9 s, with the guide leaning 5 deg: still good up to 2.5 m/s of wind. Past it holds is below 99.0 %.",
  );
  expect(sentence([byRule(3), byOdds(2)], given(4))).toBe(
    "At 9 s, with the guide upright: good up to 3 m/s of wind only, and today it blows 4.0 m/s. Past it a check says stop: opened landings outside the field, most 50 %.",
  );
  expect(sentence([beyond, byOdds(8)], given(4))).toBe(
    "At 9 s, with the guide upright: good in every wind that was tried, up to 8 m/s.",
  );
  expect(sentence([byOdds(null, "fires-first"), byOdds(2)], given(4))).toBe(
    "At 9 s, with the guide upright: not good in any wind, not even in a calm. There the back-up charge fires first too often.",
  );
});

test("windowStops() names the leans that a check ends, once for each check", () => {
  const told = windowStops(window([byRule(3.5), byRule(2)], given(2)));
  expect(told.map(plain)).toEqual(["Upright, 5 deg: a check says stop: opened landings outside the field, most 50 %."]);
  expect(windowStops(window([byOdds(3), beyond], given(2)))).toEqual([]);
});

test("today is the nearest lean and the nearest wind, and is told with its odds", () => {
  const near = window([byOdds(5), byOdds(2)], given(5.9, 4 * degree));
  expect([todaysTilt(near), todaysWind(near)]).toEqual([1, 1]);
  expect(plain(windowTodaySentence(near))).toBe(
    "Today: wind 5.9 m/s from 240 deg at 2 m, guide 4 deg; nearest in the map, in brackets: 4 m/s, 60 % clean, holds over 99.9 %.",
  );
  const aloft = window([byOdds(5), byOdds(2)], { ...given(0), wind: { kind: "aloft", heights: 3 } });
  expect(todaysWind(aloft)).toBeNull();
  expect(windowTodaySentence(aloft)).toContain("at 3 heights");
});

test("isGood() and edgeCell() go by the nearer of odds and checks in each row", () => {
  const map = window([byRule(4.2), byOdds(null)], given(2));
  expect([0, 1, 2].map((wind) => isGood(map, 0, wind))).toEqual([true, true, false]);
  expect([0, 1, 2].map((wind) => isGood(map, 1, wind))).toEqual([false, false, false]);
  expect([plain(edgeCell(map, 0)), edgeCell(map, 1)]).toEqual(["4 m/s", "none"]);
  const all = window([beyond, byOdds(8)], given(2));
  expect(isGood(all, 0, 2)).toBe(true);
  expect(plain(edgeCell(all, 0))).toBe("8 m/s +");
  expect([tiltWords(0), plain(tiltWords(2.5 * degree))]).toEqual(["upright", "2.5 deg"]);
});
