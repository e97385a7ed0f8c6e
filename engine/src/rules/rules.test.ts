import { expect, test } from "vitest";
import { passing, passingModel } from "../../reference/high-power-safety-code/facts.js";
import { ruleById, rules } from "./all-rules.js";
import type { RuleFacts } from "./facts.js";
import type { Finding, RuleVerdict } from "./rule.js";
import { foot } from "./units.js";

const degree = Math.PI / 180;

function judged(id: string, facts: RuleFacts): Finding | null {
  const rule = ruleById(id);
  if (rule === undefined) throw new Error(`no rule ${id}`);
  return rule.judge(facts);
}

type Row = readonly [id: string, change: RuleFacts, verdict: RuleVerdict | null, limit?: number];

/** One step beside a limit, relative: far above the rounding that is let through. */
const step = 1e-6;

/** Rows of a rule with one number: at the limit, just within, just past. */
function aroundMost(
  id: string,
  limit: number,
  past: RuleVerdict,
  within: RuleVerdict,
  at: (value: number) => RuleFacts,
): Row[] {
  const by = limit === 0 ? 1 : limit * step;
  return [
    [id, at(limit - (limit === 0 ? 0 : by)), within],
    [id, at(limit), within],
    [id, at(limit + by), past, limit],
  ];
}

function aroundLeast(
  id: string,
  limit: number,
  past: RuleVerdict,
  within: RuleVerdict,
  at: (value: number) => RuleFacts,
): Row[] {
  return [
    [id, at(limit * (1 + step)), within],
    [id, at(limit), within],
    [id, at(limit * (1 - step)), past, limit],
  ];
}

const margin = (least: number, most = least) => ({ least, most });
const model = (change: RuleFacts): RuleFacts => ({ ...passingModel, ...change });
const highPower = (change: RuleFacts): RuleFacts => ({ ...passing, ...change });
const small: RuleFacts = { totalImpulse: 150, liftOffMass: 1.4, height95: 500, motorClass: "G" };

const aviation: readonly Row[] = [
  ["aviation-class", passing, "pass"],
  ["aviation-class", passingModel, "pass"],
  ["aviation-class", highPower({ totalImpulse: 40_960 }), "pass"],
  ["aviation-class", highPower({ totalImpulse: 40_961 }), "look"],
  ["aviation-class", highPower({ totalImpulse: 889_600 }), "look"],
  ["aviation-class", highPower({ totalImpulse: 889_601 }), "stop"],
  ["aviation-class", highPower({ height95: 150e3 }), "pass"],
  ["aviation-class", highPower({ height95: 150_001 }), "stop"],
  ...aroundMost("cloud-cover", 0.5, "stop", "pass", (cloudCover) => highPower({ cloudCover })),
  ["cloud-cover", model({ cloudCover: 1 }), null],
  ...aroundLeast("visibility", 8046.72, "stop", "pass", (visibility) => highPower({ visibility })),
  ...aroundMost("cloud-entry", 1500, "stop", "pass", (height95) => highPower({ height95 })),
  ["cloud-entry", highPower({ cloudBase: null }), null],
  ["cloud-entry", model({}), null],
  ...aroundMost("class-1-cloud-entry", 1500, "stop", "pass", (height95) => model({ height95 })),
  ["class-1-cloud-entry", passing, null],
  ["daylight", passing, "pass"],
  ["daylight", highPower({ daylight: false }), "stop"],
  ["daylight", highPower({ daylight: false, authorised: true }), "look"],
  ["daylight", model({ daylight: false }), null],
  ...aroundLeast("airport-distance", 9260, "stop", "pass", (airportDistance) => highPower({ airportDistance })),
  ["airport-distance", highPower({ airportDistance: 9000, authorised: true }), "look"],
  ["airport-distance", highPower({ airportDistance: null }), null],
  ["controlled-airspace", passing, "pass"],
  ["controlled-airspace", highPower({ controlledAirspace: true }), "stop"],
  ["controlled-airspace", highPower({ controlledAirspace: true, authorised: true }), "look"],
  ...aroundLeast("uninvolved-distance", 457, "stop", "pass", (uninvolvedDistance) => highPower({ uninvolvedDistance })),
  ["uninvolved-distance", highPower({ uninvolvedDistance: null }), null],
  ...aroundLeast("uninvolved-distance-for-height", 500, "stop", "pass", (uninvolvedDistance) =>
    highPower({ uninvolvedDistance, height95: 2000 }),
  ),
  ["adult-in-charge", passing, "pass"],
  ["adult-in-charge", highPower({ adultInCharge: false }), "stop"],
  ["fire-means", passing, "pass"],
  ["fire-means", highPower({ fireMeans: false }), "stop"],
  ["aviation-notice", highPower({ noticeBefore: 86_400 }), "pass"],
  ["aviation-notice", highPower({ noticeBefore: 86_399 }), "stop", 86_400],
  ["aviation-notice", highPower({ noticeBefore: 259_200 }), "pass"],
  ["aviation-notice", highPower({ noticeBefore: 259_201 }), "stop", 259_200],
  ["aviation-notice", highPower({ noticeBefore: null }), "stop"],
  ["aviation-notice", model({ noticeBefore: null }), null],
];

