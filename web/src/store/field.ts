import { type FieldPath, type Raw, stepsOf } from "@delaywright/documents";

type Keyed = Readonly<Record<string, unknown>>;

/** Whether a value is an object with keys. */
export function isKeyed(value: unknown): value is Keyed {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** What stands at the end of a path; undefined where there is nothing. */
export function valueAt(value: unknown, steps: FieldPath): unknown {
  let here = value;
  for (const step of steps) {
    if (typeof here !== "object" || here === null || !Object.hasOwn(here, step)) return undefined;
    here = (here as Record<string | number, unknown>)[step];
  }
  return here;
}

/**
 * A field of a document.
 *
 * @param raw the document
 * @param field as it stands in an issue
 * @returns undefined where there is none
 * @example
 * readField({ fins: [{ root: "180 mm" }] }, "fins[0].root"); // "180 mm"
 */
export function readField(raw: Raw | null | undefined, field: string): unknown {
  const steps = stepsOf(field);
  return steps === undefined ? undefined : valueAt(raw, steps);
}

/** An object with a key at another value, its other keys in their order; undefined takes the key away. */
function withKey(whole: Keyed, key: string, value: unknown): Keyed {
  const entries = Object.entries(whole);
  const at = entries.findIndex(([each]) => each === key);
  if (value === undefined) return at < 0 ? whole : Object.fromEntries(entries.toSpliced(at, 1));
  return Object.fromEntries(at < 0 ? [...entries, [key, value]] : entries.with(at, [key, value]));
}

/** A list with a row at another value; undefined takes the row away, a place beyond the end is the one after the last. */
function withRow(list: readonly unknown[], index: number, value: unknown): readonly unknown[] {
  if (value === undefined) return index < list.length ? list.toSpliced(index, 1) : list;
  return index < list.length ? list.with(index, value) : [...list, value];
}

/** A copy with another value at the end of a path; nothing around it is taken away. */
export function put(value: unknown, [step, ...rest]: FieldPath, next: unknown): unknown {
  if (step === undefined) return next;
  if (typeof step === "number") {
    const list: readonly unknown[] = Array.isArray(value) ? value : [];
    return withRow(list, step, put(list[step], rest, next));
  }
  const whole = isKeyed(value) ? value : {};
  return withKey(whole, step, put(Object.hasOwn(whole, step) ? whole[step] : undefined, rest, next));
}

/** As `put` with nothing, and takes away the objects that this leaves empty; rows of lists stay. */
function takeAway(value: unknown, [step, ...rest]: FieldPath): unknown {
  if (step === undefined) return undefined;
  if (typeof value !== "object" || value === null || !Object.hasOwn(value, step)) return value;
  const inner = takeAway((value as Record<string | number, unknown>)[step], rest);
  if (typeof step === "number")
    return withRow(value as readonly unknown[], step, inner ?? (rest.length > 0 ? {} : inner));
  const left = withKey(value as Keyed, step, inner);
  return inner === undefined && Object.keys(left).length === 0 ? undefined : left;
}

/**
 * A document with another value in a field. The document itself is not touched.
 *
 * Objects and lists on the way are made where they are missing. A field that is taken away takes with it the objects around
 * it that are left empty, but no row of a list.
 *
 * @param raw the document
 * @param field as it stands in an issue
 * @param value undefined takes the field away, and a row out of its list
 * @example
 * writeField({ kind: "plan" }, "weather.wind", "2 m/s"); // { kind: "plan", weather: { wind: "2 m/s" } }
 */
export function writeField(raw: Raw, field: string, value: unknown): Raw {
  const steps = stepsOf(field);
  if (steps === undefined || steps.length === 0) return raw;
  return ((value === undefined ? takeAway(raw, steps) : put(raw, steps, value)) ?? {}) as Raw;
}
