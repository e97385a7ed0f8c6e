import { clubIssues, type Rule, ruleById, rules } from "@delaywright/engine";
import { readLimit } from "../kinds/rule-set/limit.js";
import type { UnitSystem } from "../quantity/systems.js";
import { wordsForCheck } from "./checks.en.js";
import { wordForFact } from "./facts.en.js";
import { findingFigure } from "./figures.en.js";
import { glued, upperFirst } from "./numbers.en.js";
import { sourceWords } from "./rule-sources.en.js";

/** A rule as a club that sets its own limits needs to know it. */
export interface RuleWords {
  readonly id: string;
  /** `Guide-exit speed`. */
  readonly name: string;
  /** Where it is from, with its edition and how far its number can be trusted. */
  readonly source: string;
  /** `least`, `most`; empty where no number decides, so that it can only be turned off. */
  readonly sense: "least" | "most" | "";
  /** Its own limits, `10 m/s`; empty where it has none, or a table or another figure gives it. */
  readonly look: string;
  readonly stop: string;
  /** What a limit of it must be: a quantity, or a number. */
  readonly accepted: string;
  /** Its limits are numbers without a unit. */
  readonly plain: boolean;
}

const told = new Map<string, RuleWords>();

function wordsOf(rule: Rule, units: UnitSystem): RuleWords {
  const { id, title, sense, limits, limitsOf, unit } = rule;
  const [issue] = clubIssues({ name: "", limits: { [id]: {} } });
  const limit = (value: number | undefined): string => {
    if (value === undefined) return "";
    if (limitsOf === undefined) return findingFigure(value, unit, title, units);
    const factor = glued(String(Number(value.toPrecision(3))), "times");
    return value === 1 ? wordForFact(limitsOf) : `${factor} ${wordForFact(limitsOf)}`;
  };
  const read = readLimit(rule, "");
  return {
    id,
    name: upperFirst(wordsForCheck(title).title),
    source: sourceWords(rule),
    sense: issue === undefined && sense !== "none" ? sense : "",
    look: limit(limits.look),
    stop: limit(limits.stop),
    accepted: read.ok ? "" : read.accepted,
    plain: readLimit(rule, 1).ok,
  };
}

/**
 * A rule in words; null where there is none of this name.
 *
 * @example
 * ruleWords("guide-exit-speed")?.stop; // "10 m/s"
 */
export function ruleWords(id: string, units: UnitSystem = "metric"): RuleWords | null {
  const rule = ruleById(id);
  if (rule === undefined) return null;
  const key = `${units} ${id}`;
  const words = told.get(key) ?? wordsOf(rule, units);
  told.set(key, words);
  return words;
}

/** Every rule that a club may set or turn off, by name. */
export function rulesOfClubs(units: UnitSystem = "metric"): readonly RuleWords[] {
  return rules
    .filter(({ fixed }) => !fixed)
    .flatMap(({ id }) => ruleWords(id, units) ?? [])
    .sort((a, b) => a.name.localeCompare(b.name, "en"));
}