const delay: readonly Row[] = [
  ["instructions-not-confirmed", passing, "pass"],
  ["instructions-not-confirmed", highPower({ instructionsConfirmed: false }), "stop"],
  ["instructions-not-confirmed", highPower({ toolNamed: null }), "stop"],
  ["instructions-not-confirmed", highPower({ cuts: false, instructionsConfirmed: false }), null],
  ["tool-not-named", passing, "pass"],
  ["tool-not-named", highPower({ tool: "another" }), "stop"],
  ["tool-not-named", highPower({ tool: null }), null],
  ["tool-not-named", highPower({ instructionsConfirmed: false }), null],
  ...aroundMost("removal-within-limit", 8, "stop", "pass", (removed) => highPower({ removed })),
  ["removal-within-limit", highPower({ mostRemoved: null }), null],
  ["removal-within-limit", highPower({ cuts: false, removed: 20 }), null],
  ["delay-reachable", highPower({ wantedDelay: 6 }), "pass"],
  ["delay-reachable", highPower({ wantedDelay: 5.99 }), "look", 6],
  ["delay-reachable", highPower({ wantedDelay: 14 }), "pass"],
  ["delay-reachable", highPower({ wantedDelay: 14.01 }), "look", 14],
  ["delay-reachable", highPower({ reachableDelays: null }), null],
  ["no-charge", passing, null],
  ["no-charge", highPower({ hasCharge: false }), "stop"],
  ["no-charge", highPower({ hasCharge: false, electronics: true }), "pass"],
  ...aroundLeast("no-setting-holds", 0.99, "stop", "pass", (bestHolds) => highPower({ bestHolds })),
  ...aroundLeast("below-least-clean", 0.8, "look", "pass", (clean) => highPower({ clean })),
  ["below-least-clean", highPower({ clean: null }), null],
  ...aroundMost("fires-before-electronics", 0.05, "look", "pass", (firesFirst) => highPower({ firesFirst })),
  ["fires-before-electronics", passing, null],
  ["opening-strength-unrated", passing, "pass"],
  ["opening-strength-unrated", highPower({ strengthRated: false }), "look", 40],
  ["choice-not-achievable", passing, null],
  ["choice-not-achievable", highPower({ choice: null }), null],
  ["choice-not-achievable", highPower({ choice: { delay: 3, odds: null } }), "stop"],
  ["choice-below-least", highPower({ choice: null }), null],
  ["choice-below-least", highPower({ choice: { delay: 3, odds: null } }), null],
  ...aroundLeast("choice-below-least", 0.8, "look", "pass", (clean) =>
    highPower({ choice: { delay: 10, odds: { clean, holds: 0.99 } } }),
  ),
  ...aroundLeast("choice-below-least", 0.99, "stop", "pass", (holds) =>
    highPower({ choice: { delay: 10, odds: { clean: 0.8, holds } } }),
  ),
  ["element-over-cut", passing, null],
  ["element-over-cut", highPower({ overCut: { delay: 7, doNotFly: false } }), "look"],
  ["element-over-cut", highPower({ overCut: { delay: 7, doNotFly: true } }), "stop"],
];

