import type { FailedSaving } from "../store/index.js";

/** What is wrong with keeping, and what can be done about it. */
export interface SavingWords {
  readonly lead: string;
  readonly what: string;
}

const failures: Readonly<Record<FailedSaving, SavingWords>> = Object.freeze({
  quota: {
    lead: "No room left on this device.",
    what: "Export now, then make room on the device and try again.",
  },
  aborted: {
    lead: "The browser broke the writing off.",
    what: "Try again; if it happens once more, export first.",
  },
  blocked: {
    lead: "Another tab holds the bench.",
    what: "Close the other tabs of this app and try again.",
  },
  unavailable: {
    lead: "This browser keeps nothing here.",
    what: "A private window may be the reason. Everything works until you close the page; export before you do.",
  },
  unknown: {
    lead: "The bench could not be kept.",
    what: "Try again; if it happens once more, export first.",
  },
});

/**
 * What to say where changes are not kept.
 *
 * @param names of the documents that are in memory only
 * @example
 * failureWords("quota", ["Demo rocket 76"]).what;
 * // "Your last change, in Demo rocket 76, is still in memory and nothing is lost. Export now, then …"
 */
export function failureWords(reason: FailedSaving, names: readonly string[]): SavingWords {
  const { lead, what } = failures[reason];
  return { lead, what: `${memoryWords(names)}${what}` };
}

/** Which changes are in memory only; empty where there are none. */
export function memoryWords(names: readonly string[]): string {
  const [first, ...others] = names;
  if (first === undefined) return "";
  if (others.length === 0) return `Your last change, in ${first}, is still in memory and nothing is lost. `;
  const rest = others.length === 1 ? "1 more" : `${others.length} more`;
  return `Your last changes, in ${first} and ${rest}, are still in memory and nothing is lost. `;
}
