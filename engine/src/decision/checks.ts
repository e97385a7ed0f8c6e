import { checkRules, type RuleSet } from "../rules/check-rules.js";
import type { RuleFacts } from "../rules/facts.js";
import type { Check } from "./decision.js";

/**
 * What the rules find in facts, as checks.
 *
 * @param ruleSet left out: `association`
 * @returns stop first, then look, not checked, pass
 */
export function checksOf(facts: RuleFacts, ruleSet: RuleSet = "association"): Check[] {
  return checkRules(facts, ruleSet).map(({ title, ...finding }) => ({ code: title, ...finding }));
}
