import { usualLandingSpeeds } from "../packing/canopy-size.js";
import { landingEnergyLimit } from "../packing/landing-energy.js";
import type { Rule } from "./rule.js";
import { everySet, ownDefault } from "./sources.js";
import { comparing } from "./write-rule.js";

const studentHandbook = {
  source: "NASA Student Launch handbook, recovery requirements",
  edition: "",
  status: "memory",
} as const;

/** How and where it comes down. */
export const landingRules: readonly Rule[] = [
  comparing({
    id: "landing-inside",
    unit: "odds",
    sense: "most",
    limits: { look: 0.05, stop: 0.5 },
    basis: ownDefault,
    sets: everySet,
    needs: ["outsideOpened"],
    value: (facts) => facts.outsideOpened,
  }),
  comparing({
    id: "landing-inside-unopened",
    unit: "odds",
    sense: "most",
    limits: { look: 0.05 },
    basis: ownDefault,
    sets: everySet,
    needs: ["outsideUnopened"],
    value: (facts) => facts.outsideUnopened,
  }),
  comparing({
    id: "keep-off-zones",
    unit: "odds",
    sense: "most",
    limits: { look: 0.01, stop: 0.05 },
    basis: ownDefault,
    sets: everySet,
    needs: ["keepOffOpened"],
    value: (facts) => facts.keepOffOpened,
  }),
  comparing({
    id: "keep-off-zones-unopened",
    unit: "odds",
    sense: "most",
    limits: { look: 0.01, stop: 0.05 },
    basis: ownDefault,
    sets: everySet,
    needs: ["keepOffUnopened"],
    value: (facts) => facts.keepOffUnopened,
  }),
  comparing({
    id: "landing-energy",
    unit: "J",
    sense: "most",
    limits: { look: landingEnergyLimit },
    basis: studentHandbook,
    sets: everySet,
    needs: ["landingEnergy"],
    value: (facts) => facts.landingEnergy,
  }),
  // half as fast again as is usual, and a drogue's speed (common practice): a canopy's size in another unit than was meant
  comparing({
    id: "landing-speed",
    unit: "m/s",
    sense: "most",
    limits: { look: 1.5 * usualLandingSpeeds.most, stop: 15 },
    basis: ownDefault,
    sets: everySet,
    needs: ["landingSpeed"],
    value: (facts) => facts.landingSpeed,
  }),
  comparing({
    id: "descent-time",
    unit: "s",
    sense: "most",
    basis: studentHandbook,
    sets: everySet,
    needs: ["descentTime"],
    value: (facts) => facts.descentTime,
  }),
  comparing({
    id: "opening-speed",
    unit: "m/s",
    sense: "most",
    limits: { look: 1 },
    limitsOf: "openingSpeedLimit",
    basis: ownDefault,
    sets: everySet,
    needs: ["openingSpeed90", "openingSpeedLimit"],
    value: (facts) => facts.openingSpeed90,
  }),
  comparing({
    id: "weather-age",
    unit: "s",
    sense: "most",
    limits: { look: 3600 },
    basis: ownDefault,
    sets: everySet,
    needs: ["weatherAge"],
    value: (facts) => facts.weatherAge,
  }),
];