const flight: readonly Row[] = [
  ...aroundLeast("thrust-to-weight", 5, "look", "pass", (thrustToWeight) => highPower({ thrustToWeight })),
  ...aroundLeast("thrust-to-weight", 3, "stop", "look", (thrustToWeight) => highPower({ thrustToWeight })),
  ...aroundMost("lift-off-weight", 289 / 9.80665 / 3, "stop", "pass", (liftOffMass) => highPower({ liftOffMass })),
  ["lift-off-weight", passingModel, null],
  ...aroundMost("model-lift-off-weight", 0.5, "stop", "pass", (liftOffMass) => model({ liftOffMass })),
  ["model-lift-off-weight", model({ makerMostLiftOffMass: null }), null],
  ...aroundLeast("guide-exit-speed", 15, "look", "pass", (guideExitSpeed) => highPower({ guideExitSpeed })),
  ...aroundLeast("guide-exit-speed", 10, "stop", "look", (guideExitSpeed) => highPower({ guideExitSpeed })),
  ["guide-exit-speed", highPower({ guideExitSpeed: 0 }), "stop"],
  ...aroundLeast("guide-exit-against-wind", 20, "look", "pass", (guideExitSpeed) =>
    highPower({ guideExitSpeed, windSpeed: 5 }),
  ),
  ...aroundLeast("guide-exit-against-wind", 15, "stop", "look", (guideExitSpeed) =>
    highPower({ guideExitSpeed, windSpeed: 5 }),
  ),
  ...aroundLeast("guide-length-in-wind", 15, "stop", "pass", (guideExitSpeed) =>
    highPower({ guideExitSpeed, windSpeed: 5 }),
  ),
  ["guide-length-in-wind", highPower({ guideExitSpeed: 1, windSpeed: 2.2352 }), null],
  ["guide-length-in-wind", highPower({ guideExitSpeed: 1, windSpeed: 2.2353 }), "stop"],
  ["guide-length-in-wind", model({ guideExitSpeed: 1 }), null],
  ["cp-ahead-of-balance", highPower({ marginAtGuideExit: margin(step, 2) }), "pass"],
  ["cp-ahead-of-balance", highPower({ marginAtGuideExit: margin(0, 2) }), "stop", 0],
  ["cp-ahead-of-balance", highPower({ marginAtBurnout: margin(-0.1, 2) }), "stop", 0],
  ["cp-ahead-of-balance", highPower({ marginInFlight: margin(-0.1, 2) }), "stop", 0],
  ...aroundLeast("margin-at-guide-exit", 1, "look", "pass", (m) => highPower({ marginAtGuideExit: margin(m, 2) })),
  ...aroundLeast("margin-at-burnout", 1, "look", "pass", (m) => highPower({ marginAtBurnout: margin(m, 2) })),
  ...aroundLeast("margin-in-flight", 1, "look", "pass", (m) => highPower({ marginInFlight: margin(m, 2) })),
  // it is told where the rocket leaves the guide, or all is well
  ["margin-in-flight", highPower({ marginAtGuideExit: margin(0.84, 2), marginInFlight: margin(0.82, 2) }), null],
  ["margin-in-flight", highPower({ marginInFlight: margin(1.48, 2) }), null],
  ["margin-in-flight", highPower({ marginAtGuideExit: margin(0.84, 2), marginInFlight: margin(0.5, 2) }), "look", 1],
  ["margin-in-flight", highPower({ marginAtGuideExit: margin(1.01, 2), marginInFlight: margin(0.99, 2) }), "look", 1],
  ...aroundMost("over-stable", 3, "look", "pass", (m) => highPower({ marginAtGuideExit: margin(1, m) })),
  ...aroundMost("over-stable", 3, "look", "pass", (m) => highPower({ marginInFlight: margin(1, m) })),
  ...aroundMost("over-stable", 3, "look", "pass", (m) => highPower({ marginAtBurnout: margin(1, m) })),
  ...aroundMost("wind-limit", 8.9408, "stop", "pass", (windSpeed) => highPower({ windSpeed })),
  ["wind-limit", passingModel, null],
  ...aroundMost("model-wind-limit", 8.9408, "stop", "pass", (windSpeed) => model({ windSpeed })),
  ["model-wind-limit", passing, null],
  ...aroundMost("tilt-limit", 20 * degree, "stop", "pass", (tilt) => highPower({ tilt })),
  // 20 deg as another order of the same product gives it: one step of rounding is no lean
  ["tilt-limit", highPower({ tilt: (20 * Math.PI) / 180 + 6e-17 }), "pass"],
  ["tilt-limit", model({ tilt: 25 * degree }), null],
  ...aroundMost("model-tilt-limit", 30 * degree, "stop", "pass", (tilt) => model({ tilt })),
  ["tilt-sector", highPower({ toward: 3.5 }), "pass"],
  ["tilt-sector", highPower({ toward: 4.8 }), "pass"],
  ["tilt-sector", highPower({ toward: 3.5 - step }), "stop"],
  ["tilt-sector", highPower({ toward: 4.8 + step }), "stop"],
  ["tilt-sector", highPower({ toward: 0, tiltSector: { from: 6, to: 0.5 } }), "pass"],
  ["tilt-sector", highPower({ toward: 4.8 - 2 * Math.PI }), "pass"],
  ["tilt-sector", highPower({ toward: 0, tilt: 0 }), null],
  ["tilt-sector", highPower({ tiltSector: null }), null],
  ...aroundMost("ceiling", 900, "stop", "pass", (height95) => highPower({ height95 })),
  ["ceiling", highPower({ ceiling: null }), null],
  ["models-validity", passing, "pass"],
  ["models-validity", highPower({ validity: [{ code: "mach-through-bridge", value: 1.1, limit: 0.9 }] }), "look", 0.9],
  ...aroundMost("draws-not-flown", 0, "stop", "pass", (drawsNotFlown) => highPower({ drawsNotFlown })),
];

