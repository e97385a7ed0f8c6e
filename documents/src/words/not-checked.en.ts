import type { Check } from "@delaywright/engine";
import { fieldOfFact, wordForFact } from "./facts.en.js";
import { upperFirst } from "./numbers.en.js";

/** How many checks say what. */
export interface CheckCounts {
  readonly stop: number;
  readonly look: number;
  readonly notChecked: number;
  readonly pass: number;
}

export function checkCounts(checks: readonly Pick<Check, "verdict">[]): CheckCounts {
  const count = (verdict: Check["verdict"]): number => checks.filter((check) => check.verdict === verdict).length;
  return { stop: count("stop"), look: count("look"), notChecked: count("not-checked"), pass: count("pass") };
}

/** So many facts are named in one sentence. */
const MOST_NAMED = 4;

/** A fact that is not known. */
export interface MissingFact {
  readonly name: string;
  /** `the cloud cover`. */
  readonly words: string;
  /** Fields that say it, with the kind of their document: `plan: site.cloudCover`; none where it is reckoned. */
  readonly fields: readonly string[];
}

/**
 * Every fact that some check wants and that is not known, each once, in the order of the checks.
 *
 * @example
 * missingFacts(checks)[0]; // { name: "cloudCover", words: "the cloud cover", fields: ["plan: site.cloudCover"] }
 */
export function missingFacts(checks: readonly Pick<Check, "missing">[]): readonly MissingFact[] {
  const byWords = new Map<string, MissingFact>();
  for (const name of checks.flatMap(({ missing }) => missing)) {
    const words = wordForFact(name);
    if (!byWords.has(words)) byWords.set(words, { name, words, fields: fieldsOf(name) });
  }
  return [...byWords.values()];
}

function fieldsOf(name: string): readonly string[] {
  const [document = "", paths = ""] = fieldOfFact(name)?.split(": ") ?? [];
  return paths === "" ? [] : paths.split(" and ").map((path) => `${document}: ${path}`);
}

/**
 * How many rules were not checked, and what would have to be known: the first facts by name; null where all were.
 *
 * @example
 * notCheckedSentence(checks); // "2 rules were not checked, because the cloud cover and the visibility are not known."
 */
export function notCheckedSentence(checks: readonly Pick<Check, "verdict" | "missing">[]): string | null {
  const { notChecked } = checkCounts(checks);
  if (notChecked === 0) return null;
  const facts = missingFacts(checks).map(({ words }) => words);
  const head = notChecked === 1 ? "1 rule was not checked" : `${notChecked} rules were not checked`;
  if (facts.length === 0) return `${head}.`;
  const named = facts.length > MOST_NAMED + 1 ? facts.slice(0, MOST_NAMED) : facts;
  const rest = facts.length - named.length;
  const items = rest === 0 ? named : [...named, `${rest} more facts`];
  const before = items.slice(0, -1).join(", ");
  const last = items.at(-1) ?? "";
  const list = before === "" ? last : `${before} and ${last}`;
  return `${head}, because ${facts.length === 1 ? `${list} is` : `${list} are`} not known.`;
}

/** The fields that would say what is not known, by document: `Plan: site.cloudCover, site.visibility.` */
export function missingFieldSentences(checks: readonly Pick<Check, "missing">[]): readonly string[] {
  const fields = checks.flatMap(({ missing }) => missing).flatMap((name) => fieldOfFact(name) ?? []);
  const byDocument = new Map<string, Set<string>>();
  for (const field of fields) {
    const [document = "", path = ""] = field.split(": ");
    byDocument.set(document, (byDocument.get(document) ?? new Set()).add(path));
  }
  return [...byDocument].map(([document, paths]) => `${upperFirst(document)}: ${[...paths].join(", ")}.`);
}
