import { type FieldPath, stepsOf } from "@delaywright/documents";

/** An object of a document, as typed. */
export type Keyed = Readonly<Record<string, unknown>>;

export function isKeyed(value: unknown): value is Keyed {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

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
  let here = value;
  for (const step of stepsOf(field) ?? []) {
    if (typeof here !== "object" || here === null || !Object.hasOwn(here, step)) return undefined;
    here = (here as Record<string | number, unknown>)[step];
  }
  return here;
}

/**
 * A copy with another value at a path; objects and lists on the way are made where they are missing.
 *
 * @param next undefined removes the key, and the row of a list
 */
export function withValue<Whole>(value: Whole, field: string, next: unknown): Whole {
  return put(value, stepsOf(field) ?? [], next) as Whole;
}

function put(value: unknown, [step, ...rest]: FieldPath, next: unknown): unknown {
  if (step === undefined) return next;
  if (typeof step === "number") {
    const list: unknown[] = Array.isArray(value) ? [...value] : [];
    if (rest.length === 0 && next === undefined) list.splice(step, 1);
    else list[step] = put(list[step], rest, next);
    return list;
  }
  const whole: Record<string, unknown> = isKeyed(value) ? { ...value } : {};
  const inner = put(whole[step], rest, next);
  if (inner === undefined) delete whole[step];
  else whole[step] = inner;
  return whole;
}

/** Whether one path is the other, or leads to it. */
export function leadsTo(path: string, field: string): boolean {
  return path === "" || field === path || (field.startsWith(path) && /^[.[]/.test(field.slice(path.length)));
}
