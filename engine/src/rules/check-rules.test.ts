import fc from "fast-check";
import { expect, test } from "vitest";
import { passing, passingModel } from "../../reference/high-power-safety-code/facts.js";
import { ruleById, rules } from "./all-rules.js";
import { checkRules, leastMarginOf } from "./check-rules.js";
import type { ClubRules } from "./club.js";
import type { FactName, RuleFacts } from "./facts.js";
import type { RuleVerdict } from "./rule.js";

const rank: Readonly<Record<RuleVerdict, number>> = { stop: 0, look: 1, "not-checked": 2, pass: 3 };

test.each(Object.entries({ passing, passingModel }))(
  "checkRules() finds nothing against facts that pass (%s)",
  (_, facts) => {
    for (const set of ["association", "none"] as const) {
      const found = checkRules(facts, set);
      expect(found.length).toBeGreaterThan(20);
      expect(found.filter(({ verdict }) => verdict !== "pass").map(({ id }) => id)).toEqual([]);
    }
  },
);

test("checkRules() lists stop, look, not checked, pass, each in the order of the rules", () => {
  const { cloudCover: _, ...rest } = passing;
  const found = checkRules({ ...rest, windSpeed: 10, landingEnergy: 150, guideExitSpeed: 35 }, "association");
  const ranks = found.map(({ verdict }) => rank[verdict]);
  expect(ranks).toEqual([...ranks].sort((a, b) => a - b));
  expect(found.slice(0, 4).map(({ id, verdict }) => [id, verdict])).toEqual([
    ["wind-limit", "stop"],
    ["guide-exit-against-wind", "look"],
    ["landing-energy", "look"],
    ["cloud-cover", "not-checked"],
  ]);
  expect(found[3]?.missing).toEqual(["cloudCover"]);
  const passed = found.filter(({ verdict }) => verdict === "pass").map(({ id }) => id);
  expect(passed).toEqual(rules.map(({ id }) => id).filter((id) => passed.includes(id)));
});

test("checkRules() without a rule set keeps physics, practice and own defaults, and drops codes and law", () => {
  const ids = checkRules({ ...passing, windSpeed: 10, tilt: 1 }, "none").map(({ id }) => id);
  for (const id of ["thrust-to-weight", "guide-exit-speed", "cp-ahead-of-balance", "ceiling", "no-setting-holds"])
    expect(ids).toContain(id);
  for (const id of ["wind-limit", "tilt-limit", "personnel-distance", "aviation-class", "certification-level"])
    expect(ids).not.toContain(id);
});

test("checkRules() gives each finding its source, edition and status", () => {
  const wind = checkRules(passing, "association").find(({ id }) => id === "wind-limit");
  expect(wind).toEqual({
    id: "wind-limit",
    title: "wind-limit",
    sense: "most",
    verdict: "pass",
    value: 4,
    limit: 20 * 0.44704,
    unit: "m/s",
    details: [],
    missing: [],
    source: "High Power Rocket Safety Code, National Association of Rocketry",
    edition: "August 2012",
    status: "verified",
  });
});

test("checkRules() of nothing at all passes nothing and names what is missing", () => {
  const found = checkRules({}, "association");
  expect(found.length).toBeGreaterThan(50);
  for (const { id, verdict, missing } of found) {
    expect(verdict, id).toBe("not-checked");
    expect(missing.length, id).toBeGreaterThan(0);
  }
});

const names = Object.keys(passing) as FactName[];

test("checkRules() passes no rule while a fact that it needs is not known", () => {
  fc.assert(
    fc.property(fc.subarray(names), fc.constantFrom(passing, passingModel), fc.boolean(), (gone, base, asNaN) => {
      const facts: RuleFacts = Object.fromEntries(
        Object.entries(base).flatMap(([name, fact]) => {
          if (!gone.includes(name as FactName)) return [[name, fact]];
          return asNaN && typeof fact === "number" ? [[name, Number.NaN]] : [];
        }),
      );
      for (const { id, verdict } of checkRules(facts, "association")) {
        if (verdict !== "pass") continue;
        expect(
          ruleById(id)?.needs.filter((name) => gone.includes(name)),
          id,
        ).toEqual([]);
      }
    }),
  );
});

