import type { Issue } from "@delaywright/documents";
import { describe, expect, test } from "vitest";
import { inventedDocuments, inventedPart, inventedSetting, inventedTold } from "../standing/invented.js";
import { exportedWords, promiseWords } from "./back-up-words.js";
import { brokenWords, type CardStanding, cardWords } from "./card-words.js";

const setting = inventedSetting({ depth: 0.00396875, odds: { ...inventedSetting().odds, clean: 0.912 } });
const toCut = { ...setting, reachesLeast: true, reachesHolds: true };
const look = {
  code: "guide-exit-speed",
  verdict: "look",
  value: 14,
  limit: 15,
  unit: "m/s",
  sense: "least",
  details: [],
  missing: [],
  source: "common practice",
};
const inHand = inventedPart("bag-3.motor-in-hand.json", { kind: "motor-in-hand", name: "Bag 3" });
const words = (changes: object, more: Partial<CardStanding> = {}) =>
  cardWords({
    documents: inventedDocuments({ inHand }),
    told: inventedTold({ data: { settings: [setting], toCut, ...changes } }),
    age: null,
    units: "metric",
    ...more,
  });

describe("cardWords()", () => {
  test("says what to cut, how, and what is next", () => {
    expect(words({})).toMatchObject({
      lead: "Cut to 9\u00a0s",
      past: false,
      odds: "91\u00a0%",
      oddsNote: "clean",
      check: null,
    });
    expect(words({}).how).toMatch(/^take 5\u00a0s out, end\u00a0A with the ring, 4.0\u00a0mm/);
    expect(words({}, { units: "imperial" }).how).toMatch(/, 5\/32\u00a0in \(4.0\u00a0mm\)$/);
    expect(words({})).toMatchObject({ next: "Next: measure Bag 3, then cut", pad: false });
  });

  test("says what was cut, and sends to the pad", () => {
    const cut = { ...setting, end: null, spacers: [] };
    const done = words({
      settings: [cut],
      toCut: { ...toCut, end: null, spacers: [] },
      given: { delayKind: "adjustable", removedDepth: 0.00396875 },
    });
    expect(done).toMatchObject({ lead: "Cut, 9\u00a0s", past: true, next: "Next: to the pad", pad: true });
  });

  test("says what is good at best, what was cut too deep, and what has no delay", () => {
    const poor = words({ toCut: { ...toCut, reachesLeast: false } });
    expect(poor).toMatchObject({ lead: "At best 9\u00a0s", next: "Next: see what would help" });
    expect(poor.check).toEqual({ word: "look", words: "no cut reaches 80\u00a0%" });
    const over = words({ overCut: { delay: 8.3, doNotFly: false } });
    expect(over).toMatchObject({ lead: "Now 8.3\u00a0s", next: "Next: see the ways out" });
    expect(words({ toCut: null, settings: [] })).toMatchObject({ lead: "No delay", odds: null });
  });

  test("says of a charge behind electronics that its odds are those of opening alone", () => {
    const behind = words({ settings: [{ ...setting, firesFirst: 0.02 }] });
    expect(behind).toMatchObject({ oddsNote: "alone" });
    expect(behind.how).toMatch(/^Stands behind the electronics\. Take 5/);
  });

  test("names what says stop before what says look", () => {
    expect(words({ checks: [look] }).check).toMatchObject({ word: "look" });
    const stop = { ...look, verdict: "stop" };
    expect(words({ checks: [look, stop] })).toMatchObject({
      check: { word: "stop" },
      next: "Next: see what says stop",
    });
  });

  test("asks for the instructions before anything, and for the wind where its reading is old", () => {
    const unread = { told: inventedTold({ data: { settings: [setting], toCut }, facts: { cutAllowed: false } }) };
    expect(words({}, unread).next).toBe("Next: read the motor's instructions");
    const old = words({}, { age: { taken: "09:30", minutes: 82, stale: true } });
    expect(old).toMatchObject({
      oddsNote: "at 09:30",
      old: "The wind was read 82\u202fmin ago.",
      next: "Next: read the wind",
    });
  });
});

describe("brokenWords()", () => {
  const issue = (code: string, path: string, file = "a.rocket.json"): Issue => ({
    file,
    path,
    code,
    found: code === "missing" ? "nothing" : '"18o mm"',
    accepted: "a length with its unit",
    example: '"180 mm"',
  });
  const said = (...issues: readonly Issue[]) => brokenWords("p.plan.json", issues, () => "Demo rocket 66");

  test("says in one sentence what is wrong and where", () => {
    expect(said(issue("unit-unknown", "fins[0].root"), issue("missing", "length"))).toEqual({
      lead: "One thing is wrong",
      why: 'In Demo rocket 66, fins[0].root: this unit is not known: "18o mm" found; a length with its unit is accepted, for example "180 mm".',
      next: "Next: mend it",
      onlyMissing: false,
    });
  });

  test("tells what is only missing from what is wrong", () => {
    expect(said(issue("missing", "guide", "p.plan.json"), issue("missing", "nose"))).toEqual({
      lead: "2 things are missing",
      why: "Still to be entered: guide, nose of Demo rocket 66.",
      next: "Next: enter what is missing",
      onlyMissing: true,
    });
    expect(said(..."abcdefg".split("").map((path) => issue("missing", path, "p.plan.json"))).why).toBe(
      "Still to be entered: a, b, c, d, e and 2 more.",
    );
  });
});

test("exportedWords() and promiseWords() say what stands between the bench and its loss", () => {
  const day = 86_400_000;
  expect([0.5, 1.2, 3.9].map((days) => exportedWords(0, days * day))).toEqual([
    "Last export within the last day.",
    "Last export a day ago.",
    "Last export 3 days ago.",
  ]);
  expect(promiseWords("refused")).toContain("may clear");
});