const motor: readonly Row[] = [
  ["certification-level", passing, "pass", 1],
  ["certification-level", highPower({ certification: 0 }), "stop", 1],
  ["certification-level", highPower({ motorClass: "J" }), "stop", 2],
  ["certification-level", highPower({ motorClass: "L", certification: 2 }), "pass", 2],
  ["certification-level", highPower({ motorClass: "M", certification: 2 }), "stop", 3],
  ["certification-level", highPower({ motorClass: "G", certification: 0 }), "stop", 1],
  ["certification-level", highPower({ motorClass: "P", certification: 3 }), "stop"],
  ["certification-level", model({ certification: 0 }), null],
  ["flyer-age", model({ motorClass: "G", totalImpulse: 81, age: 18 }), "pass", 18],
  ["flyer-age", model({ motorClass: "G", totalImpulse: 81, age: 17 }), "stop", 18],
  ["flyer-age", model({ motorClass: "G", totalImpulse: 80, age: 17 }), null],
  ["flyer-age", model({ age: 10 }), null],
  ["motor-certified", passing, "pass"],
  ["motor-certified", highPower({ motorCertified: false }), "stop"],
  ...aroundMost("total-impulse", 40_960, "stop", "pass", (totalImpulse) => highPower({ totalImpulse })),
  ["total-impulse", passingModel, null],
  ...aroundMost("model-total-impulse", 320, "stop", "pass", (totalImpulse) => model({ totalImpulse })),
  ["retention", passing, "pass"],
  ["retention", highPower({ retention: "friction" }), "look"],
  ["retention", highPower({ retention: "none" }), "stop"],
  ...aroundMost("charge-in-well", 0.0014, "stop", "pass", (charge) => highPower({ charge })),
  ["charge-in-well", highPower({ charge: null }), null],
  ...aroundLeast("charge-parts-joint", 1, "stop", "look", (chargeFactor) => highPower({ chargeFactor })),
  ...aroundLeast("charge-parts-joint", 1.5, "look", "pass", (chargeFactor) => highPower({ chargeFactor })),
  ["charge-parts-joint", highPower({ chargeFactor: null }), null],
];

