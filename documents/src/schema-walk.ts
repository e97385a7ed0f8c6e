import type { z } from "zod";
import { type FieldFacts, fieldFacts } from "./kinds/fields.js";

/** What of a schema's definition is looked at here. */
interface Definition {
  readonly type: string;
  readonly innerType?: z.ZodType;
  readonly options?: readonly z.ZodType[];
  readonly element?: z.ZodType;
  readonly items?: readonly z.ZodType[];
  /** Of a record: what stands under each of its keys. */
  readonly valueType?: z.ZodType;
  readonly shape?: Readonly<Record<string, z.ZodType>>;
}

function definition(schema: z.ZodType): Definition {
  return schema.def as unknown as Definition;
}

/** The schema itself or, of a union, each of its branches; without what only makes it optional. */
export function branches(schema: z.ZodType): readonly z.ZodType[] {
  const { type, innerType, options } = definition(schema);
  if (innerType !== undefined && type === "optional") return branches(innerType);
  return options === undefined ? [schema] : options.flatMap(branches);
}

function step(schema: z.ZodType, key: PropertyKey): readonly z.ZodType[] {
  const { shape, element, items, valueType } = definition(schema);
  if (typeof key === "number") return [element ?? items?.[key]].filter((each) => each !== undefined);
  return shape !== undefined && Object.hasOwn(shape, key)
    ? [shape[String(key)]].filter((each) => each !== undefined)
    : [valueType].filter((each) => each !== undefined);
}

/** Every schema that may stand at a path. */
export function schemasAt(root: z.ZodType, path: readonly PropertyKey[]): readonly z.ZodType[] {
  return path.reduce<readonly z.ZodType[]>(
    (level, key) => level.flatMap(branches).flatMap((each) => step(each, key)),
    [root],
  );
}

/** The keys that an object at a path may have. */
export function keysAt(root: z.ZodType, path: readonly PropertyKey[]): readonly string[] {
  const shapes = schemasAt(root, path).flatMap(branches);
  return [...new Set(shapes.flatMap((each) => Object.keys(definition(each).shape ?? {})))];
}

/** What is accepted at a path, as far as its schema was given facts. */
export function factsAt(root: z.ZodType, path: readonly PropertyKey[]): FieldFacts | undefined {
  for (const schema of schemasAt(root, path)) {
    const facts = factsOf(schema);
    if (facts !== undefined) return facts;
  }
  return undefined;
}

/** The facts that a schema was given, under whatever makes it optional. */
export function factsOf(schema: z.ZodType): FieldFacts | undefined {
  let each: z.ZodType | undefined = schema;
  while (each !== undefined) {
    const facts = fieldFacts.get(each);
    if (facts !== undefined) return facts;
    each = definition(each).innerType;
  }
  return undefined;
}
