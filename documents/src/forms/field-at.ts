import type { z } from "zod";
import type { FieldFacts } from "../kinds/fields.js";
import { type Kind, kinds } from "../kinds/kinds.js";
import { branches, factsAt, factsOf, keysAt, schemasAt } from "../schema-walk.js";
import { oneOf } from "../words/accepted.en.js";
import { type FieldPath, stepsOf } from "./field-path.js";
import type { FieldShape, Holds } from "./field-shape.js";
import { Known } from "./known.js";

/** What of a schema's definition is looked at here. */
interface Leaf {
  readonly type: string;
  readonly values?: readonly unknown[];
  readonly entries?: Readonly<Record<string, string | number>>;
}

const plain: Readonly<Record<Holds, string>> = Object.freeze({
  quantity: "a quantity with its unit",
  number: "a number",
  text: "a text",
  choice: "one of several words",
  "yes-no": "true or false",
  list: "a list",
  object: "an object",
  reference: "the path of a file, or what it would hold",
});

const known = new Known<FieldShape | undefined>();

/**
 * What a form needs to know of one field of a kind of document: what it accepts, an example, its choices, its range.
 *
 * Where a field differs between the branches of its object, as between shapes of fins, all branches are looked at together.
 *
 * @param kind kind of the document
 * @param path steps, or as it stands in an issue: `fins[0].root`
 * @returns undefined where there is no such field
 * @example
 * fieldAt("rocket", "fins[0].root")?.dimension; // "length"
 */
export function fieldAt(kind: Kind, path: string | FieldPath): FieldShape | undefined {
  const question = typeof path === "string" ? `${kind} ${path}` : `${kind}: ${JSON.stringify(path)}`;
  return known.of(question, () => {
    const steps = stepsOf(path);
    return steps && shapeAt(kinds[kind].schema(), steps);
  });
}

function shapeAt(root: z.ZodType, steps: FieldPath): FieldShape | undefined {
  const fields = schemasAt(root, steps);
  if (fields.length === 0) return undefined;
  const leaves = fields.flatMap(branches);
  const facts = leaves.map(factsOf).filter((each) => each !== undefined);
  const quantity = facts.find((each) => each.dimensions !== undefined);
  const choices = [...new Set(leaves.flatMap(choicesOf))];
  const keys = keysAt(root, steps);
  const holds = holdsOf(leaves, quantity);
  const told = factsAt(root, steps);
  const range = holds === "number" ? rangeOf(leaves) : undefined;
  return {
    holds,
    accepted: told?.accepted ?? (choices.length > 0 ? oneOf(choices) : plain[holds]),
    example: asTyped(told?.example ?? (choices.length > 0 ? JSON.stringify(choices[0]) : "")),
    description: fields.map(descriptionOf).find((each) => each !== "") ?? "",
    required: fields.every((each) => (each.def as { type: string }).type !== "optional"),
    ...(choices.length > 0 ? { choices } : {}),
    ...(quantity?.dimensions === undefined ? {} : dimensionsOf(quantity)),
    ...(range === undefined ? {} : { range }),
    ...(keys.length > 0 ? { keys } : {}),
  };
}

function dimensionsOf({ dimensions, limits }: FieldFacts): Pick<FieldShape, "dimension" | "dimensions" | "limits"> {
  const [dimension] = dimensions ?? [];
  return {
    ...(dimension === undefined ? {} : { dimension }),
    ...(dimensions === undefined ? {} : { dimensions }),
    ...(limits === undefined ? {} : { limits }),
  };
}

function leafOf(schema: z.ZodType): Leaf {
  return schema.def as unknown as Leaf;
}

function choicesOf(schema: z.ZodType): (string | number | boolean)[] {
  const { type, values, entries } = leafOf(schema);
  if (type === "literal") return [...(values ?? [])] as (string | number | boolean)[];
  return type === "enum" ? Object.values(entries ?? {}) : [];
}

function holdsOf(leaves: readonly z.ZodType[], quantity: FieldFacts | undefined): Holds {
  const types = new Set(leaves.map((leaf) => leafOf(leaf).type));
  if (quantity !== undefined) return "quantity";
  if (types.has("object") || types.has("record")) return types.has("string") ? "reference" : "object";
  if (types.has("array") || types.has("tuple")) return "list";
  if (types.has("literal") || types.has("enum")) return "choice";
  if (types.has("boolean")) return "yes-no";
  return types.has("string") ? "text" : "number";
}

function rangeOf(leaves: readonly z.ZodType[]): FieldShape["range"] {
  const [number] = leaves.filter((leaf) => leafOf(leaf).type === "number") as z.ZodNumber[];
  if (number === undefined || number.minValue === null || number.maxValue === null) return undefined;
  return { least: number.minValue, most: number.maxValue, whole: number.isInt };
}

function descriptionOf(schema: z.ZodType): string {
  let each: z.ZodType | undefined = schema;
  while (each !== undefined) {
    if (each.description !== undefined) return each.description;
    each = (each.def as { innerType?: z.ZodType }).innerType;
  }
  return "";
}

/** Examples are kept as JSON; a text is typed without its quotes. */
function asTyped(example: string): string {
  return /^"[^"]*"$/.test(example) ? example.slice(1, -1) : example;
}
