import { parseQuantity } from "../quantity/parse.js";
import type { Dimension } from "../quantity/units.js";

/**
 * The SI value of a quantity in a document that its schema has already accepted.
 *
 * @throws {RangeError} where the text is no such quantity, which the schema rules out
 */
export function si(text: string, dimension: Dimension): number {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) throw new RangeError(`${text} is no ${dimension}`);
  return parsed.value;
}

/** As `si`, with a value for a field that was left out. */
export function siOr<Fallback>(text: string | undefined, dimension: Dimension, fallback: Fallback): number | Fallback {
  return text === undefined ? fallback : si(text, dimension);
}

/** An object with a field that was given, or nothing of it. */
export function given<Key extends string, Value>(key: Key, value: Value | undefined): { readonly [K in Key]?: Value } {
  return value === undefined ? {} : ({ [key]: value } as { readonly [K in Key]?: Value });
}
