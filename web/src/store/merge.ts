import { differences, fits, inverse, same, withDifferences } from "./difference.js";
import type { Content, Entry } from "./entry.js";
import { keptDrafts } from "./kept-drafts.js";
import { contentOf, makeEntry } from "./make-entry.js";
import { isStrange } from "./record.js";

/** Whether nobody changed an entry between two looks at it. */
export function unchanged(one: Entry | undefined, other: Entry | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  return one.revision === other.revision && one.savedAt === other.savedAt && same(contentOf(one), contentOf(other));
}

/** What was changed between two states of a document, made again on a third: where both changed one field, ours holds. */
export function rebased(base: Entry, ours: Entry, theirs: Entry): Entry {
  const changes = differences(contentOf(base), contentOf(ours));
  const revision = Math.max(ours.revision, theirs.revision + 1);
  if (changes.length === 0) return theirs;
  const there = contentOf(theirs);
  const { raw } = withDifferences(there, changes) as Content;
  // what is half typed in a field is gone once the field has another value
  const drafts = raw === null || there.raw === null ? there.drafts : keptDrafts(there.drafts, there.raw, raw);
  const content = withDifferences({ ...there, drafts }, changes) as Content;
  return makeEntry(ours.path, content, Math.max(ours.savedAt, theirs.savedAt), revision);
}

/** A document taken back from one state to another, though it may have changed elsewhere since; undefined where it changed in the same field. */
export function takenBack(current: Entry, from: Entry, to: Entry): Content | undefined {
  const now = contentOf(current);
  if (same(now, contentOf(from))) return contentOf(to);
  const back = differences(contentOf(to), contentOf(from)).map(inverse);
  return back.every((change) => fits(now, change)) ? (withDifferences(now, back) as Content) : undefined;
}

/** What comes of writing an entry, once it is known what the database holds. */
export type Outcome =
  | { readonly kind: "put"; readonly entry: Entry }
  | { readonly kind: "delete" }
  /** Nothing is written: what is there holds. */
  | { readonly kind: "theirs"; readonly entry: Entry }
  /** Two documents were made under one path. */
  | { readonly kind: "clash"; readonly entry: Entry }
  /** A newer version of the app keeps it. */
  | { readonly kind: "newer" };

/**
 * What to write.
 *
 * @param base as the database was last seen; undefined: without it
 * @param ours as it is here; undefined: deleted
 * @param theirs as the database holds it now
 */
export function outcomeOf(base: Entry | undefined, ours: Entry | undefined, theirs: Entry | undefined): Outcome {
  if (theirs === undefined) return ours === undefined ? { kind: "delete" } : { kind: "put", entry: ours };
  if (unchanged(base, theirs)) {
    if (ours === undefined) return { kind: "delete" };
    return { kind: "put", entry: ours };
  }
  if (theirs.unreadable === "newer-record") return { kind: "newer" };
  if (ours === undefined) return { kind: "theirs", entry: theirs };
  if (same(contentOf(ours), contentOf(theirs))) return { kind: "theirs", entry: theirs };
  if (base === undefined || isStrange(theirs)) return { kind: "clash", entry: theirs };
  return { kind: "put", entry: rebased(base, ours, theirs) };
}
