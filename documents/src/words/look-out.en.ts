import type { DecisionData } from "../answer/decision-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { wordForCheck } from "./checks.en.js";
import { doubtLine } from "./issues.en.js";
import { upperFirst } from "./numbers.en.js";
import { basisWarning } from "./openings.en.js";
import { wordForWarning } from "./warnings.en.js";

/** What to look out for, a sentence each. */
export interface LookOut {
  /** Checks that say look. */
  readonly looks: readonly string[];
  /** What the models were not held against, and guesses that rule the answer. */
  readonly warnings: readonly string[];
  /** What is unlikely in the documents. */
  readonly unlikely: readonly string[];
}

/** What the models were not held against, and guesses, a sentence each. */
export function warningSentences(warnings: DecisionData["warnings"], units: UnitSystem = "metric"): readonly string[] {
  return warnings.map((warning) => `${upperFirst(wordForWarning(warning, units))}.`);
}

/** Checks that say look, what the models were not held against, and what is unlikely in the documents. */
export function lookOutSentences({ checks, warnings, doubts }: DecisionData, units: UnitSystem = "metric"): LookOut {
  // what a check tells already is not told again
  const told = new Set<string>(checks.flatMap(({ details }) => details));
  return {
    looks: checks.filter((check) => check.verdict === "look").map((check) => `${wordForCheck(check, units)}.`),
    warnings: warningSentences(
      warnings.filter(({ code }) => code !== basisWarning && !told.has(code)),
      units,
    ),
    unlikely: doubts.map((doubt) => `${doubtLine(doubt)}.`),
  };
}
