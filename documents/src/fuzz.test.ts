import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { demoFiles, field, motor, motorInHand, plan, rocket, tool } from "../test/fixtures.js";
import { loadPlan } from "./load-plan.js";
import { readDocument } from "./read.js";
import { planToEngine } from "./to-engine.js";
import { issueLine } from "./words/issues.en.js";

/** Every path to a leaf or a branch of a document. */
function paths(value: unknown, base: readonly (string | number)[] = []): (string | number)[][] {
  if (typeof value !== "object" || value === null) return [[...base]];
  const keys = Array.isArray(value) ? value.map((_, index) => index) : Object.keys(value);
  return [
    ...(base.length > 0 ? [[...base]] : []),
    ...keys.flatMap((key) => paths((value as Record<string | number, unknown>)[key], [...base, key])),
  ];
}

function replaced(document: unknown, path: readonly (string | number)[], value: unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return value;
  if (typeof document !== "object" || document === null) return document;
  const copy: Record<string | number, unknown> = Array.isArray(document) ? ([...document] as never) : { ...document };
  if (value === undefined && rest.length === 0) delete copy[key];
  else copy[key] = replaced(copy[key], rest, value);
  return copy;
}

const hostile = fc.oneof(
  fc.constantFrom<unknown>(
    undefined,
    null,
    0,
    -1,
    1e308,
    "",
    "0 m",
    "-1 m",
    "1e300 m",
    "0 kg",
    "1e-9 m",
    "1e-9 kg",
    "50 m",
    "none",
    [],
    {},
    true,
    "90 deg",
    "0 s",
    "60 s",
    "20 degF",
  ),
  fc.jsonValue({ maxDepth: 2 }),
  fc.string({ maxLength: 20 }),
  fc
    .tuple(
      fc.double({ min: -1e4, max: 1e4, noNaN: true }),
      fc.constantFrom("m", "mm", "kg", "s", "N", "deg", "m/s", "degC", "hPa", "in"),
    )
    .map(([number, unit]) => `${number} ${unit}`),
);

/** Every number anywhere in the engine's inputs. */
function numbers(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(numbers) : [];
}

const files = {
  "plan.json": { ...plan, motor: "bag-3.json" },
  "demo.rocket.json": rocket,
  "demo-h150.motor.json": motor,
  "bag-3.json": motorInHand,
  "two-collar.tool.json": tool,
  "larkmoor.field.json": field,
};
const mutation = fc
  .constantFrom(...(Object.keys(files) as (keyof typeof files)[]))
  .chain((file) => fc.tuple(fc.constant(file), fc.constantFrom(...paths(files[file])), hostile));

describe("fuzzed documents", () => {
  test("never throw, never give NaN, and are explained where they are refused", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(mutation, { minLength: 1, maxLength: 3 }), async (mutations) => {
        const changed: Record<string, unknown> = { ...files };
        for (const [file, path, value] of mutations) changed[file] = replaced(changed[file], path, value);
        const loaded = await loadPlan("plan.json", demoFiles(changed));
        expect(loaded.parts !== undefined || loaded.issues.length > 0).toBe(true);
        for (const issue of loaded.issues) expect(issueLine(issue)).not.toMatch(/undefined|NaN|\[object/);
        if (loaded.parts === undefined) return;
        const result = planToEngine(loaded.parts);
        if (result.ok) expect(numbers(result.inputs).some(Number.isNaN)).toBe(false);
        else expect(result.issues.length).toBeGreaterThan(0);
      }),
      { numRuns: 1500 },
    );
  });

  test("readDocument() never throws on any JSON, nor on any text", () => {
    fc.assert(
      fc.property(fc.oneof(fc.json({ maxDepth: 5 }), fc.string({ maxLength: 200 })), (text) => {
        const result = readDocument(text, { file: "a.json" });
        expect(result.state === "ready" || result.issues.length > 0).toBe(true);
      }),
      { numRuns: 1500 },
    );
  });

  test("readDocument() of a kind with random fields never throws", () => {
    const kind = fc.constantFrom(
      "plan",
      "rocket",
      "motor",
      "motor-in-hand",
      "tool",
      "field",
      "flyer",
      "log",
      "flight",
      "library",
    );
    const keys = fc.constantFrom(
      "rocket",
      "motor",
      "delay",
      "fins",
      "guide",
      "weather",
      "readings",
      "ends",
      "columns",
      "documents",
      "constructor",
      "toString",
    );
    fc.assert(
      fc.property(kind, fc.dictionary(keys, fc.jsonValue({ maxDepth: 4 })), (each, fields) => {
        const text = JSON.stringify({ kind: each, version: 1, name: "x", ...fields });
        expect(readDocument(text, { file: "a.json" }).state).not.toBe("unreadable");
      }),
      { numRuns: 1000 },
    );
  });

  test("the same plan in other units gives the same inputs, to 1e-12", async () => {
    const imperial = {
      ...rocket,
      diameter: `${76 / 25.4} in`,
      length: `${1.52 / 0.3048} ft`,
      massWithoutMotor: `${1.95 / 0.45359237} lb`,
      roughness: `${20e-6 / 0.0254} in`,
      balanceWithoutMotor: "86 cm",
    };
    const numbersOf = async (changed: Record<string, unknown>) => {
      const { parts } = await loadPlan("plan.json", demoFiles(changed));
      const result = parts && planToEngine(parts);
      return result?.ok ? numbers(result.inputs) : [];
    };
    const [a, b] = [await numbersOf({}), await numbersOf({ "demo.rocket.json": imperial })];
    expect(a.length).toBeGreaterThan(60);
    expect(b).toHaveLength(a.length);
    a.forEach((value, index) => {
      const other = b[index] ?? Number.NaN;
      expect(value === other || Math.abs(other / value - 1) <= 1e-12).toBe(true);
    });
  });

  test.each([
    ["unknown fields", `{${Array.from({ length: 250_000 }, (_, index) => `"field${index}":1`).join(",")}}`],
    ["fins", `{"fins":[${"{},".repeat(300_000)}{}]}`],
    ["numbers", `{"thrust":{"time":[${"-1,".repeat(600_000)}0],"newtons":[0]}}`],
    ["documents", `{"documents":[${'{"kind":1},'.repeat(200_000)}{}]}`],
  ])("a file full of %s is refused, and soon enough", (_, fields) => {
    const kinds = ["plan", "rocket", "motor", "library"];
    for (const kind of kinds) {
      const start = performance.now();
      const result = readDocument(`${fields.slice(0, -1)},"kind":"${kind}","version":1,"name":"x"}`, {
        file: "a.json",
      });
      expect(result.state).toBe("invalid");
      expect(performance.now() - start, kind).toBeLessThan(20_000);
    }
  });
});
