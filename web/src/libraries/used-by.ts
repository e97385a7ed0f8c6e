import type { Entry } from "../store/index.js";
import { referencesOf } from "../store/references.js";

/**
 * The documents that refer to another, straight or by one between them: a plan whose motor in hand is of a motor type uses
 * the type too.
 *
 * @param path of the document that is used
 * @returns each once, in the order of `entries`
 */
export function usersOf(path: string, entries: readonly Entry[]): Entry[] {
  const using = new Set([path]);
  for (let size = 0; size !== using.size; ) {
    size = using.size;
    for (const entry of entries)
      if (entry.raw !== null && referencesOf(entry.raw).some((each) => using.has(each))) using.add(entry.path);
  }
  using.delete(path);
  return entries.filter((entry) => using.has(entry.path));
}
