import { certificationLevel } from "../motor/high-power.js";
import { defaultSeparationMargin } from "../packing/separation.js";
import { isMissing } from "./facts.js";
import type { Rule } from "./rule.js";
import { association, everySet, highPowerCode, modelCode, motorInstructions, ownDefault } from "./sources.js";
import { compare, comparing, confirming, rule, toHighPower, toModelRockets } from "./write-rule.js";

/** What the motor and its flyer are allowed. */
export const motorRules: readonly Rule[] = [
  rule({
    id: "certification-level",
    unit: "",
    sense: "least",
    basis: {
      source: "practice of the national associations; NFPA 1127 for the highest class",
      edition: "2018",
      status: "verified",
    },
    sets: association,
    needs: ["motorClass", "highPower", "certification"],
    find({ motorClass, highPower, certification }, { limits }) {
      const byClass = certificationLevel(motorClass);
      if (byClass === null) return { verdict: "stop", value: certification, details: ["beyond-table"] };
      const asked = Math.max(byClass, highPower ? 1 : 0);
      return asked === 0 ? null : compare(certification, "least", { stop: asked, ...limits });
    },
  }),
  comparing({
    id: "flyer-age",
    unit: "years",
    sense: "least",
    limits: { stop: 18 },
    basis: { source: "NFPA 1122, 4.9.2", edition: "2018", status: "verified" },
    sets: association,
    applies(facts) {
      if (facts.motorClass === undefined) return ["motorClass"];
      if (facts.motorClass !== "G") return false;
      return isMissing(facts, "totalImpulse") ? ["totalImpulse"] : facts.totalImpulse! > 80;
    },
    needs: ["age"],
    value: (facts) => facts.age,
  }),
  confirming({
    id: "motor-certified",
    basis: { ...highPowerCode("verified"), edition: "August 2012, item 3" },
    sets: association,
    needs: ["motorCertified"],
    confirmed: (facts) => facts.motorCertified,
  }),
  comparing({
    id: "total-impulse",
    unit: "N s",
    sense: "most",
    limits: { stop: 40_960 },
    basis: highPowerCode("verified"),
    sets: association,
    applies: toHighPower,
    needs: ["totalImpulse"],
    value: (facts) => facts.totalImpulse,
  }),
  comparing({
    id: "model-total-impulse",
    title: "total-impulse",
    unit: "N s",
    sense: "most",
    limits: { stop: 320 },
    basis: modelCode("verified"),
    sets: association,
    applies: toModelRockets,
    needs: ["totalImpulse"],
    value: (facts) => facts.totalImpulse,
  }),
  rule({
    id: "retention",
    unit: "",
    sense: "none",
    basis: ownDefault,
    sets: everySet,
    needs: ["retention"],
    find({ retention }) {
      if (retention === "positive") return { verdict: "pass" };
      return retention === "friction"
        ? { verdict: "look", details: ["retained-by-friction"] }
        : { verdict: "stop", details: ["not-retained"] };
    },
  }),
  comparing({
    id: "charge-in-well",
    unit: "kg",
    sense: "most",
    limits: { stop: 1 },
    limitsOf: "wellHolds",
    fixed: true,
    basis: motorInstructions,
    sets: everySet,
    needs: ["charge", "wellHolds"],
    value: (facts) => facts.charge,
  }),
  comparing({
    id: "charge-parts-joint",
    unit: "",
    sense: "least",
    limits: { look: defaultSeparationMargin, stop: 1 },
    basis: ownDefault,
    sets: everySet,
    needs: ["chargeFactor"],
    value: (facts) => facts.chargeFactor,
  }),
];
