/** Fewer documents than this are kept before anybody could read that they are. */
const LEAST = 5;

/**
 * Of how many documents the writing is under way: the most that were not kept at once since all were.
 *
 * @param before the same before; 0: all were kept
 * @param unsaved documents that are not kept now
 */
export function savingOf(before: number, unsaved: number): number {
  return unsaved === 0 ? 0 : Math.max(before, unsaved);
}

/**
 * How far the writing of many documents has come; empty for a few.
 *
 * @param unsaved documents that are not kept yet
 * @param of how many there were
 * @example
 * savingWords(300, 500); // "saving 200 of 500 documents…"
 */
export function savingWords(unsaved: number, of: number): string {
  return unsaved === 0 || of < LEAST ? "" : `saving ${of - unsaved} of ${of} documents…`;
}
