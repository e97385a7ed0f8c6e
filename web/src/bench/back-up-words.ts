import type { Persistence } from "../store/index.js";

const DAY = 86_400_000;

/**
 * When everything was last exported, in words.
 *
 * @param at [ms]; null: never
 * @param now [ms]
 * @example
 * exportedWords(null, 0); // "Nothing was exported yet."
 */
export function exportedWords(at: number | null, now: number): string {
  if (at === null) return "Nothing was exported yet.";
  const days = Math.floor((now - at) / DAY);
  if (days < 1) return "Last export within the last day.";
  return days === 1 ? "Last export a day ago." : `Last export ${days} days ago.`;
}

const promises: Readonly<Record<Persistence, string>> = Object.freeze({
  unasked: "",
  granted: "This browser has promised not to clear the bench by itself.",
  refused: "This browser may clear the bench by itself when room gets short.",
  unknown: "This browser does not say whether it may clear the bench by itself.",
});

/** What the browser answered when it was asked to keep the bench. */
export function promiseWords(persistence: Persistence): string {
  return promises[persistence];
}
