import { fieldAt, type Raw } from "@delaywright/documents";
import { changeDocuments, type Entry } from "../store/index.js";
import { valueAt, withValue } from "./field-path.js";

/** A document with the rows of a list in another order; a list without rows is taken away where it may be. */
export function withRows(
  entry: Pick<Entry, "kind" | "raw">,
  field: string,
  order: readonly (number | null)[],
  start: () => unknown,
): Raw {
  const list = valueAt(entry.raw, field);
  const rows: readonly unknown[] = Array.isArray(list) ? list : [];
  const next = order.map((index) => (index === null ? start() : rows[index]));
  const away = next.length === 0 && entry.kind !== null && fieldAt(entry.kind, field)?.required === false;
  return withValue(entry.raw ?? {}, field, away ? undefined : next) as Raw;
}

/**
 * Adds, removes or moves rows: one step of undo. What is typed in a row goes with it.
 *
 * @param order for each row from now on the index it had, null for a new one
 * @param start makes a new row
 */
export function changeRows(
  entry: Entry,
  field: string,
  order: readonly (number | null)[],
  start: () => unknown,
  label: string,
): void {
  changeDocuments(label, [{ path: entry.path, raw: withRows(entry, field, order, start) }]);
}
