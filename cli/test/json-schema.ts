import { readFileSync } from "node:fs";
import type { Loose } from "./demo.js";

/** Reads a schema of this package. */
export function schemaOf(name: string): Loose {
  return JSON.parse(readFileSync(new URL(`../schemas/${name}.schema.json`, import.meta.url), "utf8"));
}

function typeOf(value: unknown): string {
  if (value === null) return "null";
  if (Array.isArray(value)) return "array";
  return Number.isInteger(value) ? "integer" : typeof value;
}

/** Keywords that are understood; a schema that uses another one must not pass for want of looking. */
const understood = new Set(
  "$schema $defs $ref title description type enum anyOf properties required additionalProperties items".split(" "),
);

/** What is wrong with a value, by path: the part of JSON Schema that this package's schemas use. */
export function faultsOf(value: Loose, schema: Loose, root: Loose = schema, path = ""): string[] {
  const strange = Object.keys(schema).filter((key) => !understood.has(key));
  if (strange.length > 0) return [`${path}: keyword ${strange.join(", ")} is not understood`];
  if (schema.$ref !== undefined) return faultsOf(value, root.$defs[schema.$ref.replace("#/$defs/", "")], root, path);
  if (schema.anyOf !== undefined) {
    const tries: string[][] = schema.anyOf.map((each: Loose) => faultsOf(value, each, root, path));
    return tries.some((faults) => faults.length === 0) ? [] : (tries[0] ?? []);
  }
  if (schema.enum !== undefined) return schema.enum.includes(value) ? [] : [`${path}: ${value} is not in the list`];
  const type = typeOf(value);
  const types = [schema.type].flat();
  const fits = types.includes(type) || (type === "integer" && types.includes("number"));
  if (!fits) return [`${path}: ${type} found, ${types.join(" or ")} accepted`];
  if (type === "array")
    return value.flatMap((each: Loose, i: number) => faultsOf(each, schema.items, root, `${path}[${i}]`));
  if (type !== "object") return [];
  const missing = schema.required
    .filter((key: string) => !Object.hasOwn(value, key))
    .map((key: string) => `${path}.${key}: missing`);
  const inner = Object.entries(value).flatMap(([key, each]) => {
    const known = schema.properties[key];
    const at = `${path}.${key}`;
    return known === undefined ? [`${at}: not in the schema`] : faultsOf(each, known, root, at);
  });
  return [...missing, ...inner];
}
