import { checkRules, clubIssues, ruleById, rules } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { readValue } from "../../read.js";
import { issueSentence } from "../../words/issues.en.js";
import { readLimit } from "./limit.js";
import type { RuleSetDocument } from "./schema.js";
import { ruleSetToEngine } from "./to-engine.js";

const club = {
  kind: "rule-set",
  version: 1,
  name: "Larkmoor club",
  source: "Larkmoor club, field rules",
  edition: "2026",
  base: "association",
  limits: {
    "wind-limit": { look: "5 m/s", stop: "14 mph" },
    "guide-exit-against-wind": { look: 5 },
    "below-least-clean": { look: "none" },
    "landing-inside": { stop: 0.3 },
    "landing-energy": { look: "75 ft lbf", stop: "150 J" },
    "tilt-limit": { stop: "10 deg" },
    "descent-time": { stop: "90 s" },
    "total-impulse": { stop: "1280 N s" },
    "weather-age": "off",
  },
  distances: [
    { upTo: "320 N s", single: "100 ft", complex: "200 ft", cleared: "50 ft" },
    { upTo: "1280 N s", single: "50 m", complex: "100 m" },
  ],
};

const faults = (document: unknown) => readValue(document, { file: "club.json" }).issues.map(issueSentence);
const withLimits = (limits: unknown) => ({ ...club, limits });

function made(document: unknown = club) {
  const read = readValue(document, { file: "club.json" });
  if (read.state !== "ready") throw new Error(read.issues.map(issueSentence).join("\n"));
  return ruleSetToEngine(read.document as RuleSetDocument);
}

describe("a club's rule set", () => {
  test("becomes the engine's in SI units, each limit in its rule's own", () => {
    expect(faults(club)).toEqual([]);
    const { limits, distances, ...rest } = made();
    expect(rest).toEqual({
      name: "Larkmoor club",
      source: "Larkmoor club, field rules",
      edition: "2026",
      base: "association",
    });
    expect(limits).toEqual({
      "wind-limit": { look: 5, stop: expect.closeTo(14 * 0.44704, 12) },
      "guide-exit-against-wind": { look: 5 },
      "below-least-clean": { look: null },
      "landing-inside": { stop: 0.3 },
      // 75 ft lbf: check values, section 10
      "landing-energy": { look: expect.closeTo(101.6863, 4), stop: 150 },
      "tilt-limit": { stop: expect.closeTo(Math.PI / 18, 12) },
      "descent-time": { stop: 90 },
      "total-impulse": { stop: 1280 },
      "weather-age": "off",
    });
    expect(distances).toEqual([
      {
        upTo: 320,
        single: expect.closeTo(30.48, 12),
        complex: expect.closeTo(60.96, 12),
        cleared: expect.closeTo(15.24, 12),
      },
      { upTo: 1280, single: 50, complex: 100 },
    ]);
    expect(clubIssues(made())).toEqual([]);
  });

  test("is what its rules are then judged by", () => {
    const wind = (windSpeed: number) =>
      checkRules({ windSpeed, highPower: true }, made()).find(({ id }) => id === "wind-limit");
    expect(wind(5)).toMatchObject({ verdict: "pass", status: "the club's own", source: "Larkmoor club, field rules" });
    expect(wind(5.1)).toMatchObject({ verdict: "look", limit: 5 });
    expect(wind(6.3)?.verdict).toBe("stop");
    expect(checkRules({ weatherAge: 1e6 }, made()).some(({ id }) => id === "weather-age")).toBe(false);
  });

  test("needs no more than its name", () => {
    expect(made({ kind: "rule-set", version: 1, name: "Bare" })).toEqual({ name: "Bare", limits: {} });
  });

  test("tells every fault at once, with the nearest rule for a name that is none", () => {
    const wrong = {
      ...club,
      base: "nobody",
      limits: {
        "wind-limt": { stop: "6 m/s" },
        "tilt-limit": { stop: "10 m" },
        "cp-ahead-of-balance": "off",
        "tilt-sector": { stop: "1 rad" },
        "wind-limit": { stop: 6 },
        "guide-exit-against-wind": { look: "5 m/s" },
        "landing-inside": { stop: 30 },
        "weather-age": { look: "2 h", stop: "1 h" },
        "thrust-to-weight": { look: 3, stop: 5 },
        ceiling: "on",
        "road-distance": { stop: "-1 m" },
      },
      distances: [
        { upTo: "320 N s", single: "30 m", complex: "60 m" },
        { upTo: "320 N s", single: "30", complex: "60 m" },
      ],
    };
    const told = faults(wrong);
    const about = (path: string) => told.filter((sentence) => sentence.startsWith(path));
    expect(about("limits.wind-limt")[0]).toContain("did you mean `wind-limit`?");
    expect(about("limits.tilt-limit.stop")[0]).toContain("an angle with its unit");
    expect(about("limits.cp-ahead-of-balance")[0]).toContain("no club can change this rule");
    expect(about("limits.tilt-sector")[0]).toContain('"off", or nothing');
    expect(about("limits.wind-limit.stop")[0]).toContain("a speed with its unit");
    expect(about("limits.guide-exit-against-wind.look")[0]).toContain("multiples of another figure");
    expect(about("limits.landing-inside.stop")[0]).toContain("a number from 0 to 1");
    expect(about("limits.weather-age.look")[0]).toContain("no more than stop");
    expect(about("limits.thrust-to-weight.look")[0]).toContain("no less than stop");
    expect(about("limits.ceiling")).toHaveLength(1);
    expect(about("limits.road-distance.stop")[0]).toContain("not below zero");
    expect(about("distances[1].upTo")[0]).toContain("more than in the row before");
    expect(about("distances[1].single")).toHaveLength(1);
    expect(about("base")).toHaveLength(1);
    expect(told).toHaveLength(14);
  });

  test("names all rules where none is near", () => {
    expect(faults(withLimits({ xyzzyplugh: "off" }))[0]).toContain("the name of a rule: instructions-not-confirmed");
  });

  test("may turn off every rule that is not fixed, and set every one that a number decides", () => {
    for (const { id, fixed, sense, unit, limitsOf } of rules) {
      expect(faults(withLimits({ [id]: "off" })).length, id).toBe(fixed ? 1 : 0);
      const bare = limitsOf !== undefined || ["", "odds", "share", "calibres", "years"].includes(unit);
      const stop = bare ? 0.5 : `0.5 ${unit}`;
      const settable = !fixed && sense !== "none" && id !== "choice-below-least";
      expect(faults(withLimits({ [id]: { stop } })).length, `${id} ${stop}`).toBe(settable ? 0 : 1);
      if (settable) expect(made(withLimits({ [id]: { stop } })).limits).toEqual({ [id]: { stop: 0.5 } });
    }
  });
});

test("readLimit() reads quantities in the rule's unit, multiples and none", () => {
  const wind = ruleById("wind-limit")!;
  expect(readLimit(wind, "12 mph")).toEqual({ ok: true, value: expect.closeTo(5.36448, 12) });
  expect(readLimit(wind, "none")).toEqual({ ok: true, value: null });
  expect(readLimit(wind, 12)).toMatchObject({ ok: false, code: "unit-missing" });
  expect(readLimit(ruleById("margin-at-burnout")!, 1.5)).toEqual({ ok: true, value: 1.5 });
  expect(readLimit(ruleById("margin-at-burnout")!, Number.POSITIVE_INFINITY)).toMatchObject({ ok: false });
});
