import { type Calibration, calibration, type EventMeaning } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import type { DebriefData, DebriefEvent, KnowledgeData, LearnedData, NextData } from "../answer/debrief-data.js";
import { factorData } from "../answer/factor-data.js";
import { calibrationSentence, topsSentence } from "./calibration.en.js";
import { debriefHead, flownDelayWords, openingRangeSentence, topBandSentence } from "./debrief.en.js";
import { meaningSentence } from "./debrief-events.en.js";
import { nextSentence } from "./debrief-next.en.js";
import { flawSentences } from "./debrief-record.en.js";
import { delayLearnedSentence, dragSentence, factorWords, learnedBasis, untaughtSentences } from "./learned.en.js";

const plain = (text: string | null): string => (text ?? "null").replaceAll("\u00a0", " ");

const state = (factor: number, sd: number): KnowledgeData => ({
  drag: factorData(Math.log(factor), sd),
  impulse: factorData(0, 0.03),
  correlation: 0,
  delay: { set: 9, mean: 9 * factor, low: 8, high: 11 },
  flights: { rocket: 1, motor: 1, both: 1 },
});
const learned = (before: KnowledgeData, after: KnowledgeData) => ({ before, after }) as LearnedData;

describe("what was learned, in words", () => {
  test("says the difference, how well it is known, and what was known before", () => {
    expect(plain(dragSentence(learned(state(1, 0.15), state(1.07, 0.06))))).toBe(
      "Drag: 7 % more than reckoned, ± 6 %; before this flight it was as reckoned, ± 15 %.",
    );
    expect(plain(dragSentence(learned(state(1.07, 0.06), state(0.985, 0.05))))).toBe(
      "Drag: 1.5 % less than reckoned, ± 5 %; before this flight it was 7 % more, ± 6 %.",
    );
  });

  test("says where a flight taught next to nothing", () => {
    expect(plain(dragSentence(learned(state(1, 0.15), state(1, 0.1499))))).toContain("taught next to nothing of it");
  });

  test("gives the delay its range, and rounds nothing to more than it is worth", () => {
    expect(plain(delayLearnedSentence(learned(state(1, 0.1), state(1.05, 0.1))))).toBe(
      "Delay: an element of this type set to 9 s now is reckoned to burn 9.5 s, 9 in 10 from 8.0 to 11.0 s; before this flight 9.0 s, 9 in 10 from 8.0 to 11.0 s.",
    );
    expect(plain(factorWords({ factor: 1.004 }))).toBe("as reckoned");
    expect(plain(factorWords({ factor: 0.88 }))).toBe("12 % less");
  });

  test("owns that one flight proves little, and says it no more of two", () => {
    const basis = (rocket: number, motor: number, both: number) => learnedBasis({ flights: { rocket, motor, both } });
    expect(basis(1, 1, 1)).toContain("One flight proves little");
    expect(basis(2, 3, 2)).not.toContain("proves little");
    expect(basis(0, 0, 0)).toContain("No flight");
    expect(basis(0, 1, 1)).not.toContain("No flight of");
  });

  test("a flight that teaches nothing says why", () => {
    expect(untaughtSentences({ untaught: ["excluded"] })).toEqual([
      "Nothing is learned from it, since you left it out.",
    ]);
  });
});

describe("calibration, in words", () => {
  const flights = (count: number, clean: number): Calibration =>
    calibration(
      Array.from({ length: count }, (_, i) => ({ odds: 0.9, clean: i < clean, top: 1, topBand: [0, 2] as const })),
    );

  test("gives what was expected beside what came, with its interval", () => {
    // Wilson 95 % of 8 of 10: 0.490 to 0.943
    expect(plain(calibrationSentence(flights(10, 8)))).toBe(
      "Of 10 flights that were given odds, 8 came clean, where 9.0 were to be expected; with 95 % confidence 49 to 94 % come clean in the long run. 10 flights prove little.",
    );
    // Wilson 95 % of 19 of 20: 0.764 to 0.991
    expect(plain(calibrationSentence(flights(20, 19)))).toMatch(/76 to 99 % come clean in the long run\.$/);
  });

  test("one flight proves nothing, and none says nothing", () => {
    expect(plain(calibrationSentence(flights(1, 0)))).toBe(
      "The one flight that was given odds, 90 %, did not come clean. One flight proves nothing.",
    );
    expect(calibrationSentence(flights(0, 0))).toContain("nothing says yet");
    expect(topsSentence(flights(0, 0))).toBeNull();
    expect(plain(topsSentence(flights(10, 8)))).toContain("10 of 10 tops");
  });
});

