import type { Known } from "./facts.js";
import type { Rule } from "./rule.js";
import { association, commonPractice, everySet, highPowerCode, modelCode, ownDefault, statedBy } from "./sources.js";
import { degree, mileAnHour } from "./units.js";
import { compare, comparing, rule, toHighPower, toModelRockets } from "./write-rule.js";

/** Standard gravity [m/s²]: the codes weigh a mass by it. */
const standardGravity = 9.80665;

/** Wind above which the code asks for a guide that is long enough [m/s]. */
const guideMattersAbove = 5 * mileAnHour;

const turn = 2 * Math.PI;

function inSector(azimuth: number, sector: { readonly from: number; readonly to: number }): boolean {
  const past = (a: number): number => (((a - sector.from) % turn) + turn) % turn;
  const along = past(azimuth);
  return along <= past(sector.to) + 1e-9 || turn - along <= 1e-9;
}

/** Thrust, weight and guide. */
const leavingTheGuide: readonly Rule[] = [
  comparing({
    id: "thrust-to-weight",
    unit: "",
    sense: "least",
    limits: { look: 5, stop: 3 },
    basis: commonPractice,
    sets: everySet,
    needs: ["thrustToWeight"],
    value: (facts) => facts.thrustToWeight,
  }),
  comparing({
    id: "lift-off-weight",
    unit: "kg",
    sense: "most",
    limits: { stop: 1 / 3 },
    limitsOf: "certifiedAverageThrust",
    scale: (facts) => facts.certifiedAverageThrust / standardGravity,
    basis: highPowerCode("memory"),
    sets: association,
    applies: toHighPower,
    needs: ["liftOffMass", "certifiedAverageThrust"],
    value: (facts) => facts.liftOffMass,
  }),
  comparing({
    id: "model-lift-off-weight",
    title: "lift-off-weight",
    unit: "kg",
    sense: "most",
    limits: { stop: 1 },
    limitsOf: "makerMostLiftOffMass",
    basis: modelCode("verified"),
    sets: association,
    applies: toModelRockets,
    needs: ["liftOffMass", "makerMostLiftOffMass"],
    value: (facts) => facts.liftOffMass,
  }),
  comparing({
    id: "guide-exit-speed",
    unit: "m/s",
    sense: "least",
    limits: { look: 15, stop: 10 },
    basis: commonPractice,
    sets: everySet,
    needs: ["guideExitSpeed"],
    value: (facts) => facts.guideExitSpeed,
  }),
  comparing({
    id: "guide-exit-against-wind",
    unit: "m/s",
    sense: "least",
    limits: { look: 4, stop: 3 },
    limitsOf: "windSpeed",
    basis: commonPractice,
    sets: everySet,
    needs: ["guideExitSpeed", "windSpeed"],
    value: (facts) => facts.guideExitSpeed,
  }),
  comparing({
    id: "guide-length-in-wind",
    unit: "m/s",
    sense: "least",
    limits: { stop: 3 },
    limitsOf: "windSpeed",
    basis: highPowerCode("memory"),
    sets: association,
    applies: (facts) =>
      facts.windSpeed !== undefined && facts.windSpeed <= guideMattersAbove ? false : toHighPower(facts),
    needs: ["guideExitSpeed", "windSpeed"],
    value: (facts) => facts.guideExitSpeed,
  }),
];

/** A margin on the way that is no smaller than this below those at guide exit and burnout says nothing of its own [calibres]. */
const marginsAlike = 0.05;

function leastAtEvents(facts: Known<"marginAtGuideExit" | "marginAtBurnout">): number {
  return Math.min(facts.marginAtGuideExit.least, facts.marginAtBurnout.least);
}