const landing: readonly Row[] = [
  ...aroundMost("landing-inside", 0.05, "look", "pass", (outsideOpened) => highPower({ outsideOpened })),
  ...aroundMost("landing-inside", 0.5, "stop", "look", (outsideOpened) => highPower({ outsideOpened })),
  ["landing-inside", highPower({ outsideOpened: null }), null],
  ...aroundMost("landing-inside-unopened", 0.05, "look", "pass", (outsideUnopened) => highPower({ outsideUnopened })),
  ...aroundMost("keep-off-zones", 0.01, "look", "pass", (keepOffOpened) => highPower({ keepOffOpened })),
  ...aroundMost("keep-off-zones", 0.05, "stop", "look", (keepOffOpened) => highPower({ keepOffOpened })),
  ...aroundMost("keep-off-zones-unopened", 0.01, "look", "pass", (keepOffUnopened) => highPower({ keepOffUnopened })),
  ...aroundMost("keep-off-zones-unopened", 0.05, "stop", "look", (keepOffUnopened) => highPower({ keepOffUnopened })),
  ["keep-off-zones-unopened", highPower({ keepOffUnopened: null }), null],
  ["landing-energy", highPower({ landingEnergy: 101.68 }), "pass"],
  ["landing-energy", highPower({ landingEnergy: 101.69 }), "look"],
  ...aroundMost("landing-speed", 9, "look", "pass", (landingSpeed) => highPower({ landingSpeed })),
  ...aroundMost("landing-speed", 15, "stop", "look", (landingSpeed) => highPower({ landingSpeed })),
  ["descent-time", highPower({ descentTime: 1e4 }), null],
  ...aroundMost("opening-speed", 20, "look", "pass", (openingSpeed90) => highPower({ openingSpeed90 })),
  ["opening-speed", highPower({ openingSpeed90: null }), null],
  ...aroundMost("weather-age", 3600, "look", "pass", (weatherAge) => highPower({ weatherAge })),
];

const site: readonly Row[] = [
  ...aroundLeast("personnel-distance", 30.48, "stop", "pass", (peopleDistance) => highPower({ peopleDistance })),
  ...aroundLeast("personnel-distance", 60.96, "stop", "pass", (peopleDistance) =>
    highPower({ peopleDistance, complex: true }),
  ),
  ["personnel-distance", highPower({ totalImpulse: 40_961 }), "not-checked"],
  ["personnel-distance", passingModel, null],
  ...aroundLeast("model-personnel-distance", 4.572, "stop", "pass", (peopleDistance) => model({ peopleDistance })),
  ...aroundLeast("model-personnel-distance", 9.144, "stop", "pass", (peopleDistance) =>
    model({ peopleDistance, totalImpulse: 20.01 }),
  ),
  ...aroundLeast("site-edge-distance", 30.48, "stop", "pass", (siteEdgeDistance) => highPower({ siteEdgeDistance })),
  ...aroundLeast("cleared-diameter", 15.24, "stop", "pass", (clearedDiameter) => highPower({ clearedDiameter })),
  ...aroundLeast("cleared-diameter", 22.86, "stop", "pass", (clearedDiameter) =>
    highPower({ clearedDiameter, metalSponge: true }),
  ),
  ["cleared-diameter", highPower({ totalImpulse: 40_961 }), "not-checked"],
  ...aroundLeast("site-size", 457.2, "stop", "pass", (siteSmallest) => highPower({ siteSmallest })),
  ["site-size", highPower({ ...small, siteSmallest: 400 }), null],
  ["site-size", highPower({ ...small, totalImpulse: 160, siteSmallest: 400 }), "stop", 457.2],
  ["site-size", highPower({ ...small, liftOffMass: 1.5, siteSmallest: 400 }), "stop", 457.2],
  ["site-size", highPower({ ...small, height95: 2000 * foot, siteSmallest: 400 }), "stop", 457.2],
  ["site-size", passingModel, null],
  ...aroundLeast("site-size-for-height", 800, "stop", "pass", (siteSmallest) =>
    highPower({ siteSmallest, highestAllowed: 1600 }),
  ),
  ["site-size-for-height", highPower({ ...small, siteSmallest: 310, highestAllowed: 1600 }), null],
  ...aroundLeast("site-size-small-rocket", 304.8, "stop", "pass", (siteSmallest) =>
    highPower({ ...small, siteSmallest }),
  ),
  ["site-size-small-rocket", passing, null],
  ...aroundLeast("model-site-size", 152.4, "stop", "pass", (siteSmallest) => model({ siteSmallest })),
  ["model-site-size", model({ totalImpulse: 161 }), "not-checked"],
  ...aroundLeast("building-distance", 457.2, "stop", "pass", (buildingDistance) => highPower({ buildingDistance })),
  ["building-distance", highPower({ buildingDistance: null }), null],
  ...aroundLeast("road-distance", 457.2, "stop", "pass", (roadDistance) => highPower({ roadDistance })),
  ["road-distance", highPower({ roadDistance: null }), null],
  ["field-hours", highPower({ timeOfDay: 9 * 3600 }), "pass"],
  ["field-hours", highPower({ timeOfDay: 9 * 3600 - 1 }), "stop", 9 * 3600],
  ["field-hours", highPower({ timeOfDay: 18 * 3600 }), "pass"],
  ["field-hours", highPower({ timeOfDay: 18 * 3600 + 1 }), "stop", 18 * 3600],
  ["field-hours", highPower({ timeOfDay: 0, fieldHours: { from: 79_200, to: 3600 } }), "pass"],
  ["field-hours", highPower({ timeOfDay: 3601, fieldHours: { from: 79_200, to: 3600 } }), "stop"],
  ["field-hours", highPower({ fieldHours: null }), null],
];