describe("events, in words", () => {
  const event = (meaning: EventMeaning, change: Partial<DebriefEvent> = {}): DebriefEvent => ({
    name: "apogee",
    predicted: { time: 11, height: 614 },
    flown: { time: 11.3, timeError: 0.1, height: 587, heightError: 1, reason: "height-highest", movedFrom: null },
    difference: 0.3,
    differenceError: 0.1,
    heightDifference: -27,
    meaning,
    ...change,
  });

  test("say by how much, and what may be behind it", () => {
    expect(plain(meaningSentence(event("top-lower")))).toMatch(
      /^Top: 27 m lower than predicted: more drag or less impulse/,
    );
    expect(plain(meaningSentence(event("top-lower"), "imperial"))).toContain("89 ft lower");
    expect(plain(meaningSentence(event("burnt-longer", { name: "burnout" })))).toMatch(/^Burnout: 0\.30 s later/);
    expect(meaningSentence(event("not-found", { name: "main", flown: null }))).toBe(
      "Main opening: not found in the record.",
    );
  });

  test("say of what was as predicted whether that is its time alone", () => {
    expect(meaningSentence(event("as-predicted", { name: "opening" }))).toBe(
      "Opening: at the predicted time, as far as the record tells.",
    );
    expect(meaningSentence(event("as-predicted"))).toBe(
      "Top: at the predicted time and height, as far as the record tells.",
    );
  });

  test.each([
    "as-predicted",
    "not-found",
    "not-predicted",
    "starts-clock",
    "slow-off-guide",
    "fast-off-guide",
    "burnt-longer",
    "burnt-shorter",
    "top-higher",
    "top-lower",
    "top-earlier",
    "top-later",
    "delay-longer",
    "delay-shorter",
    "opened-early",
    "opened-late",
    "main-early",
    "main-late",
    "down-early",
    "down-late",
  ] as const)("%s is a whole sentence without a gap in it", (meaning) => {
    expect(meaningSentence(event(meaning))).toMatch(/^[A-Z][^{}]+\.$/);
  });
});

describe("a debrief, in words", () => {
  const data = {
    delay: {
      set: 9,
      flown: { kind: "seen", delay: 9.44, error: 0.08 },
      secondsFromApogee: 1.2,
      openingHeight: 572,
      openingSpeed: 14.2,
      openingInRange: true,
    },
    findings: { outcome: "clean" },
    top: { height: 587, error: 1, inBand: false },
    predicted: { apogee: { p05: 600, p50: 614, p95: 650 }, secondsFromApogee: { p05: -1.5, p50: 0.1, p95: 1.7 } },
  } as unknown as DebriefData;

  test("begins with what happened", () => {
    expect(plain(debriefHead(data))).toBe(
      "Set to 9 s, burnt 9.4 s ± 0.1 s; top 587 m; opened 1.2 s after the top, at 572 m and about 14 m/s: clean.",
    );
    expect(plain(topBandSentence(data))).toBe("Top: 587 m, below the 600 to 650 m that should hold 9 in 10.");
    expect(plain(openingRangeSentence(data))).toContain("inside the 1.5 s before to 1.7 s after the top");
  });

  test("shows a bound as one, and no error as none", () => {
    expect(plain(flownDelayWords({ kind: "at-least", delay: 12.34 }))).toBe("at least 12.3 s");
    expect(plain(flownDelayWords({ kind: "seen", delay: 9.404, error: 0.004 }))).toBe("9.40 s ± 0.01 s");
  });

  test("counts flaws a kind, with what was done about them", () => {
    const gap = (from: number, to: number) => ({ kind: "gap" as const, from, to });
    expect(flawSentences({ flaws: [gap(1, 1.5), gap(3, 4)] }).map(plain)).toEqual([
      "2 gaps, 1.5 s in all: nothing is known there.",
    ]);
    expect(flawSentences({ flaws: [] })).toEqual([]);
  });
});

describe("nextSentence()", () => {
  const odds = (delay: number, clean: number, good = true) => ({
    toCut: { delay, odds: { clean, holds: 0.97 }, reachesLeast: good, reachesHolds: true, firesFirst: null },
  });
  const next = (before: object, after: object, sameDelay: object | null = null) =>
    plain(nextSentence({ plan: "", before, after, sameDelay } as unknown as NextData));

  test("says another delay with the old one's odds, or the same with what changed", () => {
    expect(next(odds(9, 0.93), odds(8, 0.95), { clean: 0.9 })).toBe(
      "The next one: 8 s, 95 % clean. Without this flight it was 9 s, 93 % clean; that delay now has 90 %.",
    );
    expect(next(odds(9, 0.9), odds(9, 0.94))).toBe("The next one: 9 s, 94 % clean; without this flight 90 %.");
    expect(next(odds(9, 0.9), odds(9, 0.902))).toBe("The next one: 9 s, 90 % clean: as without this flight.");
    expect(next(odds(9, 0.9), odds(9, 0.4, false))).toContain("none of them good enough");
    expect(next({ toCut: null }, { toCut: null })).toContain("no delay");
    const backUp = { toCut: { ...odds(12, 0.1).toCut, firesFirst: 0.03 } };
    expect(next(backUp, backUp)).toContain(
      "12 s, fires before the electronics in 3 %, holds 97.0 % if the electronics fails",
    );
  });
});
