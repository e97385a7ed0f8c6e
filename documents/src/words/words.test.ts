import { readdirSync, readFileSync } from "node:fs";
import { checkRules, type FactName, rules } from "@delaywright/engine";
import { expect, test } from "vitest";
import { fieldAt } from "../forms/field-at.js";
import type { Kind } from "../kinds/kinds.js";
import { cautions } from "./cautions.en.js";
import { wordForDetail } from "./check-details.en.js";
import { checkLine } from "./check-lines.en.js";
import { wordForCheck, wordsForCheck } from "./checks.en.js";
import { wordForInput } from "./drivers.en.js";
import { fieldOfFact, wordForFact } from "./facts.en.js";
import { findingFigure } from "./figures.en.js";
import { acceptedWords, doubtLine, foundWords, issueLine, issueSentence } from "./issues.en.js";
import { checkCounts, missingFacts, missingFieldSentences, notCheckedSentence } from "./not-checked.en.js";
import { wordForHelp, wordForOutcome, wordForReason, wordForWhy } from "./reasons.en.js";
import { sourceWords } from "./rule-sources.en.js";
import { wordForWarning } from "./warnings.en.js";

const plain = (text: string): string => text.replaceAll("\u00a0", " ");

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
    sense: "least",
    details: [],
    missing: [],
  } as const;
  expect(plain(wordForCheck(check))).toMatch(
    /^guide-exit speed 11.2 m\/s, least 13.4 m\/s: it leaves the guide too slowly/,
  );
  expect(plain(wordForCheck({ ...check, verdict: "pass" }))).toBe("guide-exit speed 11.2 m/s, least 13.4 m/s");
  const tilt = {
    ...check,
    sense: "most",
    code: "tilt-limit",
    verdict: "pass",
    value: 0.1,
    limit: Math.PI / 9,
    unit: "rad",
  } as const;
  expect(plain(wordForCheck(tilt))).toBe("lean of the guide 5.73 deg, most 20 deg");
  expect(plain(wordForCheck({ ...check, code: "new-check", limit: null }))).toBe("new check 11.2 m/s");
  expect(wordsForCheck("toString").title).toBe("toString");
  const clouds = { ...check, code: "cloud-cover", verdict: "not-checked", value: null, limit: null } as const;
  expect(wordForCheck({ ...clouds, missing: ["cloudCover"] })).toBe("cloud cover: not known: the cloud cover");
  const kept = { ...check, code: "retention", value: null, limit: null, details: ["retained-by-friction"] } as const;
  expect(wordForCheck(kept)).toBe(
    "what keeps the motor in: by friction: test that the charge does not push the motor out; the ejection charge pushes the motor out of the tube too",
  );
  // what passes says only what there is to say beside its figures
  const classed = { ...kept, code: "aviation-class", verdict: "pass", details: ["class-2"] } as const;
  expect(wordForCheck(classed)).toBe("class under the aviation rule: class 2, a high-power rocket");
});

test("a check of the own setting says which of its odds are meant", () => {
  const own = { code: "choice-below-least", unit: "odds", sense: "least", details: [], missing: [] } as const;
  const stop = { ...own, verdict: "stop", value: 0.931, limit: 0.99 } as const;
  const look = { ...own, verdict: "look", value: 0.012, limit: 0.8 } as const;
  expect(plain(wordForCheck(stop))).toBe(
    "odds that your own setting holds 93 %, least 99.0 %: your own setting opens too fast or too low for the recovery to hold as often as you asked for",
  );
  expect(plain(wordForCheck(look))).toBe(
    "odds that your own setting opens clean 1 %, least 80 %: your own setting opens clean less often than you asked for",
  );
  expect(checkLine({ ...stop, id: own.code } as never).name).toBe("Odds that your own setting holds");
});

test("findingFigure() has the units that people say", () => {
  const figures = [
    [43_200, "s", "field-hours", "12:00"],
    [4500, "s", "weather-age", "75 min"],
    [129_600, "s", "aviation-notice", "36 h"],
    [0.0014, "kg", "charge-in-well", "1.40 g"],
    [8046.72, "m", "visibility", "8.05 km"],
    [0.3, "share", "cloud-cover", "30 %"],
    [0.9931, "odds", "no-setting-holds", "99.3 %"],
    [505.75, "N s", "total-impulse", "506 N s"],
    [1234.5, "m", "ceiling", "1235 m"],
    [0.1, "rad", "tilt-limit", "5.73 deg"],
  ] as const;
  for (const [value, unit, code, expected] of figures) expect(plain(findingFigure(value, unit, code))).toBe(expected);
});

