import { type AviationClass, aboveClassOne, aviationClass } from "./aviation-class.js";
import { isMissing, type RuleFacts } from "./facts.js";
import type { Applies, Found, Rule } from "./rule.js";
import { association, aviationRule, highPowerCode } from "./sources.js";
import { compare, comparing, confirming, rule } from "./write-rule.js";

/** When the nearest air traffic control facility is to be told, before the flight [s]. */
const [noticeFrom, noticeTo] = [24 * 3600, 3 * 24 * 3600];

/** Beyond either of these it is no amateur rocket: [N s], [m]. */
const amateur = { totalImpulse: 889_600, height: 150e3 };

/** What needs an authorisation where it is not met: with one, somebody should look what it asks for. */
function unlessAuthorised(found: Found | null, { authorised }: RuleFacts): Found | null {
  return found?.verdict === "stop" && authorised === true
    ? { ...found, verdict: "look", details: ["authorised"] }
    : found;
}

/** A yes or no that needs an authorisation where it is no. */
function permitted(met: boolean, facts: RuleFacts): Found | null {
  return unlessAuthorised({ verdict: met ? "pass" : "stop" }, facts);
}

const toClassOne = (facts: RuleFacts): Applies => aviationClass(facts) === 1;

/** Sky and light. */
const sky: readonly Rule[] = [
  comparing({
    id: "cloud-cover",
    unit: "share",
    sense: "most",
    limits: { stop: 0.5 },
    basis: aviationRule("101.25(a)"),
    sets: association,
    applies: aboveClassOne,
    needs: ["cloudCover"],
    value: (facts) => facts.cloudCover,
  }),
  comparing({
    id: "visibility",
    unit: "m",
    sense: "least",
    limits: { stop: 5 * 1609.344 },
    basis: aviationRule("101.25(b)"),
    sets: association,
    applies: aboveClassOne,
    needs: ["visibility"],
    value: (facts) => facts.visibility,
  }),
  comparing({
    id: "cloud-entry",
    unit: "m",
    sense: "most",
    limits: { stop: 1 },
    limitsOf: "cloudBase",
    basis: aviationRule("101.25(c)"),
    sets: association,
    applies: aboveClassOne,
    needs: ["height95", "cloudBase"],
    value: (facts) => facts.height95,
  }),
  comparing({
    id: "class-1-cloud-entry",
    title: "cloud-entry",
    unit: "m",
    sense: "most",
    limits: { stop: 1 },
    limitsOf: "cloudBase",
    basis: highPowerCode("memory"),
    sets: association,
    applies: toClassOne,
    needs: ["height95", "cloudBase"],
    value: (facts) => facts.height95,
  }),
  rule({
    id: "daylight",
    unit: "",
    sense: "none",
    basis: aviationRule("101.25(d)"),
    sets: association,
    applies: aboveClassOne,
    needs: ["daylight"],
    find: (facts) => permitted(facts.daylight, facts),
  }),
];

/** Airspace and ground. */
const airspaceAndGround: readonly Rule[] = [
  rule({
    id: "airport-distance",
    unit: "m",
    sense: "least",
    limits: { stop: 9260 },
    basis: aviationRule("101.25(e)"),
    sets: association,
    applies: aboveClassOne,
    needs: ["airportDistance"],
    find: (facts, { limits }) => unlessAuthorised(compare(facts.airportDistance, "least", limits), facts),
  }),
  rule({
    id: "controlled-airspace",
    unit: "",
    sense: "none",
    basis: aviationRule("101.25(f)"),
    sets: association,
    applies: aboveClassOne,
    needs: ["controlledAirspace"],
    find: (facts) => permitted(!facts.controlledAirspace, facts),
  }),
  comparing({
    id: "uninvolved-distance",
    unit: "m",
    sense: "least",
    limits: { stop: 457 },
    basis: aviationRule("101.25(g)"),
    sets: association,
    applies: aboveClassOne,
    needs: ["uninvolvedDistance"],
    value: (facts) => facts.uninvolvedDistance,
  }),
  comparing({
    id: "uninvolved-distance-for-height",
    title: "uninvolved-distance",
    unit: "m",
    sense: "least",
    limits: { stop: 0.25 },
    limitsOf: "height95",
    basis: aviationRule("101.25(g)"),
    sets: association,
    applies: aboveClassOne,
    needs: ["uninvolvedDistance", "height95"],
    value: (facts) => facts.uninvolvedDistance,
  }),
];

/** People and paper. */
const peopleAndNotice: readonly Rule[] = [
  confirming({
    id: "adult-in-charge",
    basis: aviationRule("101.25(h)"),
    sets: association,
    applies: aboveClassOne,
    needs: ["adultInCharge"],
    confirmed: (facts) => facts.adultInCharge,
  }),
  confirming({
    id: "fire-means",
    basis: aviationRule("101.25(i)"),
    sets: association,
    applies: aboveClassOne,
    needs: ["fireMeans"],
    confirmed: (facts) => facts.fireMeans,
  }),
  rule({
    id: "aviation-notice",
    unit: "s",
    sense: "none",
    basis: aviationRule("101.27"),
    sets: association,
    applies(facts) {
      const applying = aboveClassOne(facts);
      return applying === true && isMissing(facts, "noticeBefore") ? ["noticeBefore"] : applying;
    },
    needs: [],
    find({ noticeBefore }) {
      const value = noticeBefore ?? null;
      if (value === null) return { verdict: "stop", limit: noticeFrom, details: ["not-told"] };
      if (value < noticeFrom) return { verdict: "stop", value, limit: noticeFrom, details: ["told-too-late"] };
      return value > noticeTo
        ? { verdict: "stop", value, limit: noticeTo, details: ["told-too-early"] }
        : { verdict: "pass", value, limit: noticeFrom };
    },
  }),
];

/** The rocket's class, which decides what the others ask for. */
const ofClass: Rule = rule({
  id: "aviation-class",
  unit: "",
  sense: "none",
  basis: aviationRule("101.22; 1.1"),
  sets: association,
  applies(facts) {
    const found = aviationClass(facts);
    return typeof found === "number" ? true : found;
  },
  needs: ["totalImpulse", "height95"],
  find(facts) {
    const value = aviationClass(facts) as AviationClass;
    if (facts.totalImpulse > amateur.totalImpulse || facts.height95 > amateur.height)
      return { verdict: "stop", value, details: ["not-amateur"] };
    return { verdict: value === 3 ? "look" : "pass", value, details: [`class-${value}`] };
  },
});

/** What the aviation rule asks for. */
export const aviationRules: readonly Rule[] = [ofClass, ...sky, ...airspaceAndGround, ...peopleAndNotice];
