import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { field, type Loose, motor, motorInHand, plan, rocket, tool } from "../test/fixtures.js";
import { kindNames } from "./kinds/kinds.js";
import { jsonSchemaOf } from "./schemas.js";

interface Node {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Node>>;
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly pattern?: string;
  readonly anyOf?: readonly Node[];
  readonly items?: Node;
  readonly prefixItems?: readonly Node[];
  readonly properties?: Readonly<Record<string, Node>>;
  readonly required?: readonly string[];
  readonly description?: string;
  readonly examples?: readonly string[];
}

/** A small check of the keywords that these schemas use: the paths that do not fit. */
function misfits(value: unknown, node: Node, root: Node, path = "$"): string[] {
  if (node.$ref !== undefined) return misfits(value, root.$defs?.[node.$ref.replace("#/$defs/", "")] ?? {}, root, path);
  if (node.anyOf !== undefined) {
    const branches = node.anyOf.map((branch) => misfits(value, branch, root, path));
    return branches.some((branch) => branch.length === 0) ? [] : [`${path}: no branch`];
  }
  if ("const" in node) return value === node.const ? [] : [`${path}: const`];
  if (node.enum !== undefined) return node.enum.includes(value) ? [] : [`${path}: enum`];
  if (node.type === "string") {
    if (typeof value !== "string") return [`${path}: not a string`];
    return node.pattern === undefined || new RegExp(node.pattern, "u").test(value) ? [] : [`${path}: pattern`];
  }
  if (node.type === "array") {
    if (!Array.isArray(value)) return [`${path}: not an array`];
    return value.flatMap((each, index) =>
      misfits(each, node.prefixItems?.[index] ?? node.items ?? {}, root, `${path}[${index}]`),
    );
  }
  if (node.type === "object") {
    if (typeof value !== "object" || value === null) return [`${path}: not an object`];
    const object = value as Loose;
    const missing = (node.required ?? []).filter((key) => !(key in object)).map((key) => `${path}: ${key} missing`);
    const known = node.properties ?? {};
    return [
      ...missing,
      ...Object.entries(object).flatMap(([key, each]) =>
        known[key] === undefined ? [`${path}.${key}: unknown`] : misfits(each, known[key], root, `${path}.${key}`),
      ),
    ];
  }
  return [];
}

const schemaOf = (kind: (typeof kindNames)[number]) => jsonSchemaOf(kind) as Node;

describe("jsonSchemaOf()", () => {
  test.each(kindNames)("is what schemas/%s.schema.json holds: run `npm run schemas`", (kind) => {
    const written = readFileSync(new URL(`../schemas/${kind}.schema.json`, import.meta.url), "utf8");
    expect(JSON.parse(written)).toEqual(jsonSchemaOf(kind));
  });

  test("is of draft 2020-12 and takes $schema", () => {
    for (const kind of kindNames) {
      const schema = jsonSchemaOf(kind);
      expect(schema["$schema"]).toBe("https://json-schema.org/draft/2020-12/schema");
      expect(Object.keys(schema["properties"] as object)).toContain("$schema");
    }
  });

  test("takes the documents of the design", () => {
    const documents = { plan, rocket, motor, "motor-in-hand": motorInHand, tool, field } as const;
    for (const [kind, document] of Object.entries(documents)) {
      const schema = schemaOf(kind as keyof typeof documents);
      expect(misfits(document, schema, schema)).toEqual([]);
    }
    const schema = schemaOf("plan");
    expect(misfits({ ...plan, rocket, motor: { ...motorInHand, type: motor } }, schema, schema)).toEqual([]);
  });

  test("refuses a bare number for a quantity, and unknown fields", () => {
    const schema = schemaOf("rocket");
    expect(misfits({ ...rocket, diameter: "76" }, schema, schema)).toEqual(["$.diameter: pattern"]);
    expect(misfits({ ...rocket, colour: "red" }, schema, schema)).toEqual(["$.colour: unknown"]);
  });

  test("has patterns that take every way of writing a quantity", () => {
    const schema = schemaOf("rocket");
    for (const text of ["76 mm", "3in", "2 1/8 in", '3"', ".5 m", "½ in", "1,5 m", "20 µm", "5 ft 3 in", "+7e-2 m"]) {
      expect(misfits({ ...rocket, diameter: text }, schema, schema), text).toEqual([]);
    }
    for (const text of ["0.36 kg m2", "0.36 kg·m²", "0.36 kg m^2", "3600 kg cm2"]) {
      expect(misfits({ ...rocket, inertiaWithoutMotor: text }, schema, schema), text).toEqual([]);
    }
  });

  test("describes every field", () => {
    const undescribed: string[] = [];
    const look = (node: Node, root: Node, path: string): void => {
      const target = node.$ref === undefined ? node : (root.$defs?.[node.$ref.replace("#/$defs/", "")] ?? {});
      for (const branch of target.anyOf ?? []) look(branch, root, path);
      if (target.items !== undefined) look(target.items, root, `${path}[]`);
      for (const [key, each] of Object.entries(target.properties ?? {})) {
        const inner = each.$ref === undefined ? each : (root.$defs?.[each.$ref.replace("#/$defs/", "")] ?? {});
        if ((each.description ?? inner.description ?? "") === "") undescribed.push(`${path}.${key}`);
        look(each, root, `${path}.${key}`);
      }
    };
    for (const kind of kindNames) look(schemaOf(kind), schemaOf(kind), kind);
    expect(undescribed.filter((path) => !path.endsWith("documents[].kind"))).toEqual([]);
  });
});
