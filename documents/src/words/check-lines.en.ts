import type { Check } from "@delaywright/engine";
import type { UnitSystem } from "../quantity/systems.js";
import { limitWords, meaningWords, wordsForCheck } from "./checks.en.js";
import { findingFigure } from "./figures.en.js";
import { upperFirst } from "./numbers.en.js";
import { sourceWords } from "./rule-sources.en.js";

/** What a check found, in a word. */
export const verdictWords: Readonly<Record<Check["verdict"], string>> = Object.freeze({
  pass: "within",
  look: "look",
  stop: "stop",
  "not-checked": "not checked",
});

/** One check for a list: each cell in words. */
export interface CheckLine {
  /** The rule's own name: one to a check, where several share a code. */
  readonly id: string;
  readonly code: string;
  /** `Guide-exit speed`. */
  readonly name: string;
  /** `15.5 m/s`; empty where there is no figure. */
  readonly value: string;
  /** `least 15 m/s`; empty where there is nothing to compare. */
  readonly limit: string;
  readonly verdict: Check["verdict"];
  /** `within`, `look`, `stop`, `not checked`. */
  readonly word: string;
  /** What it means where it does not pass, what is to be said beside its figures, or what is not known; else empty. */
  readonly meaning: string;
  /** Where the rule is from, with its edition and how far its number can be trusted. */
  readonly source: string;
}

/**
 * One check, each cell in words, its figures in the flyer's units.
 *
 * @example
 * checkLine(check).limit; // "least 15 m/s"
 * checkLine(check, "imperial").limit; // "least 49 ft/s"
 */
export function checkLine(check: Check, units: UnitSystem = "metric"): CheckLine {
  const { id, code, verdict, value, unit } = check;
  const meaning = meaningWords(check);
  return {
    id,
    code,
    name: upperFirst(wordsForCheck(code, verdict).title),
    value: value === null ? "" : findingFigure(value, unit, code, units),
    limit: limitWords(check, units),
    verdict,
    word: verdictWords[verdict],
    meaning: meaning === "" ? "" : `${upperFirst(meaning)}.`,
    source: sourceWords(check),
  };
}

/** Value and limit of a check together: `4.5, least 5`; empty where there are no figures. */
export function checkFigures({ value, limit }: Pick<CheckLine, "value" | "limit">): string {
  return [value, limit].filter((part) => part !== "").join(", ");
}