const table = { aviation, delay, flight, motor, landing, site };

test.each(Object.entries(table))("rules of %s judge on each side of every limit and at it", (_, rows) => {
  for (const [id, facts, verdict, limit] of rows) {
    const found = judged(id, facts);
    expect(found?.verdict ?? null, `${id} ${found?.value} against ${found?.limit}`).toBe(verdict);
    if (limit !== undefined) expect(found?.limit, id).toBeCloseTo(limit, 9);
  }
});

test("rules: every one has a row that passes it and one that does not", () => {
  const rows = Object.values(table).flat();
  expect(rows.length).toBeGreaterThan(200);
  const without = (verdicts: readonly (RuleVerdict | null)[]) =>
    rules.filter(({ id }) => !rows.some((row) => row[0] === id && verdicts.includes(row[2]))).map(({ id }) => id);
  // A setting that cannot be made, an over-cut: where there is none, nothing is said. A descent's time has no limit but a club's.
  expect(without(["pass"]).sort()).toEqual(["choice-not-achievable", "descent-time", "element-over-cut"]);
  expect(without(["look", "stop"])).toEqual(["descent-time"]);
});

test("rules say what they found beside the figures", () => {
  const details = (id: string, facts: RuleFacts) => judged(id, facts)?.details;
  expect(details("aviation-class", passing)).toEqual(["class-2"]);
  expect(details("aviation-class", passingModel)).toEqual(["class-1"]);
  expect(details("aviation-class", highPower({ totalImpulse: 1e6 }))).toEqual(["not-amateur"]);
  expect(details("cleared-diameter", highPower({ metalSponge: true }))).toEqual(["metal-sponge"]);
  expect(details("personnel-distance", highPower({ complex: true }))).toEqual(["complex"]);
  expect(details("personnel-distance", highPower({ totalImpulse: 1e5 }))).toEqual(["beyond-table"]);
  expect(details("aviation-notice", highPower({ noticeBefore: 1 }))).toEqual(["told-too-late"]);
  expect(details("aviation-notice", highPower({ noticeBefore: 1e6 }))).toEqual(["told-too-early"]);
  expect(details("aviation-notice", highPower({ noticeBefore: null }))).toEqual(["not-told"]);
  expect(details("retention", highPower({ retention: "friction" }))).toEqual(["retained-by-friction"]);
  expect(details("retention", highPower({ retention: "none" }))).toEqual(["not-retained"]);
  expect(details("delay-reachable", highPower({ wantedDelay: 1 }))).toEqual(["too-short"]);
  expect(details("delay-reachable", highPower({ wantedDelay: 20 }))).toEqual(["too-long"]);
  const fixed = { delayFixed: true, reachableDelays: { least: 9, most: 9 } };
  expect(details("delay-reachable", highPower({ ...fixed, wantedDelay: 7 }))).toEqual(["shorter-than-fixed"]);
  expect(details("delay-reachable", highPower({ ...fixed, wantedDelay: 11 }))).toEqual(["longer-than-fixed"]);
  expect(details("airport-distance", highPower({ airportDistance: 1, authorised: true }))).toEqual(["authorised"]);
  const validity = [{ code: "mach-through-bridge", value: 1.1, limit: 0.9 }] as const;
  expect(details("models-validity", highPower({ validity }))).toEqual(["mach-through-bridge"]);
});

test("rules have identifiers in kebab case, no two alike, and name a source", () => {
  expect(new Set(rules.map(({ id }) => id)).size).toBe(rules.length);
  for (const { id, title, source, sets } of rules) {
    expect(id).toMatch(/^[a-z]+[a-z0-9]*(-[a-z0-9]+)*$/);
    expect(title).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
    expect(source.length, id).toBeGreaterThan(5);
    expect(sets.length, id).toBeGreaterThan(0);
  }
});