/** Any value that a fact may take, by what it is in the facts that pass. */
function anyLike(fact: RuleFacts[FactName]): fc.Arbitrary<unknown> {
  if (typeof fact === "boolean") return fc.boolean();
  if (typeof fact === "number")
    return fc.oneof(fc.double({ min: 0, max: 3, noNaN: true }), fc.double({ min: 0, max: 1e5, noNaN: true }));
  return fc.constant(fact);
}

test("rules that pass without a fact pass whatever it is", () => {
  const cases = fc.tuple(fc.constantFrom(...rules), fc.constantFrom(...names), fc.constantFrom(passing, passingModel));
  fc.assert(
    fc.property(
      cases.chain(([rule, name, base]) => anyLike(base[name]).map((value) => ({ rule, name, base, value }))),
      ({ rule, name, base, value }) => {
        const { [name]: _, ...without } = base;
        if (rule.judge(without)?.verdict !== "pass") return;
        expect(rule.judge({ ...base, [name]: value })?.verdict ?? "pass", `${rule.id}, ${name} ${value}`).toBe("pass");
      },
    ),
    { numRuns: 5000 },
  );
});

test("leastMarginOf() is the rule's own, or the club's where it says another or none", () => {
  const club = (change: ClubRules["limits"][string]) => ({ name: "Demo club", limits: { "margin-in-flight": change } });
  expect([leastMarginOf("association"), leastMarginOf("none")]).toEqual([1, 1]);
  expect(leastMarginOf(club({ look: 1.5 }))).toBe(1.5);
  expect(leastMarginOf(club("off"))).toBeNull();
  expect(leastMarginOf({ name: "Demo club", limits: {} })).toBe(1);
});