/** Static margin. */
const margins: readonly Rule[] = [
  comparing({
    id: "cp-ahead-of-balance",
    unit: "calibres",
    sense: "least",
    limits: { stop: 0 },
    strict: true,
    fixed: true,
    basis: {
      source:
        "J. S. Barrowman, M.S. thesis, Catholic University of America: centre of pressure behind the balance point",
      edition: "March 1967",
      status: "verified",
    },
    sets: everySet,
    needs: ["marginAtGuideExit", "marginAtBurnout", "marginInFlight"],
    value: (facts) => Math.min(leastAtEvents(facts), facts.marginInFlight.least),
  }),
  comparing({
    id: "margin-at-guide-exit",
    unit: "calibres",
    sense: "least",
    limits: { look: 1 },
    basis: commonPractice,
    sets: everySet,
    needs: ["marginAtGuideExit"],
    value: (facts) => facts.marginAtGuideExit.least,
  }),
  comparing({
    id: "margin-at-burnout",
    unit: "calibres",
    sense: "least",
    limits: { look: 1 },
    basis: commonPractice,
    sets: everySet,
    needs: ["marginAtBurnout"],
    value: (facts) => facts.marginAtBurnout.least,
  }),
  rule({
    id: "margin-in-flight",
    unit: "calibres",
    sense: "least",
    limits: { look: 1 },
    basis: commonPractice,
    sets: everySet,
    needs: ["marginAtGuideExit", "marginAtBurnout", "marginInFlight"],
    find: (facts, { limits }) => {
      const found = compare(facts.marginInFlight.least, "least", limits);
      const events = leastAtEvents(facts);
      const told = compare(events, "least", limits)?.verdict === found?.verdict;
      return told && facts.marginInFlight.least > events - marginsAlike ? null : found;
    },
  }),
  comparing({
    id: "over-stable",
    unit: "calibres",
    sense: "most",
    limits: { look: 3 },
    basis: commonPractice,
    sets: everySet,
    needs: ["marginAtGuideExit", "marginAtBurnout", "marginInFlight"],
    value: (facts) => Math.max(facts.marginAtGuideExit.most, facts.marginAtBurnout.most, facts.marginInFlight.most),
  }),
];

/** Wind and lean. */
const windAndTilt: readonly Rule[] = [
  comparing({
    id: "wind-limit",
    unit: "m/s",
    sense: "most",
    limits: { stop: 20 * mileAnHour },
    basis: highPowerCode("verified"),
    sets: association,
    applies: toHighPower,
    needs: ["windSpeed"],
    value: (facts) => facts.windSpeed,
  }),
  comparing({
    id: "model-wind-limit",
    title: "wind-limit",
    unit: "m/s",
    sense: "most",
    limits: { stop: 20 * mileAnHour },
    basis: modelCode("memory"),
    sets: association,
    applies: toModelRockets,
    needs: ["windSpeed"],
    value: (facts) => facts.windSpeed,
  }),
  comparing({
    id: "tilt-limit",
    unit: "rad",
    sense: "most",
    limits: { stop: 20 * degree },
    basis: highPowerCode("verified"),
    sets: association,
    applies: toHighPower,
    needs: ["tilt"],
    value: (facts) => facts.tilt,
  }),
  comparing({
    id: "model-tilt-limit",
    title: "tilt-limit",
    unit: "rad",
    sense: "most",
    limits: { stop: 30 * degree },
    basis: modelCode("verified"),
    sets: association,
    applies: toModelRockets,
    needs: ["tilt"],
    value: (facts) => facts.tilt,
  }),
  rule({
    id: "tilt-sector",
    unit: "rad",
    sense: "none",
    basis: statedBy("the field's sector in which the guide may lean"),
    sets: everySet,
    applies: ({ tilt }) => tilt !== 0,
    needs: ["tilt", "toward", "tiltSector"],
    find: ({ toward, tiltSector }) => ({ verdict: inSector(toward, tiltSector) ? "pass" : "stop", value: toward }),
  }),
];

/** The top, and what the models are worth there. */
const topAndModels: readonly Rule[] = [
  comparing({
    id: "ceiling",
    unit: "m",
    sense: "most",
    limits: { stop: 1 },
    limitsOf: "ceiling",
    basis: statedBy("the field's ceiling, at the height that 95 % stay below"),
    sets: everySet,
    needs: ["height95", "ceiling"],
    value: (facts) => facts.height95,
  }),
  rule({
    id: "models-validity",
    unit: "",
    sense: "none",
    basis: ownDefault,
    sets: everySet,
    needs: ["validity"],
    find: ({ validity }) => ({
      verdict: validity.length === 0 ? "pass" : "look",
      value: validity[0]?.value ?? null,
      limit: validity[0]?.limit ?? null,
      details: validity.map(({ code }) => code),
    }),
  }),
  comparing({
    id: "draws-not-flown",
    unit: "",
    sense: "most",
    limits: { stop: 0 },
    fixed: true,
    basis: statedBy("flights that never left the guide or never came down"),
    sets: everySet,
    needs: ["drawsNotFlown"],
    value: (facts) => facts.drawsNotFlown,
  }),
];

/** What rocket, motor, guide and wind say. */
export const flightRules: readonly Rule[] = [...leavingTheGuide, ...margins, ...windAndTilt, ...topAndModels];
