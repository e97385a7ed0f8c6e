import { type FieldPath, type Raw, stepsOf } from "@delaywright/documents";
import { same } from "./difference.js";
import { valueAt } from "./field.js";

type Drafts = Readonly<Record<string, string>>;

/**
 * The drafts that are left after a document was replaced: those whose field is as it was. Where rows of a list were moved,
 * their drafts move along; those of rows that are gone go with them.
 */
export function keptDrafts(drafts: Drafts, before: Raw | null, after: Raw): Drafts {
  const kept = Object.entries(drafts).flatMap(([field, text]): [string, string][] => {
    const steps = stepsOf(field);
    const now = steps === undefined ? undefined : placeNow(steps, before, after);
    return now === undefined ? [] : [[fieldOf(now), text]];
  });
  const all = Object.fromEntries(kept);
  return same(all, drafts) ? drafts : all;
}

/** Where a field stands now; undefined where it has another value or its object is gone. */
function placeNow(steps: FieldPath, before: unknown, after: unknown): FieldPath | undefined {
  const place: (string | number)[] = [];
  let [then, now] = [before, after];
  for (const step of steps) {
    if (then !== undefined && now === undefined) return undefined;
    const here = typeof step === "number" ? rowNow(step, then, now) : step;
    if (here === undefined) return undefined;
    place.push(here);
    then = valueAt(then, [step]);
    now = valueAt(now, [here]);
  }
  return same(then, now) ? place : undefined;
}

/** The index that a row has now. Rows that are objects are told apart as objects, others by their place. */
function rowNow(index: number, before: unknown, after: unknown): number | undefined {
  if (before === after) return index;
  if (!Array.isArray(before)) return index;
  if (!Array.isArray(after)) return undefined;
  const row: unknown = before[index];
  const moved = typeof row === "object" && row !== null ? after.indexOf(row) : -1;
  if (moved >= 0) return moved;
  return before.length === after.length ? index : undefined;
}

/** Steps as a path. */
function fieldOf(steps: FieldPath): string {
  return steps.reduce<string>(
    (path, step) => (typeof step === "number" ? `${path}[${step}]` : path === "" ? step : `${path}.${step}`),
    "",
  );
}