/** Rules that hold one number against limits, and the fact that is it. */
const numbers: readonly (readonly [id: string, fact: (value: number) => RuleFacts, better: "more" | "less"])[] = [
  ["thrust-to-weight", (thrustToWeight) => ({ thrustToWeight }), "more"],
  ["lift-off-weight", (liftOffMass) => ({ liftOffMass }), "less"],
  ["model-lift-off-weight", (liftOffMass) => ({ ...passingModel, liftOffMass }), "less"],
  ["guide-exit-speed", (guideExitSpeed) => ({ guideExitSpeed }), "more"],
  ["guide-exit-against-wind", (guideExitSpeed) => ({ guideExitSpeed }), "more"],
  ["guide-length-in-wind", (guideExitSpeed) => ({ guideExitSpeed }), "more"],
  ["guide-exit-against-wind", (windSpeed) => ({ windSpeed }), "less"],
  ["cp-ahead-of-balance", (m) => ({ marginAtBurnout: { least: m, most: m } }), "more"],
  ["margin-at-guide-exit", (m) => ({ marginAtGuideExit: { least: m, most: m } }), "more"],
  ["cp-ahead-of-balance", (m) => ({ marginInFlight: { least: m, most: m } }), "more"],
  ["margin-in-flight", (m) => ({ marginInFlight: { least: m, most: m } }), "more"],
  ["margin-at-burnout", (m) => ({ marginAtBurnout: { least: m, most: m } }), "more"],
  ["over-stable", (m) => ({ marginAtBurnout: { least: m, most: m } }), "less"],
  ["wind-limit", (windSpeed) => ({ windSpeed }), "less"],
  ["model-wind-limit", (windSpeed) => ({ ...passingModel, windSpeed }), "less"],
  ["tilt-limit", (tilt) => ({ tilt }), "less"],
  ["model-tilt-limit", (tilt) => ({ ...passingModel, tilt }), "less"],
  ["ceiling", (height95) => ({ height95 }), "less"],
  ["draws-not-flown", (drawsNotFlown) => ({ drawsNotFlown }), "less"],
  ["certification-level", (certification) => ({ certification }), "more"],
  ["flyer-age", (age) => ({ ...passingModel, motorClass: "G", totalImpulse: 100, age }), "more"],
  ["total-impulse", (totalImpulse) => ({ totalImpulse }), "less"],
  ["model-total-impulse", (totalImpulse) => ({ ...passingModel, totalImpulse }), "less"],
  ["charge-in-well", (charge) => ({ charge }), "less"],
  ["charge-parts-joint", (chargeFactor) => ({ chargeFactor }), "more"],
  ["landing-inside", (outsideOpened) => ({ outsideOpened }), "less"],
  ["landing-inside-unopened", (outsideUnopened) => ({ outsideUnopened }), "less"],
  ["keep-off-zones", (keepOffOpened) => ({ keepOffOpened }), "less"],
  ["keep-off-zones-unopened", (keepOffUnopened) => ({ keepOffUnopened }), "less"],
  ["landing-energy", (landingEnergy) => ({ landingEnergy }), "less"],
  ["landing-speed", (landingSpeed) => ({ landingSpeed }), "less"],
  ["opening-speed", (openingSpeed90) => ({ openingSpeed90 }), "less"],
  ["weather-age", (weatherAge) => ({ weatherAge }), "less"],
  ["personnel-distance", (peopleDistance) => ({ peopleDistance }), "more"],
  ["model-personnel-distance", (peopleDistance) => ({ ...passingModel, peopleDistance }), "more"],
  ["site-edge-distance", (siteEdgeDistance) => ({ siteEdgeDistance }), "more"],
  ["cleared-diameter", (clearedDiameter) => ({ clearedDiameter }), "more"],
  ["site-size", (siteSmallest) => ({ siteSmallest }), "more"],
  ["site-size-for-height", (siteSmallest) => ({ siteSmallest }), "more"],
  ["site-size-for-height", (highestAllowed) => ({ highestAllowed }), "less"],
  [
    "site-size-small-rocket",
    (siteSmallest) => ({ totalImpulse: 150, liftOffMass: 1, siteSmallest, height95: 1 }),
    "more",
  ],
  ["model-site-size", (siteSmallest) => ({ ...passingModel, siteSmallest }), "more"],
  ["building-distance", (buildingDistance) => ({ buildingDistance }), "more"],
  ["road-distance", (roadDistance) => ({ roadDistance }), "more"],
  ["cloud-cover", (cloudCover) => ({ cloudCover }), "less"],
  ["visibility", (visibility) => ({ visibility }), "more"],
  ["cloud-entry", (cloudBase) => ({ cloudBase }), "more"],
  ["class-1-cloud-entry", (height95) => ({ ...passingModel, height95 }), "less"],
  ["airport-distance", (airportDistance) => ({ airportDistance }), "more"],
  ["uninvolved-distance", (uninvolvedDistance) => ({ uninvolvedDistance }), "more"],
  ["uninvolved-distance-for-height", (uninvolvedDistance) => ({ uninvolvedDistance }), "more"],
  ["removal-within-limit", (removed) => ({ removed }), "less"],
  ["no-setting-holds", (bestHolds) => ({ bestHolds }), "more"],
  ["below-least-clean", (clean) => ({ clean }), "more"],
  ["fires-before-electronics", (firesFirst) => ({ firesFirst }), "less"],
  ["choice-below-least", (clean) => ({ choice: { delay: 9, odds: { clean, holds: clean } } }), "more"],
];

test("rules that hold one number against limits never get milder as it gets worse", () => {
  const withNumbers = rules.filter(({ sense, id }) => sense !== "none" && id !== "descent-time").map(({ id }) => id);
  expect(withNumbers.filter((id) => !numbers.some((row) => row[0] === id))).toEqual([]);
  const value = fc.oneof(
    ...[1, 10, 50, 1000, 1e5].map((max) => fc.double({ min: 0, max, noNaN: true })),
    fc.double({ min: -3, max: 5, noNaN: true }),
  );
  fc.assert(
    fc.property(fc.constantFrom(...numbers), value, value, ([id, factsOf, better], a, b) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)].map(
        (v) => ruleById(id)!.judge({ ...passing, ...factsOf(v) })?.verdict ?? "pass",
      ) as [RuleVerdict, RuleVerdict];
      if (better === "more") expect(rank[low], id).toBeLessThanOrEqual(rank[high]);
      else expect(rank[high], id).toBeLessThanOrEqual(rank[low]);
    }),
    { numRuns: 5000 },
  );
});
