import type { RuleSet } from "../rules/check-rules.js";
import type { FactName, RuleFacts } from "../rules/facts.js";
import type { RuleTitle } from "../rules/rule.js";
import { checksOf } from "./checks.js";
import type { Check } from "./decision.js";

/** Rules whose verdict wind and lean can change; the others say the same in every weather. */
export const weatherRules: ReadonlySet<RuleTitle> = new Set([
  "ceiling",
  "cloud-entry",
  "draws-not-flown",
  "guide-exit-against-wind",
  "guide-length-in-wind",
  "keep-off-zones",
  "keep-off-zones-unopened",
  "landing-inside",
  "landing-inside-unopened",
  "opening-speed",
  "tilt-limit",
  "tilt-sector",
  "wind-limit",
] satisfies RuleTitle[]);

/** The first rule of wind or lean that says stop; null where none does. */
export function weatherStop(facts: RuleFacts, ruleSet: RuleSet | undefined): Check | null {
  return checksOf(facts, ruleSet).find(({ verdict, code }) => verdict === "stop" && weatherRules.has(code)) ?? null;
}

/** Where along the winds a rule first says stop. */
export interface FirstStop {
  /** [m/s] */
  readonly wind: number;
  readonly check: Check;
}

/** A wind and what is known in it. */
export interface FactsInWind {
  readonly wind: number;
  readonly facts: RuleFacts;
}

/** Halvings between two winds: to a thousandth of what lies between them. */
const halvings = 10;

/**
 * The wind between two from which on a rule says stop, the numbers among the facts on straight lines between them.
 *
 * @param from no rule of wind or lean says stop in it
 * @param to one does
 */
export function stopBetween(from: FactsInWind, to: FactsInWind, ruleSet: RuleSet | undefined): FirstStop {
  let [passes, stops] = [0, 1];
  let check = weatherStop(to.facts, ruleSet)!;
  for (let i = 0; i < halvings; i++) {
    const middle = 0.5 * (passes + stops);
    const found = weatherStop(factsBetween(from.facts, to.facts, middle), ruleSet);
    if (found === null) passes = middle;
    else {
      stops = middle;
      check = found;
    }
  }
  return { wind: from.wind + (to.wind - from.wind) * passes, check };
}

/** Facts on the way from one to another: numbers in proportion, all else as at the end. */
function factsBetween(from: RuleFacts, to: RuleFacts, part: number): RuleFacts {
  const between = Object.entries(to).map(([name, there]) => {
    const here = from[name as FactName];
    const numbers = typeof here === "number" && typeof there === "number";
    return [name, numbers ? here + (there - here) * part : there];
  });
  return Object.fromEntries(between) as RuleFacts;
}
