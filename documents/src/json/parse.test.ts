import fc from "fast-check";
import { expect, test } from "vitest";
import { parseJson } from "./parse.js";

const foundOf = (text: string) => parseJson(text).faults.map((fault) => `${fault.code}: ${fault.found}`);

test("parseJson() reads what JSON.parse reads", () => {
  const json = fc.json({ maxDepth: 6 });
  fc.assert(
    fc.property(json, (text) => {
      if (text.includes("__proto__")) return;
      const parsed = parseJson(text);
      expect(parsed.ok && parsed.value).toStrictEqual(JSON.parse(text));
    }),
    { numRuns: 500 },
  );
});

test("parseJson() accepts and refuses the same texts as JSON.parse", () => {
  const near = fc.string({ unit: fc.constantFrom(...'{}[]",:0123.eE-+tfn\\u ab'), maxLength: 12 });
  fc.assert(
    fc.property(near, (text) => {
      let accepted = true;
      try {
        JSON.parse(text);
      } catch {
        accepted = false;
      }
      expect(parseJson(text).ok, text).toBe(accepted);
    }),
    { numRuns: 5000 },
  );
});

test("parseJson() names line and column of a syntax error", () => {
  expect(foundOf('{\n  "a": 1,\n  b: 2\n}')).toEqual(['json-syntax: "b: 2" at line 3, column 3']);
  expect(foundOf('{ "a": [1, 2')).toEqual(["json-syntax: the end of the file at line 1, column 13"]);
  expect(foundOf("")).toEqual(["json-syntax: the end of the file at line 1, column 1"]);
  expect(foundOf('{ "a": NaN }')).toEqual(['json-syntax: "NaN }" at line 1, column 8']);
});

test("parseJson() refuses deep nesting without running out of stack", () => {
  expect(foundOf("[".repeat(1_000_000))[0]).toMatch(/^too-deep/);
  expect(parseJson(`${"[".repeat(64)}${"]".repeat(64)}`).ok).toBe(true);
  expect(parseJson(`${"[".repeat(65)}${"]".repeat(65)}`).ok).toBe(false);
});

test("parseJson() reports keys that stand twice and __proto__, and applies neither", () => {
  const parsed = parseJson('{ "a": 1, "a": 2, "b": { "__proto__": { "polluted": 1 } } }');
  expect(parsed.faults.map((fault) => [fault.code, fault.path])).toEqual([
    ["duplicate-key", "a"],
    ["key-refused", "b.__proto__"],
  ]);
  expect(parsed.ok && parsed.value).toEqual({ a: 1, b: {} });
  expect(({} as Record<string, unknown>)["polluted"]).toBeUndefined();
});