test("every rule, every fact that it needs, and every detail has words of its own", () => {
  expect(rules.length).toBeGreaterThan(60);
  for (const { id, title, needs } of rules) {
    const words = wordsForCheck(title);
    expect(words.otherwise, id).not.toBe("");
    expect(words.title, id).not.toBe("");
    for (const name of needs) expect(wordForFact(name), name).not.toBe(name);
  }
  // a rule that applies to nobody knows what it would have to know
  for (const { missing } of checkRules({}, "association"))
    for (const name of missing) expect(wordForFact(name), name).toMatch(/ /);
  expect(wordForDetail("told-too-late")).toBe("it was told too late");
  expect(wordForDetail("some-news")).toBe("some news");
  expect([fieldOfFact("cloudBase"), fieldOfFact("liftOffMass"), fieldOfFact("toString")]).toEqual([
    "plan: site.cloudBase",
    null,
    null,
  ]);
});

test("fields that would say a fact are fields of their documents", () => {
  const named = checkRules({}, "association").flatMap(({ missing }) =>
    missing.flatMap((name) => fieldOfFact(name) ?? []),
  );
  expect(new Set(named).size).toBeGreaterThan(20);
  for (const text of named) {
    const [kind = "", path = ""] = text.split(": ");
    for (const each of path.split(" and ")) expect(fieldAt(kind as Kind, each), text).toBeDefined();
  }
});

test("notCheckedSentence() counts the rules and names each fact once", () => {
  const check = (verdict: "pass" | "not-checked", ...missing: FactName[]) => ({ verdict, missing });
  expect(notCheckedSentence([check("pass")])).toBeNull();
  expect(notCheckedSentence([check("not-checked", "cloudCover"), check("pass")])).toBe(
    "1 rule was not checked, because the cloud cover is not known.",
  );
  const two = [check("not-checked", "cloudCover", "visibility"), check("not-checked", "visibility", "daylight")];
  expect(notCheckedSentence(two)).toBe(
    "2 rules were not checked, because the cloud cover, the visibility and whether it is daylight are not known.",
  );
  expect(notCheckedSentence([check("not-checked")])).toBe("1 rule was not checked.");
  const many = check("not-checked", "cloudCover", "visibility", "age", "fireMeans", "daylight");
  expect(notCheckedSentence([many])).toMatch(/the flyer's age, means to control a fire and whether it is daylight are/);
  expect(notCheckedSentence([many, check("not-checked", "cloudBase")])).toBe(
    "2 rules were not checked, because the cloud cover, the visibility, the flyer's age, means to control a fire and 2 more facts are not known.",
  );
  expect(missingFacts([...two, check("not-checked", "weatherAge", "totalImpulse")])).toEqual([
    { name: "cloudCover", words: "the cloud cover", fields: ["plan: site.cloudCover"] },
    { name: "visibility", words: "the visibility", fields: ["plan: site.visibility"] },
    { name: "daylight", words: "whether it is daylight", fields: ["plan: site.daylight"] },
    { name: "weatherAge", words: "the age of the weather", fields: ["plan: weather.taken", "plan: site.launchAt"] },
    { name: "totalImpulse", words: "the total impulse", fields: [] },
  ]);
  expect(missingFieldSentences([...two, check("not-checked", "age")])).toEqual([
    "Plan: site.cloudCover, site.visibility, site.daylight.",
    "Flyer: age.",
  ]);
  expect(checkCounts([check("pass"), ...two])).toEqual({ stop: 0, look: 0, notChecked: 2, pass: 1 });
});

test("sourceWords() tells source, edition and how far the number can be trusted, each once", () => {
  expect(sourceWords({ source: "common practice", edition: "", status: "common practice, no source" })).toBe(
    "common practice, no source",
  );
  expect(sourceWords({ source: "own default", edition: "", status: "own default, no source" })).toBe(
    "own default, no source",
  );
  expect(sourceWords({ source: "A code", edition: "2012", status: "memory" })).toBe(
    "A code, 2012, from memory, not read again",
  );
  expect(sourceWords({ source: "A code", edition: "2012", status: "verified" })).toBe("A code, 2012");
  expect(sourceWords({ source: "A club", edition: "2026", status: "the club's own" })).toBe("A club, 2026");
  // what the documents themselves state is their own source
  expect(sourceWords({ source: "the field's hours", edition: "", status: "own default, no source" })).toBe(
    "the field's hours",
  );
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
