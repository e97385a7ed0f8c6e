import { distanceRow, modelSiteDimension } from "./distances.js";
import { type FactName, isMissing, type RuleFacts } from "./facts.js";
import type { Applies, DetailCode, Found, Rule, RuleTerms } from "./rule.js";
import { association, everySet, highPowerCode, modelCode, statedBy } from "./sources.js";
import { foot } from "./units.js";
import { compare, comparing, rule, toHighPower, toModelRockets } from "./write-rule.js";

/** Metal in the propellant widens the cleared ground by this factor. */
const metalSpongeFactor = 1.5;

/** A distance against the table by total impulse; a club's single number stands before the table. */
function byTable(
  value: number,
  { totalImpulse, complex }: { readonly totalImpulse: number; readonly complex: boolean },
  { limits, distances }: RuleTerms,
): Found | null {
  const row = distanceRow(totalImpulse, distances);
  const least = complex ? row?.complex : row?.single;
  const details: DetailCode[] = complex ? ["complex"] : [];
  return againstTable(value, least, limits, details);
}

function againstTable(
  value: number,
  least: number | undefined,
  limits: RuleTerms["limits"],
  details: readonly DetailCode[] = [],
): Found | null {
  if (least === undefined && limits.stop === undefined)
    return { verdict: "not-checked", value, details: [...details, "beyond-table"] };
  const found = compare(value, "least", { ...(least === undefined ? {} : { stop: least }), ...limits });
  return found === null ? null : { ...found, details };
}

/** The code lets a launch site be smaller below each of these: [N s], [kg], [m]. */
const smallRocket = [
  ["totalImpulse", 160],
  ["liftOffMass", 1.5],
  ["height95", 2000 * foot],
] as const;

/** Is it a small high-power rocket? Names of facts: that cannot be told without them. */
function isSmall(facts: RuleFacts): Applies {
  const notBelow = smallRocket.some(([name, limit]) => (facts[name] ?? 0) >= limit);
  if (notBelow) return false;
  const missing: FactName[] = smallRocket.map(([name]) => name).filter((name) => isMissing(facts, name));
  return missing.length === 0 ? true : missing;
}

/** High power, and not small enough for the smaller site. */
function toLargerRockets(facts: RuleFacts): Applies {
  const highPower = toHighPower(facts);
  if (highPower !== true) return highPower;
  const small = isSmall(facts);
  return typeof small === "boolean" ? !small : small;
}

/** Distances to people. */
const people: readonly Rule[] = [
  rule({
    id: "personnel-distance",
    unit: "m",
    sense: "least",
    byDistances: true,
    basis: highPowerCode("verified"),
    sets: association,
    applies: toHighPower,
    needs: ["peopleDistance", "totalImpulse", "complex"],
    find: (facts, terms) => byTable(facts.peopleDistance, facts, terms),
  }),
  rule({
    id: "model-personnel-distance",
    title: "personnel-distance",
    unit: "m",
    sense: "least",
    basis: modelCode("verified"),
    sets: association,
    applies: toModelRockets,
    needs: ["peopleDistance", "totalImpulse"],
    find: ({ peopleDistance, totalImpulse }, { limits }) =>
      againstTable(peopleDistance, (totalImpulse <= 20 ? 15 : 30) * foot, limits),
  }),
  rule({
    id: "site-edge-distance",
    unit: "m",
    sense: "least",
    byDistances: true,
    basis: highPowerCode("memory"),
    sets: association,
    applies: toHighPower,
    needs: ["siteEdgeDistance", "totalImpulse", "complex"],
    find: (facts, terms) => byTable(facts.siteEdgeDistance, facts, terms),
  }),
  rule({
    id: "cleared-diameter",
    unit: "m",
    sense: "least",
    byDistances: true,
    basis: highPowerCode("memory"),
    sets: association,
    applies: toHighPower,
    needs: ["clearedDiameter", "totalImpulse", "metalSponge"],
    find({ clearedDiameter, totalImpulse, metalSponge }, { limits, distances }) {
      const row = distanceRow(totalImpulse, distances);
      if (row !== null && row.cleared === undefined)
        return limits.stop === undefined ? null : compare(clearedDiameter, "least", limits);
      const least = row?.cleared === undefined ? undefined : row.cleared * (metalSponge ? metalSpongeFactor : 1);
      return againstTable(clearedDiameter, least, limits, metalSponge ? ["metal-sponge"] : []);
    },
  }),
];

/** Size of the launch site. */
const size: readonly Rule[] = [
  comparing({
    id: "site-size",
    unit: "m",
    sense: "least",
    limits: { stop: 1500 * foot },
    basis: highPowerCode("verified"),
    sets: association,
    applies: toLargerRockets,
    needs: ["siteSmallest"],
    value: (facts) => facts.siteSmallest,
  }),
  comparing({
    id: "site-size-for-height",
    unit: "m",
    sense: "least",
    limits: { stop: 0.5 },
    limitsOf: "highestAllowed",
    basis: highPowerCode("verified"),
    sets: association,
    applies: toLargerRockets,
    needs: ["siteSmallest", "highestAllowed"],
    value: (facts) => facts.siteSmallest,
  }),
  comparing({
    id: "site-size-small-rocket",
    title: "site-size",
    unit: "m",
    sense: "least",
    limits: { stop: 1000 * foot },
    basis: highPowerCode("memory"),
    sets: association,
    applies: (facts) => facts.highPower === true && isSmall(facts) === true,
    needs: ["siteSmallest"],
    value: (facts) => facts.siteSmallest,
  }),
  rule({
    id: "model-site-size",
    title: "site-size",
    unit: "m",
    sense: "least",
    basis: modelCode("verified"),
    sets: association,
    applies: toModelRockets,
    needs: ["siteSmallest", "totalImpulse"],
    find: ({ siteSmallest, totalImpulse }, { limits }) =>
      againstTable(siteSmallest, modelSiteDimension(totalImpulse) ?? undefined, limits),
  }),
];

/** Neighbours and hours. */
const around: readonly Rule[] = [
  comparing({
    id: "building-distance",
    unit: "m",
    sense: "least",
    limits: { stop: 1500 * foot },
    basis: highPowerCode("verified"),
    sets: association,
    applies: toHighPower,
    needs: ["buildingDistance"],
    value: (facts) => facts.buildingDistance,
  }),
  comparing({
    id: "road-distance",
    unit: "m",
    sense: "least",
    limits: { stop: 1500 * foot },
    basis: highPowerCode("memory"),
    sets: association,
    applies: toHighPower,
    needs: ["roadDistance"],
    value: (facts) => facts.roadDistance,
  }),
  rule({
    id: "field-hours",
    unit: "s",
    sense: "none",
    basis: statedBy("the field's hours"),
    sets: everySet,
    needs: ["timeOfDay", "fieldHours"],
    find({ timeOfDay, fieldHours: { from, to } }) {
      const [after, before] = [timeOfDay >= from, timeOfDay <= to];
      const open = from <= to ? after && before : after || before;
      return { verdict: open ? "pass" : "stop", value: timeOfDay, limit: after && !before ? to : from };
    },
  }),
];

/** What the launch site and its neighbours ask for. */
export const siteRules: readonly Rule[] = [...people, ...size, ...around];
