import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { cautions } from "./cautions.en.js";
import { wordForCheck, wordForWarning, wordsForCheck } from "./checks.en.js";
import { wordForInput } from "./drivers.en.js";
import { acceptedWords, doubtLine, foundWords, issueLine, issueSentence } from "./issues.en.js";
import { wordForHelp, wordForOutcome, wordForReason, wordForWhy } from "./reasons.en.js";

test("issueSentence() says where, what was found, what is accepted, and an example", () => {
  const issue = {
    path: "rocket.fins[0].root",
    code: "wrong-type",
    found: "180",
    accepted: "a length with its unit",
    example: '"180 mm"',
  };
  expect(issueSentence(issue)).toBe(
    'rocket.fins[0].root: 180 found; a length with its unit is accepted, for example "180 mm"',
  );
  expect(issueLine({ file: "", ...issue })).toBe(issueSentence(issue));
  expect(issueLine({ file: "a.json", ...issue })).toBe(`a.json: ${issueSentence(issue)}`);
  expect(foundWords(issue)).toBe("180 found");
  expect(acceptedWords(issue)).toBe('a length with its unit is accepted, for example "180 mm"');
  expect(issueSentence({ ...issue, code: "unknown-field", accepted: "did you mean `root`?" })).toBe(
    "rocket.fins[0].root: no such field; did you mean `root`?",
  );
});

test("doubtLine() says what would be expected", () => {
  expect(
    doubtLine({ file: "a.json", path: "wind", code: "wind-strong", found: '"25 m/s"', expected: "up to 20 m/s" }),
  ).toBe('a.json: wind: "25 m/s" found; up to 20 m/s expected');
});

test("wordForCheck() gives value and limit, and what it means where it does not pass", () => {
  const check = {
    code: "guide-exit-speed",
    verdict: "look",
    value: 11.234,
    limit: 13.4112,
    unit: "m/s",
    source: "",
  } as const;
  expect(wordForCheck(check)).toMatch(/^guide-exit speed 11.2 m\/s, least 13.4 m\/s: it leaves the guide too slowly/);
  expect(wordForCheck({ ...check, verdict: "pass" })).toBe("guide-exit speed 11.2 m/s, least 13.4 m/s");
  const tilt = {
    code: "tilt-limit",
    verdict: "pass",
    value: 0.1,
    limit: Math.PI / 9,
    unit: "rad",
    source: "",
  } as const;
  expect(wordForCheck(tilt)).toBe("lean of the guide 5.73 deg, most 20 deg");
  expect(wordForCheck({ ...check, code: "new-check", limit: null })).toBe("new check 11.2 m/s");
  expect(wordsForCheck("toString").title).toBe("toString");
});

test("wordForWarning() gives the numbers that there are", () => {
  expect(wordForWarning({ code: "no-tool", value: null, limit: null })).toBe("no tool is given: no cut is planned");
  expect(wordForWarning({ code: "mach-above-validated", value: 1.234, limit: 0.9 })).toMatch(/\(1.23, limit 0.9\)$/);
  expect(wordForWarning({ code: "some-news", value: null, limit: null })).toBe("some news");
});

test("words stand for every code", () => {
  expect(wordForReason("lean")).toContain("no delay can cure");
  expect(wordForHelp("ballast")).toBe("ballast, fixed mechanically");
  expect(wordForWhy("none-holds")).toContain("no setting holds");
  expect(wordForOutcome("earlyFast")).toBe("too fast, before the top");
  expect(wordForInput("windFloor")).toBe("gusts");
  expect(wordForInput("constructor")).toBe("constructor");
});

test("cautions stand for every hazard", () => {
  expect(Object.values(cautions).every((lines) => lines.length > 0)).toBe(true);
  expect(cautions.cutting.join(" ")).toContain("eye protection");
});

test("words never promise what nobody can", () => {
  const folder = new URL(".", import.meta.url);
  const files = readdirSync(folder).filter((file) => file.endsWith(".en.ts"));
  expect(files.length).toBeGreaterThanOrEqual(6);
  for (const file of files) {
    expect(readFileSync(new URL(file, folder), "utf8").replaceAll("safety", ""), file).not.toMatch(/\bsafe(ly)?\b/i);
  }
});
