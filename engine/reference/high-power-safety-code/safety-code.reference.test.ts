import { expect, test } from "vitest";
import { ruleById } from "../../src/rules/all-rules.js";
import { checkRules } from "../../src/rules/check-rules.js";
import { distanceRow, modelSiteDimension, safetyCodeDistances } from "../../src/rules/distances.js";
import type { RuleFacts } from "../../src/rules/facts.js";
import { passing, passingModel } from "./facts.js";

const foot = 0.3048;

function judged(id: string, facts: RuleFacts) {
  const rule = ruleById(id);
  if (rule === undefined) throw new Error(`no rule ${id}`);
  return rule.judge(facts);
}

/** Above [N s], up to [N s], class, then in feet: cleared diameter, people, people where the rocket is complex. */
const distances = [
  [0, 320, "H", 50, 100, 200],
  [320.01, 640, "I", 50, 100, 200],
  [640.01, 1280, "J", 50, 100, 200],
  [1280.01, 2560, "K", 75, 200, 300],
  [2560.01, 5120, "L", 100, 300, 500],
  [5120.01, 10_240, "M", 125, 500, 1000],
  [10_240.01, 20_480, "N", 125, 1000, 1500],
  [20_480.01, 40_960, "O", 125, 1500, 2000],
] as const;

test("safetyCodeDistances are the code's table; single and complex verified, cleared diameter from memory but for H", () => {
  expect(distances).toHaveLength(8);
  expect(safetyCodeDistances).toHaveLength(8);
  for (const [above, upTo, name, cleared, single, complex] of distances) {
    for (const totalImpulse of [above, upTo]) {
      const row = distanceRow(totalImpulse);
      expect(row?.upTo, name).toBe(upTo);
      expect([row?.cleared, row?.single, row?.complex], name).toEqual([cleared * foot, single * foot, complex * foot]);
    }
  }
  expect(distanceRow(40_960.01)).toBeNull();
});

test("rules of distance stop below every row of the table and pass at it", () => {
  for (const [, totalImpulse, name, cleared, single, complex] of distances) {
    const at = (id: string, fact: keyof RuleFacts, feet: number, change: RuleFacts) =>
      [feet, feet - 0.01].map((f) => judged(id, { ...passing, totalImpulse, ...change, [fact]: f * foot })?.verdict);
    const both = ["pass", "stop"];
    expect(at("personnel-distance", "peopleDistance", single, {}), name).toEqual(both);
    expect(at("personnel-distance", "peopleDistance", complex, { complex: true }), name).toEqual(both);
    expect(at("site-edge-distance", "siteEdgeDistance", single, {}), name).toEqual(both);
    expect(at("site-edge-distance", "siteEdgeDistance", complex, { complex: true }), name).toEqual(both);
    expect(at("cleared-diameter", "clearedDiameter", cleared, {}), name).toEqual(both);
    expect(at("cleared-diameter", "clearedDiameter", 1.5 * cleared, { metalSponge: true }), name).toEqual(both);
  }
  // H: 75 ft with metal sponge (verified)
  const facts = { ...passing, totalImpulse: 320, metalSponge: true };
  expect(judged("cleared-diameter", facts)?.limit).toBeCloseTo(75 * foot, 12);
});

/** Rule, limit as printed, in SI, and status. */
const printed = [
  ["wind-limit", 20 * 0.44704, "verified"],
  ["model-wind-limit", 20 * 0.44704, "memory"],
  ["tilt-limit", (20 * Math.PI) / 180, "verified"],
  ["model-tilt-limit", (30 * Math.PI) / 180, "verified"],
  ["total-impulse", 40_960, "verified"],
  ["model-total-impulse", 320, "verified"],
  ["site-size", 1500 * foot, "verified"],
  ["site-size-small-rocket", 1000 * foot, "memory"],
  ["building-distance", 1500 * foot, "verified"],
  ["road-distance", 1500 * foot, "memory"],
  ["lift-off-weight", 1 / 3, "memory"],
  ["site-size-for-height", 1 / 2, "verified"],
] as const;

test("rules carry the codes' numbers and their status", () => {
  expect(printed).toHaveLength(12);
  for (const [id, stop, status] of printed) {
    const rule = ruleById(id);
    expect(rule?.limits.stop, id).toBeCloseTo(stop, 12);
    expect(rule?.limits.look, id).toBeUndefined();
    expect(rule, id).toMatchObject({ status, edition: "August 2012", sets: ["association"] });
  }
  expect(20 * 0.44704).toBeCloseTo(8.9408, 12);
  expect(1500 * foot).toBeCloseTo(457.2, 12);
});

