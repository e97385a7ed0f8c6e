import { describe, expect, test } from "vitest";
import { ageWords, readNow, readWords, weatherAge } from "./weather-age.js";

const now = new Date(2026, 4, 2, 11, 54);
const plan = (taken: string, date = "2026-05-02") => ({ date, weather: { taken } });

describe("weatherAge()", () => {
  test("is the time since the reading, on the plan's own day", () => {
    expect(weatherAge(plan("10:40"), now)).toEqual({ taken: "10:40", minutes: 74, stale: true });
    expect(weatherAge(plan("10:54"), now)?.stale).toBe(false);
    expect(weatherAge(plan("10:53"), now)?.stale).toBe(true);
  });

  test("is no age on another day, later than now, or without a time", () => {
    expect(weatherAge(plan("10:40", "2026-05-03"), now)).toEqual({ taken: "10:40", minutes: null, stale: false });
    expect(weatherAge(plan("23:10"), now)?.minutes).toBeNull();
    expect(weatherAge({ date: "2026-05-02" }, now)).toBeNull();
  });
});

test("ageWords() and readWords() say it as people do", () => {
  const age = (minutes: number | null) => ({ taken: "10:40", minutes, stale: false });
  expect(ageWords(age(0))).toBe("just now");
  expect(ageWords(age(74))).toBe("74\u202fmin ago");
  expect(ageWords(age(180))).toBe("3\u202fh ago");
  expect(readWords(age(null))).toBe("at 10:40");
});

test("readNow() brings a plan of another day to today", () => {
  expect(readNow({ date: "2026-05-02" }, now)).toEqual({ "weather.taken": "11:54" });
  expect(readNow({ date: "2026-04-30" }, now)).toEqual({ date: "2026-05-02", "weather.taken": "11:54" });
});
