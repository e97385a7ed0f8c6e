import type { DecisionData, Issue } from "@delaywright/documents";
import { describe, expect, test } from "vitest";
import { exportedWords, promiseWords } from "./back-up-words.js";
import { brokenWords, cardWords, TO_THE_PAD } from "./card-words.js";
import { planNames } from "./plan-names.js";
import { windAge } from "./wind-age.js";

const odds = {
  clean: 0.912,
  holds: 0.996,
  earlyFast: 0.05,
  lateFast: 0.03,
  leanFast: 0,
  low: 0,
  grounded: 0,
  error: 0.006,
};
const setting = {
  firesFirst: null as number | null,
  delay: 9,
  removed: 5,
  end: "A",
  spacers: ["ring"],
  depth: 0.00396875,
  odds,
};
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
const data = {
  settings: [setting],
  toCut,
  choice: null,
  overCut: null,
  checks: [],
  given: { delayKind: "adjustable", removedDepth: null },
  limits: { leastClean: 0.8, leastHolds: 0.99 },
} as unknown as DecisionData;
const names = { rocket: "R", motor: "M", inHand: "Bag 3", field: "F", measured: false };
const words = (changes: object, allowed = true) =>
  cardWords({ ...data, ...changes } as DecisionData, allowed, names, null);

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
    expect(words({}).next).toBe("Next: measure Bag 3, then cut");
  });

  test("says what was cut, and sends to the pad", () => {
    const cut = { ...setting, end: null, spacers: [] };
    const done = words({
      settings: [cut],
      toCut: { ...toCut, end: null, spacers: [] },
      given: { delayKind: "adjustable", removedDepth: 0.00396875 },
    });
    expect(done).toMatchObject({ lead: "Cut, 9\u00a0s", past: true, next: TO_THE_PAD });
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
    expect(words({}, false).next).toBe("Next: read the motor's instructions");
    const old = cardWords(data, true, names, { taken: "09:30", minutes: 82, stale: true });
    expect(old).toMatchObject({
      oddsNote: "at 09:30",
      old: "The wind reading is 82\u202fmin old.",
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

describe("windAge()", () => {
  const now = new Date(2026, 4, 2, 10, 52);
  const plan = (date: string, taken: unknown) => ({ kind: "plan", version: 1, name: "P", date, weather: { taken } });

  test("counts on the plan's own day only", () => {
    expect(windAge(plan("2026-05-02", "10:40"), now)).toEqual({ taken: "10:40", minutes: 12, stale: false });
    expect(windAge(plan("2026-05-02", "09:30"), now)).toMatchObject({ minutes: 82, stale: true });
    expect(windAge(plan("2026-05-01", "09:30"), now)).toBeNull();
    expect(windAge(plan("2026-05-02", "11:30"), now)).toBeNull();
    expect(windAge(plan("2026-05-02", undefined), now)).toBeNull();
  });
});

describe("planNames()", () => {
  test("finds names in the library and inside the plan", () => {
    const entry = (path: string, raw: object) => ({ path, raw }) as never;
    const entries = [
      entry("r.rocket.json", { kind: "rocket", name: "Demo rocket 76" }),
      entry("m.motor.json", { kind: "motor", name: "Demo H150" }),
    ];
    const motor = { kind: "motor-in-hand", name: "Bag 3", type: "m.motor.json", readings: [{ before: "22 mm" }] };
    expect(
      planNames({ kind: "plan", version: 1, rocket: "r.rocket.json", motor, field: "gone.json" }, entries),
    ).toEqual({
      rocket: "Demo rocket 76",
      motor: "Demo H150",
      inHand: "Bag 3",
      field: null,
      measured: true,
    });
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
