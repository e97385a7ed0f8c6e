import type { OutcomeOdds } from "@delaywright/engine";

const outcomes = [
  ["early fast", "earlyFast"],
  ["late fast", "lateFast"],
  ["lean fast", "leanFast"],
  ["low", "low"],
  ["grounded", "grounded"],
] as const;

/**
 * Outcomes other than clean as whole numbers of 100, without those that do not make one.
 *
 * @example
 * badWords(odds); // "early fast 3, late fast 4"
 */
export function badWords(odds: OutcomeOdds): string {
  return outcomes
    .map(([word, key]): readonly [string, number] => [word, Math.round(100 * odds[key])])
    .filter(([, count]) => count > 0)
    .map(([word, count]) => `${word} ${count}`)
    .join(", ");
}
