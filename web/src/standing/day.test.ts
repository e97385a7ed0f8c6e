import { describe, expect, test } from "vitest";
import { dayOf, dayWords, longDay, longDayOf, momentWords, timeOfDay } from "./day.js";

const now = new Date(2026, 4, 2, 9, 5);

describe("dayOf(), longDay(), dayWords() and momentWords()", () => {
  test("tell a day as documents and people write it", () => {
    expect(dayOf(now)).toBe("2026-05-02");
    expect(timeOfDay(now)).toBe("09:05");
    expect(longDay(now)).toBe("Saturday 2 May");
    expect(longDayOf("2026-05-02")).toBe("Saturday 2 May");
    expect(["2026-02-30", "2 May", undefined].map(longDayOf)).toEqual([null, null, null]);
    expect(momentWords("2026-05-02T10:12")).toBe("2 May 2026, 10:12");
    expect(momentWords("2026-05-02")).toBe("2 May 2026");
    expect(momentWords("this morning")).toBe("this morning");
  });

  test.each([
    ["2026-05-02", "today"],
    ["2026-05-09", "9 May"],
    ["2025-12-31", "31 December 2025"],
    ["soon", null],
    [undefined, null],
  ])("dayWords() of %s", (day, words) => {
    expect(dayWords(day, now)).toBe(words);
  });
});
