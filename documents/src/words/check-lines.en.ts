import type { Check } from "@delaywright/engine";
import { amountIn, type UnitSystem } from "../quantity/systems.js";
import { measureOf, wordsForCheck } from "./checks.en.js";
import { glued, holdsPercent, upperFirst } from "./numbers.en.js";

/** What a check found, in a word. */
export const verdictWords: Readonly<Record<Check["verdict"] | "not-checked", string>> = Object.freeze({
  pass: "within",
  look: "look",
  stop: "stop",
  "not-checked": "not checked",
});

/** One check for a list: each cell in words. */
export interface CheckLine {
  readonly code: string;
  /** `Guide-exit speed`. */
  readonly name: string;
  /** `15.5 m/s`; empty where there is no figure. */
  readonly value: string;
  /** `least 15 m/s`; empty where there is nothing to compare. */
  readonly limit: string;
  readonly verdict: Check["verdict"];
  /** `within`, `look`, `stop`. */
  readonly word: string;
  /** What it means where it does not pass; else empty. */
  readonly meaning: string;
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
  const { code, verdict, value, limit, source } = check;
  const { title, sense, otherwise } = wordsForCheck(code);
  return {
    code,
    name: upperFirst(title),
    value: value === null ? "" : figure(value, check, units),
    limit: limit === null || sense === "none" ? "" : `${sense} ${figure(limit, check, units)}`,
    verdict,
    word: verdictWords[verdict],
    meaning: verdict === "pass" || otherwise === "" ? "" : `${upperFirst(otherwise)}.`,
    source,
  };
}

function figure(value: number, { code, unit }: Check, units: UnitSystem): string {
  if (unit === "odds") return holdsPercent(value);
  const measure = measureOf({ code, unit });
  if (units === "imperial" && measure !== undefined) return amountIn(value, measure, units);
  const [shown, word] = unit === "rad" ? [(value * 180) / Math.PI, "deg"] : [value, unit];
  const number = String(Number(shown.toPrecision(3)));
  return word === "" ? number : glued(number, word);
}
