import { isMissing } from "./facts.js";
import type { Rule } from "./rule.js";
import { everySet, motorInstructions, ownDefault, statedBy } from "./sources.js";
import { compare, comparing, confirming, rule } from "./write-rule.js";

/** Where nothing is rated, the recovery is taken to fail at this many times the speed limit; own default, no source. */
export const unratedFactor = 2;

/** Highest odds of firing before the electronics that a back-up delay may have; own default, no source. */
export const mostFiresFirst = 0.05;

/** May this element be cut, so far, and with this tool? */
const cutting: readonly Rule[] = [
  rule({
    id: "instructions-not-confirmed",
    unit: "",
    sense: "none",
    fixed: true,
    basis: motorInstructions,
    sets: everySet,
    applies(facts) {
      if (facts.cuts !== true) return facts.cuts ?? ["cuts"];
      return facts.instructionsConfirmed === true && isMissing(facts, "toolNamed") ? ["toolNamed"] : true;
    },
    needs: ["cuts", "instructionsConfirmed"],
    find: ({ instructionsConfirmed, toolNamed }) => ({
      verdict: instructionsConfirmed && toolNamed !== null ? "pass" : "stop",
    }),
  }),
  confirming({
    id: "tool-not-named",
    fixed: true,
    basis: motorInstructions,
    sets: everySet,
    applies: ({ cuts, instructionsConfirmed }) => cuts === true && instructionsConfirmed === true,
    needs: ["toolNamed", "tool"],
    confirmed: ({ toolNamed, tool }) => toolNamed === tool,
  }),
  comparing({
    id: "removal-within-limit",
    unit: "s",
    sense: "most",
    limits: { stop: 1 },
    limitsOf: "mostRemoved",
    fixed: true,
    basis: motorInstructions,
    sets: everySet,
    applies: ({ cuts }) => cuts ?? ["cuts"],
    needs: ["removed", "mostRemoved"],
    value: (facts) => facts.removed,
  }),
  rule({
    id: "delay-reachable",
    unit: "s",
    sense: "none",
    basis: ownDefault,
    sets: everySet,
    needs: ["wantedDelay", "reachableDelays"],
    find({ wantedDelay: value, reachableDelays: { least, most }, delayFixed }) {
      if (value < least)
        return { verdict: "look", value, limit: least, details: [delayFixed ? "shorter-than-fixed" : "too-short"] };
      return value > most
        ? { verdict: "look", value, limit: most, details: [delayFixed ? "longer-than-fixed" : "too-long"] }
        : { verdict: "pass", value, limit: most };
    },
  }),
];

/** What the odds say. */
const odds: readonly Rule[] = [
  confirming({
    id: "no-charge",
    fixed: true,
    basis: ownDefault,
    sets: everySet,
    applies: ({ hasCharge }) => (hasCharge === undefined ? ["hasCharge"] : !hasCharge),
    needs: ["electronics"],
    confirmed: ({ electronics }) => electronics,
  }),
  comparing({
    id: "no-setting-holds",
    unit: "odds",
    sense: "least",
    limits: { stop: 1 },
    limitsOf: "leastHolds",
    basis: ownDefault,
    sets: everySet,
    needs: ["bestHolds", "leastHolds"],
    value: (facts) => facts.bestHolds,
  }),
  comparing({
    id: "below-least-clean",
    unit: "odds",
    sense: "least",
    limits: { look: 1 },
    limitsOf: "leastClean",
    basis: ownDefault,
    sets: everySet,
    needs: ["clean", "leastClean"],
    value: (facts) => facts.clean,
  }),
  comparing({
    id: "fires-before-electronics",
    unit: "odds",
    sense: "most",
    limits: { look: mostFiresFirst },
    basis: ownDefault,
    sets: everySet,
    needs: ["firesFirst"],
    value: (facts) => facts.firesFirst,
  }),
  rule({
    id: "opening-strength-unrated",
    unit: "m/s",
    sense: "none",
    basis: ownDefault,
    sets: everySet,
    needs: ["strengthRated", "openingSpeedLimit"],
    find: ({ strengthRated, openingSpeedLimit }) =>
      strengthRated ? { verdict: "pass" } : { verdict: "look", limit: unratedFactor * openingSpeedLimit },
  }),
];

/** The flyer's own setting, and an element that was cut too deep. */
const choiceAndOverCut: readonly Rule[] = [
  rule({
    id: "choice-not-achievable",
    unit: "s",
    sense: "none",
    fixed: true,
    basis: ownDefault,
    sets: everySet,
    applies: ({ choice }) => choice?.odds === null || choice === undefined,
    needs: ["choice"],
    find: ({ choice }) => ({ verdict: "stop", value: choice.delay }),
  }),
  rule({
    id: "choice-below-least",
    unit: "odds",
    sense: "least",
    basis: ownDefault,
    sets: everySet,
    applies: ({ choice }) => choice?.odds !== null && choice !== undefined,
    needs: ["choice", "leastHolds", "leastClean"],
    find({ choice, leastHolds, leastClean }) {
      if (choice.odds === null) return null;
      const holds = compare(choice.odds.holds, "least", { stop: leastHolds });
      return holds?.verdict === "stop" ? holds : compare(choice.odds.clean, "least", { look: leastClean });
    },
  }),
  rule({
    id: "element-over-cut",
    unit: "s",
    sense: "none",
    fixed: true,
    basis: statedBy("the depth read"),
    sets: everySet,
    needs: ["overCut"],
    find: ({ overCut }) => ({ verdict: overCut.doNotFly ? "stop" : "look", value: overCut.delay }),
  }),
];

/** What the delay, its cut and its odds say. */
export const delayRules: readonly Rule[] = [...cutting, ...odds, ...choiceAndOverCut];
