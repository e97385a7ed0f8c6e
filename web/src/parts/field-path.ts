import { stepsOf } from "@delaywright/documents";
import { put, valueAt as valueAtSteps } from "../store/field.js";

export { isKeyed } from "../store/field.js";

/** An object of a document, as typed. */
export type Keyed = Readonly<Record<string, unknown>>;

/**
 * Joins a path and what follows it.
 *
 * @example
 * joinField("fins[0]", "root"); // "fins[0].root"
 */
export function joinField(base: string, rest: string): string {
  if (base === "" || rest === "") return base + rest;
  return rest.startsWith("[") ? base + rest : `${base}.${rest}`;
}

/** The path of the object or list that a field stands in; empty for the document. */
export function parentOf(field: string): string {
  return field.replace(/(^|\.)[^.[\]]+$|\[\d+\]$/, "");
}

/** The last key of a path. */
export function lastKeyOf(field: string): string {
  return field.slice(parentOf(field).length).replace(/^\./, "");
}

/** What stands at a path; undefined where there is nothing. */
export function valueAt(value: unknown, field: string): unknown {
  const steps = stepsOf(field);
  return steps === undefined ? undefined : valueAtSteps(value, steps);
}

/**
 * A copy with another value at a path; objects and lists on the way are made where they are missing.
 *
 * @param next undefined removes the key, and the row of a list
 */
export function withValue<Whole>(value: Whole, field: string, next: unknown): Whole {
  const steps = stepsOf(field);
  return steps === undefined ? value : (put(value, steps, next) as Whole);
}

/** Whether one path is the other, or leads to it. */
export function leadsTo(path: string, field: string): boolean {
  return path === "" || field === path || (field.startsWith(path) && /^[.[]/.test(field.slice(path.length)));
}
