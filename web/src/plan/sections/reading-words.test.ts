import { describe, expect, test } from "vitest";
import { inventedSetting } from "../../standing/invented.js";
import { aidLines, isCorrection, issueWords, meaningWords, readingOf, withUnit } from "./reading-words.js";

const plain = (text: string | null): string | null => text?.replace(/\s/gu, " ") ?? null;
const element = { depthPerSecond: 0.0008 };
const now = new Date(2026, 4, 2, 11, 4);

describe("aidLines()", () => {
  test("expects one second short, the cut itself and one second beyond", () => {
    const lines = aidLines(element, { delay: 9, depth: 0.004 }, 0.014, "metric");
    expect(
      lines.map(({ grows, reads, delay, word }) => [grows, reads, delay, word].map((text) => plain(text))),
    ).toEqual([
      ["3.2 mm", "17.2 mm", "10 s", "keep cutting"],
      ["4.0 mm", "18.0 mm", "9 s", "stop here"],
      ["4.8 mm", "18.8 mm", "8 s", "over-cut"],
    ]);
  });

  test("has no line above the uncut face, and none where a second has no known depth", () => {
    expect(aidLines(element, { delay: 13.5, depth: 0.0004 }, null, "metric").map(({ word }) => word)).toEqual([
      "stop here",
      "over-cut",
    ]);
    expect(aidLines({ depthPerSecond: null }, { delay: 9, depth: 0.004 }, null, "metric")).toEqual([]);
  });
});

describe("readingOf()", () => {
  const typed = { before: "14 mm", after: " 18.0 mm", note: "" };

  test("writes down what is typed with its unit, the pieces and the time", () => {
    expect(readingOf(typed, inventedSetting(), null, now)).toEqual({
      when: "2026-05-02T11:04",
      before: "14 mm",
      after: "18.0 mm",
      end: "A",
      spacers: ["ring"],
    });
  });

  test("names no pieces for a depth before the cut, nor where nothing is to be cut", () => {
    expect(readingOf({ ...typed, after: "" }, inventedSetting(), null, now)).not.toHaveProperty("end");
    expect(readingOf(typed, null, 0.004, now)).not.toHaveProperty("end");
  });
});

test("withUnit() gives a bare number the unit beside the field, and leaves what has one", () => {
  expect(withUnit("14", "metric")).toBe("14 mm");
  expect(withUnit("0.55", "imperial")).toBe("0.55 in");
  expect(withUnit("35/64 in", "metric")).toBe("35/64 in");
  expect(withUnit("twelve", "metric")).toBe("twelve");
});

test("isCorrection() tells what a reason mends from what is refused", () => {
  const issue = (code: string) => ({ code }) as Parameters<typeof isCorrection>[0];
  expect(["cut-shallower", "after-above-before"].map((code) => isCorrection(issue(code)))).toEqual([true, true]);
  expect(["cut-beyond-longest", "out-of-range"].map((code) => isCorrection(issue(code)))).toEqual([false, false]);
});

describe("meaningWords()", () => {
  const means = {
    removed: 0.004,
    removedSeconds: 5,
    delay: 9,
    sd: 0.18,
    beyondPlan: null,
    deeperThanPlanned: false,
    issues: [],
  };

  test("turns a depth into the delay that is left, with how far it may be off", () => {
    expect(plain(meaningWords(means, "metric"))).toBe("4.0 mm are out: 9.0 s left, give or take 0.2 s (one sigma).");
    expect(meaningWords({ ...means, removed: null }, "metric")).toBeNull();
  });

  test("compares it with the plan", () => {
    const told = (beyondPlan: number, deeperThanPlanned = false) =>
      plain(meaningWords({ ...means, beyondPlan, deeperThanPlanned }, "metric"));
    expect(told(0)).toContain("That is the plan.");
    expect(told(-0.0008)).toContain("0.8 mm short of the plan.");
    expect(told(0.0001)).toContain("within what readings can be off");
    expect(told(0.0013, true)).toContain("1.3 mm deeper than planned: more than two readings can be off.");
  });
});

test("issueWords() asks for a reason where a reading is shallower than the last", () => {
  const issue = { file: "", path: "readings[1].after", code: "cut-shallower", found: "", accepted: "", example: "" };
  expect(issueWords(issue)).toContain("say why");
});
