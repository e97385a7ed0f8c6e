import { aviationRules } from "./aviation-rules.js";
import { delayRules } from "./delay-rules.js";
import { flightRules } from "./flight-rules.js";
import { landingRules } from "./landing-rules.js";
import { motorRules } from "./motor-rules.js";
import type { Rule } from "./rule.js";
import { siteRules } from "./site-rules.js";

/** Every rule, in the order in which findings of one verdict are listed. */
export const rules: readonly Rule[] = Object.freeze([
  ...delayRules,
  ...flightRules,
  ...motorRules,
  ...landingRules,
  ...siteRules,
  ...aviationRules,
]);

const byId: ReadonlyMap<string, Rule> = new Map(rules.map((rule) => [rule.id, rule]));

/**
 * The rule of an identifier.
 *
 * @example
 * ruleById("wind-limit")?.limits.stop; // 8.9408
 */
export function ruleById(id: string): Rule | undefined {
  return byId.get(id);
}
