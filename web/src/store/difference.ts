import type { FieldPath } from "@delaywright/documents";
import { isKeyed, put, valueAt } from "./field.js";

/**
 * A difference between two values: at one place something else, or rows more at the end of a list.
 *
 * Rows at the end are told apart, so that two flyers who each add one lose neither.
 */
export type Difference =
  | { readonly at: FieldPath; readonly before: unknown; readonly after: unknown }
  /** `made`: there was no list before. */
  | { readonly at: FieldPath; readonly added: readonly unknown[]; readonly made: boolean }
  | { readonly at: FieldPath; readonly taken: readonly unknown[]; readonly made: boolean };

/** Whether two values say the same; the order of keys says nothing. */
export function same(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (Array.isArray(one))
    return Array.isArray(other) && one.length === other.length && one.every((each, index) => same(each, other[index]));
  if (!isKeyed(one) || !isKeyed(other)) return false;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && same(one[key], other[key]))
  );
}

/** Every difference that leads from one value to another. */
export function differences(before: unknown, after: unknown, at: FieldPath = []): Difference[] {
  if (same(before, after)) return [];
  if (isKeyed(before) && isKeyed(after)) {
    const keys = new Set([...Object.keys(before), ...Object.keys(after)]);
    return [...keys].flatMap((key) => differences(valueAt(before, [key]), valueAt(after, [key]), [...at, key]));
  }
  if (Array.isArray(after) && (before === undefined || Array.isArray(before))) {
    const list: readonly unknown[] = before ?? [];
    if (list.length === after.length && before !== undefined)
      return list.flatMap((each, index) => differences(each, after[index], [...at, index]));
    if (list.every((each, index) => same(each, after[index])))
      return [{ at, added: after.slice(list.length), made: before === undefined }];
  }
  return [{ at, before, after }];
}

/** What leads back. */
export function inverse(difference: Difference): Difference {
  const { at } = difference;
  if ("added" in difference) return { at, taken: difference.added, made: difference.made };
  if ("taken" in difference) return { at, added: difference.taken, made: difference.made };
  return { at, before: difference.after, after: difference.before };
}

/** Whether a value still stands at a place as the difference found it. */
export function fits(value: unknown, difference: Difference): boolean {
  const there = valueAt(value, difference.at);
  if ("added" in difference) return Array.isArray(there) || (difference.made && there === undefined);
  if ("taken" in difference)
    return (
      Array.isArray(there) && there.length >= difference.taken.length && same(tail(there, difference), difference.taken)
    );
  return same(there, difference.before);
}

function tail(list: readonly unknown[], { taken }: { readonly taken: readonly unknown[] }): readonly unknown[] {
  return list.slice(list.length - taken.length);
}

/** A value with the differences made in it, whatever stood there. */
export function withDifferences(value: unknown, changes: readonly Difference[]): unknown {
  return changes.reduce((whole, change) => put(whole, change.at, changed(valueAt(whole, change.at), change)), value);
}

function changed(there: unknown, change: Difference): unknown {
  const list: readonly unknown[] = Array.isArray(there) ? there : [];
  if ("added" in change) return [...list, ...change.added];
  if (!("taken" in change)) return change.after;
  if (!fits(list, { ...change, at: [] })) return there;
  const left = list.slice(0, list.length - change.taken.length);
  return left.length === 0 && change.made ? undefined : left;
}
