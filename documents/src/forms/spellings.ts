import type { Kind } from "../kinds/kinds.js";
import { formatQuantity, fractionOfInch } from "../quantity/format.js";
import { parseQuantity } from "../quantity/parse.js";
import { FEET_FROM, shownQuantity } from "../quantity/shown.js";
import type { Dimension } from "../quantity/units.js";
import { checkField } from "./check-field.js";
import { fieldAt } from "./field-at.js";
import type { FieldPath } from "./field-path.js";

const INCH = 0.0254;

/**
 * Up to two right ways to fill a field, to be shown where it is wrong: a quantity in metric and in imperial units, two of
 * the choices, or an example.
 *
 * @param kind kind of the document
 * @param path steps, or as it stands in an issue
 * @returns each of them accepted by `checkField`; none of a list or an object, nor where the field has no example
 * @example
 * spellings("rocket", "fins[0].root"); // ["180 mm", "7 1/16 in"]
 */
export function spellings(kind: Kind, path: string | FieldPath): string[] {
  const shape = fieldAt(kind, path);
  if (shape === undefined) return [];
  if (shape.dimension === undefined) {
    if (shape.choices !== undefined) return shape.choices.slice(0, 2).map(String);
    return shape.example === "" || /^[{[]/.test(shape.example) ? [] : [shape.example];
  }
  const other = otherSpelling(shape.example, shape.dimensions ?? []);
  const both = other === undefined ? [shape.example] : [shape.example, other];
  return both.filter((text) => checkField(kind, path, text) === undefined);
}

/** The same quantity in the other system, rounded as one would say it. */
function otherSpelling(example: string, dimensions: readonly Dimension[]): string | undefined {
  for (const dimension of dimensions) {
    const parsed = parseQuantity(example, dimension);
    if (!parsed.ok) continue;
    const converted = (["imperial", "metric"] as const)
      .map((system) => shownQuantity(example, dimension, system, { wind: true, digits: 2 }))
      .find((text) => text !== example);
    if (converted !== undefined && / (in|ft)$/.test(converted) && Math.abs(parsed.value) < FEET_FROM)
      return inchesOf(parsed.value) ?? converted;
    return converted;
  }
  return undefined;
}

/** From an inch on to the nearest 16th, above a 64th to the nearest 64th; less is no fraction of an inch. */
function inchesOf(length: number): string | undefined {
  const size = Math.abs(length) / INCH;
  if (size >= 1) return fractionOfInch((Math.round((length / INCH) * 16) / 16) * INCH);
  if (size * 64 >= 0.9) return fractionOfInch(length);
  return length === 0 ? formatQuantity(0, "length", "in") : undefined;
}