test("lift-off-weight: 289 N carry at most 9.8232 kg; five to one would be 5.8939 kg", () => {
  const five = { name: "Demo club", limits: { "lift-off-weight": { stop: 1 / 5 } } };
  const [three] = [judged("lift-off-weight", { ...passing, certifiedAverageThrust: 289 })];
  const tighter = checkRules({ ...passing, certifiedAverageThrust: 289 }, five).find(
    ({ id }) => id === "lift-off-weight",
  );
  // 1e-4: the rows print five digits
  expect(Math.abs(three!.limit! / 9.8232 - 1)).toBeLessThan(1e-4);
  expect(Math.abs(tighter!.limit! / 5.8939 - 1)).toBeLessThan(1e-4);
});

test("site-size-for-height: a ceiling of 3000 ft asks for 1500 ft, one of 5000 ft for 2500 ft", () => {
  const rows = [
    [3000, 1500],
    [5000, 2500],
  ] as const;
  expect(rows).toHaveLength(2);
  for (const [ceiling, site] of rows) {
    const at = (feet: number) => ({ ...passing, highestAllowed: ceiling * foot, siteSmallest: feet * foot });
    const both = (facts: RuleFacts) => ["site-size", "site-size-for-height"].map((id) => judged(id, facts)?.verdict);
    expect(both(at(site))).toEqual(["pass", "pass"]);
    expect(both(at(site - 1))).toContain("stop");
  }
});

test("guide-length-in-wind is asked above 5 mph", () => {
  const slow = { ...passing, guideExitSpeed: 1 };
  expect(judged("guide-length-in-wind", { ...slow, windSpeed: 5 * 0.44704 })).toBeNull();
  expect(judged("guide-length-in-wind", { ...slow, windSpeed: 2.236 })?.verdict).toBe("stop");
  expect(ruleById("guide-length-in-wind")).toMatchObject({ status: "memory", edition: "August 2012" });
});

test("model-personnel-distance is 15 ft for D or smaller and 30 ft above", () => {
  for (const [totalImpulse, feet] of [
    [1.25, 15],
    [20, 15],
    [20.01, 30],
    [160, 30],
  ] as const)
    expect(judged("model-personnel-distance", { ...passingModel, totalImpulse })?.limit).toBeCloseTo(feet * foot, 12);
});

test("modelSiteDimension() is the code's table of sites", () => {
  const rows = [
    [1.25, 50],
    [2.5, 100],
    [5, 200],
    [10, 400],
    [20, 500],
    [40, 1000],
    [80, 1000],
    [160, 1000],
  ] as const;
  expect(rows).toHaveLength(8);
  for (const [totalImpulse, feet] of rows) expect(modelSiteDimension(totalImpulse)).toBe(feet * foot);
  expect(modelSiteDimension(160.01)).toBeNull();
});

/** Tables that differ, as clubs' own: up to [N s], single and complex [ft]. */
const variants = {
  // CCR1036 Table 18A; clusters take the next higher row, which the last has not
  "State table 18A": [
    [320, 30, 150],
    [1280, 150, 200],
    [2560, 200, 300],
    [5120, 300, 500],
    [10_240, 500, 1000],
    [20_480, 1000, null],
  ],
  // the other national association's research table of May 2016
  "Research table": [
    [1280, 200, 250],
    [2560, 250, 350],
    [5120, 300, 500],
    [10_240, 500, 1000],
    [20_480, 1000, 1500],
    [40_960, 1500, 2000],
  ],
} as const;

test.each(Object.entries(variants))("checkRules() takes %s as a club's own", (name, rows) => {
  expect(rows).toHaveLength(6);
  const table = rows.map(([upTo, single, complex]) => ({
    upTo,
    single: single * foot,
    complex: (complex ?? single) * foot,
  }));
  for (const [totalImpulse, single, complex] of rows) {
    for (const [isComplex, feet] of [
      [false, single],
      [true, complex],
    ] as const) {
      if (feet === null) continue;
      const facts = { ...passing, totalImpulse, complex: isComplex };
      const found = checkRules(facts, { name, limits: {}, distances: table }).find(
        ({ id }) => id === "personnel-distance",
      );
      expect(found?.limit).toBeCloseTo(feet * foot, 9);
      expect(found?.source).toBe(name);
    }
  }
});
