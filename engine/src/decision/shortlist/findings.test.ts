import { describe, expect, test } from "vitest";
import { ruleById } from "../../rules/all-rules.js";
import type { RuleFacts } from "../../rules/facts.js";
import type { RuleLimits } from "../../rules/rule.js";
import { afterDraws, afterLandings, afterLaunch, beforeFlight, findingsOf, inOrder, refusalOrder } from "./findings.js";
import type { MotorLookCode } from "./judged-motor.js";

const limit = (id: string, which: keyof RuleLimits): number => {
  const found = ruleById(id)?.limits[which];
  if (found === undefined) throw new Error(`${id} has no such limit`);
  return found;
};
const refusals = (facts: RuleFacts, code: MotorLookCode) =>
  findingsOf(facts, [code]).refusals.map((each) => [each.code, each.value, each.limit]);
const both = (calibres: number) => ({ least: calibres, most: calibres });
const small = 1e-6;

describe("findingsOf()", () => {
  // the limits are the rules' own: a rule that moves moves the refusal with it
  const least: readonly (readonly [MotorLookCode, number, (value: number) => RuleFacts])[] = [
    ["thrust-to-weight", limit("thrust-to-weight", "stop"), (thrustToWeight) => ({ thrustToWeight })],
    ["guide-exit-speed", limit("guide-exit-speed", "stop"), (guideExitSpeed) => ({ guideExitSpeed })],
    [
      "guide-exit-against-wind",
      5 * limit("guide-exit-against-wind", "stop"),
      (guideExitSpeed) => ({ guideExitSpeed, windSpeed: 5 }),
    ],
    [
      "guide-length-in-wind",
      5 * limit("guide-length-in-wind", "stop"),
      (guideExitSpeed) => ({ guideExitSpeed, windSpeed: 5, highPower: true }),
    ],
    [
      "margin-at-guide-exit",
      limit("margin-at-guide-exit", "look"),
      (calibres) => ({ marginAtGuideExit: both(calibres) }),
    ],
    ["no-setting-holds", 0.99, (bestHolds) => ({ bestHolds, leastHolds: 0.99 })],
    ["below-least-clean", 0.8, (clean) => ({ clean, leastClean: 0.8 })],
    ["site-size", limit("site-size", "stop"), (siteSmallest) => ({ siteSmallest, highPower: true, totalImpulse: 400 })],
  ];
  test.each(least)("refuses %s just below its least and not at it", (code, at, facts) => {
    expect(refusals(facts(at), code)).toEqual([]);
    expect(refusals(facts(at + small), code)).toEqual([]);
    expect(refusals(facts(at - small), code)).toEqual([[code, at - small, expect.closeTo(at, 9)]]);
  });

  const most: readonly (readonly [MotorLookCode, number, (value: number) => RuleFacts])[] = [
    ["ceiling", 900, (height95) => ({ height95, ceiling: 900 })],
    ["draws-not-flown", 0, (drawsNotFlown) => ({ drawsNotFlown })],
    ["fires-before-electronics", limit("fires-before-electronics", "look"), (firesFirst) => ({ firesFirst })],
    [
      "lift-off-weight",
      (limit("lift-off-weight", "stop") * 300) / 9.80665,
      (liftOffMass) => ({ liftOffMass, certifiedAverageThrust: 300, highPower: true }),
    ],
  ];
  test.each(most)("refuses %s just above its most and not at it", (code, at, facts) => {
    expect(refusals(facts(at), code)).toEqual([]);
    expect(refusals(facts(at + small), code)).toEqual([[code, at + small, expect.closeTo(at, 9)]]);
  });

  test("refuses a balance point at the centre of pressure, and not one ahead of it", () => {
    const facts = (calibres: number) => ({
      marginAtGuideExit: both(2),
      marginAtBurnout: both(calibres),
      marginInFlight: both(2),
    });
    expect(refusals(facts(0), "cp-ahead-of-balance")).toEqual([["cp-ahead-of-balance", 0, 0]]);
    expect(refusals(facts(small), "cp-ahead-of-balance")).toEqual([]);
  });

  // levels by class: practice of the associations (check values, high-power section): 1 for H and I, 2 for J to L
  test.each([
    ["H", 0, 1],
    ["J", 1, 2],
  ])("refuses class %s to a flyer of level %i, and not to one of level %i", (motorClass, below, enough) => {
    const facts = (certification: number) => ({ motorClass, certification, highPower: true });
    expect(refusals(facts(below), "certification-level")).toEqual([["certification-level", below, enough]]);
    expect(refusals(facts(enough), "certification-level")).toEqual([]);
    expect(findingsOf({ motorClass, highPower: true }, ["certification-level"]).notChecked).toEqual([
      { code: "certification-level", missing: ["certification"] },
    ]);
  });

  test("asks of papers: certified passes, not certified is refused, not stated is not checked", () => {
    expect(findingsOf({ motorCertified: true }, ["motor-certified"])).toEqual({
      refusals: [],
      looks: [],
      notChecked: [],
    });
    expect(refusals({ motorCertified: false }, "motor-certified")).toHaveLength(1);
    expect(findingsOf({}, ["motor-certified"]).notChecked.map(({ code }) => code)).toEqual(["motor-certified"]);
  });

  test("asks whether something opens the rocket, and whether what has to be cut may be", () => {
    expect(refusals({ hasCharge: false, electronics: false }, "no-charge")).toHaveLength(1);
    expect(refusals({ hasCharge: false, electronics: true }, "no-charge")).toEqual([]);
    expect(refusals({ hasCharge: true }, "no-charge")).toEqual([]);
    const cuts = { cuts: true, instructionsConfirmed: true, toolNamed: "A", tool: "A" };
    expect(findingsOf(cuts, afterDraws).refusals).toEqual([]);
    expect(refusals({ ...cuts, instructionsConfirmed: false }, "instructions-not-confirmed")).toHaveLength(1);
    expect(refusals({ ...cuts, toolNamed: "B" }, "tool-not-named")).toHaveLength(1);
    expect(refusals({ ...cuts, cuts: false, instructionsConfirmed: false }, "instructions-not-confirmed")).toEqual([]);
  });

  test("only looks at what is allowed but seldom wise", () => {
    const at = limit("thrust-to-weight", "look");
    const codes = (facts: RuleFacts, code: MotorLookCode) => findingsOf(facts, [code]).looks.map((look) => look.code);
    expect(codes({ thrustToWeight: at - small }, "thrust-to-weight")).toEqual(["thrust-to-weight"]);
    expect(codes({ thrustToWeight: at }, "thrust-to-weight")).toEqual([]);
    const margins = (calibres: number, inFlight = 2) => ({
      marginAtGuideExit: both(2),
      marginAtBurnout: both(calibres),
      marginInFlight: both(inFlight),
    });
    expect(codes(margins(0.9), "margin-at-burnout")).toEqual(["margin-at-burnout"]);
    expect(codes(margins(2, 0.9), "margin-in-flight")).toEqual(["margin-in-flight"]);
    expect(codes(margins(3.1), "over-stable")).toEqual(["over-stable"]);
  });

  test("takes a club's limits in place of the rule's own", () => {
    const club = { name: "Larkmoor club", limits: { "thrust-to-weight": { stop: 6 } } };
    const facts = { thrustToWeight: 5.9 };
    expect(findingsOf(facts, beforeFlight).refusals).toEqual([]);
    expect(findingsOf(facts, beforeFlight, club).refusals).toMatchObject([{ code: "thrust-to-weight", limit: 6 }]);
  });
});

test("inOrder() knows every reason that can refuse, and puts what nothing cures first", () => {
  for (const code of [...beforeFlight, ...afterDraws, ...afterLandings]) expect(refusalOrder).toContain(code);
  const looksOnly = ["margin-at-burnout", "margin-in-flight", "over-stable"];
  for (const code of afterLaunch.filter((each) => !looksOnly.includes(each))) expect(refusalOrder).toContain(code);
  expect(new Set(refusalOrder).size).toBe(refusalOrder.length);
  const found = findingsOf({ thrustToWeight: 1, motorCertified: false }, beforeFlight).refusals;
  expect(inOrder([...found].reverse()).map(({ code }) => code)).toEqual(["motor-certified", "thrust-to-weight"]);
});
