import { describe, expect, test } from "vitest";
import { field, motor, motorInHand, plan, rocket, tool } from "../../test/fixtures.js";
import { type Kind, kindNames } from "../kinds/kinds.js";
import { issueSentence } from "../words/issues.en.js";
import { checkField } from "./check-field.js";
import { fieldAt } from "./field-at.js";
import { type FieldPath, stepsOf } from "./field-path.js";
import { spellings } from "./spellings.js";

/** Every path that the schema of a kind knows, lists by their first entry. */
function pathsOf(kind: Kind, path: FieldPath = []): FieldPath[] {
  const shape = fieldAt(kind, path);
  if (shape === undefined || path.length > 5) return [];
  const inner = (shape.keys ?? []).flatMap((key) => pathsOf(kind, [...path, key]));
  const first = shape.holds === "list" ? pathsOf(kind, [...path, 0]) : [];
  return [path, ...inner, ...first];
}

/** Every value of a document with its path. */
function leavesOf(value: unknown, path: FieldPath = []): [FieldPath, unknown][] {
  if (typeof value !== "object" || value === null) return [[path, value]];
  const entries: [string | number, unknown][] = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
  return [[path, value], ...entries.flatMap(([key, each]) => leavesOf(each, [...path, key]))];
}

describe("stepsOf()", () => {
  test("reads what an issue says", () => {
    expect(stepsOf("fins[0].points[2][1]")).toEqual(["fins", 0, "points", 2, 1]);
    expect(stepsOf("")).toEqual([]);
    expect(stepsOf(["fins", 0])).toEqual(["fins", 0]);
  });

  test.each(["fins[x]", "fins[-1]", "a..b", "[", "fins[0"])("gives no steps for %s", (path) => {
    expect(stepsOf(path)).toBeUndefined();
  });
});

describe("fieldAt()", () => {
  test("tells what a quantity accepts", () => {
    expect(fieldAt("rocket", "fins[0].root")).toEqual({
      holds: "quantity",
      accepted: "a length with its unit, above 0 mm to 5 m",
      example: "180 mm",
      description: "Chord at the tube.",
      required: true,
      dimension: "length",
      dimensions: ["length"],
      limits: { above: "0 mm", to: "5 m", example: "180 mm" },
    });
    expect(fieldAt("tool", "ends[1].removes")?.dimensions).toEqual(["time", "length"]);
  });

  test("gathers the choices of all branches", () => {
    expect(fieldAt("motor", "delay.kind")?.choices).toEqual(["adjustable", "fixed", "none"]);
    expect(fieldAt("rocket", "nose.shape")?.choices).toContain("haack");
    expect(fieldAt("plan", "weather.gradientHeight")).toMatchObject({ holds: "quantity", choices: ["none"] });
  });

  test("tells ranges, keys and what may be left out", () => {
    expect(fieldAt("rocket", "fins[0].count")?.range).toEqual({ least: 2, most: 16, whole: true });
    expect(fieldAt("plan", "guide")?.keys).toEqual(["travel", "rail", "stop", "tilt", "toward"]);
    expect(fieldAt("plan", "guide")?.required).toBe(true);
    expect(fieldAt("plan", "tool")).toMatchObject({ holds: "reference", required: false });
    expect(fieldAt("motor", "delay.instructions.allowCutting")?.holds).toBe("yes-no");
  });

  test("knows no field that is none, nor one of every object", () => {
    for (const path of ["fin", "fins[0].roots", "__proto__", "constructor", "fins.toString", "fins[x]"])
      expect(fieldAt("rocket", path), path).toBeUndefined();
  });

  test("has words for every field of every kind", () => {
    let count = 0;
    for (const kind of kindNames) {
      for (const path of pathsOf(kind)) {
        count += 1;
        expect(fieldAt(kind, path)?.accepted, `${kind} ${path.join(".")}`).not.toBe("");
      }
    }
    expect(count).toBeGreaterThan(400);
  });
});

describe("checkField()", () => {
  const documents = { rocket, motor, "motor-in-hand": motorInHand, tool, field, plan } as const;

  test("takes every value of the design's documents, one by one", () => {
    let count = 0;
    for (const [kind, document] of Object.entries(documents)) {
      for (const [path, value] of leavesOf(document)) {
        count += 1;
        expect(checkField(kind as Kind, path, value), `${kind} ${path.join(".")}`).toBeUndefined();
      }
    }
    expect(count).toBeGreaterThan(150);
  });

  test("says what is wrong with one field", () => {
    const issue = checkField("rocket", "fins[0].root", "18o mm");
    expect(issue).toMatchObject({ file: "", path: "fins[0].root", code: "unit-unknown", found: '"18o mm"' });
    expect(issueSentence({ ...issue!, path: "" })).toMatch(
      /^this unit is not known: "18o mm" found; .* is accepted, for example "180 mm"$/,
    );
    expect(checkField("rocket", "fins[0].root", "180")?.code).toBe("unit-missing");
    expect(checkField("rocket", "fins[0].root", "9 m")?.code).toBe("out-of-range");
    expect(checkField("rocket", "fins[0].root", undefined)?.code).toBe("missing");
    expect(checkField("rocket", "roughness", undefined)).toBeUndefined();
    expect(checkField("plan", "limits.leastClean", 1.2)?.accepted).toBe("a number from 0 to 1");
    expect(checkField("motor", "delay.kind", "adjustible")?.example).toBe('"adjustable"');
    expect(checkField("rocket", "fins[0].rot", "1 m")?.accepted).toBe("did you mean `root`?");
    expect(checkField("rocket", "fins", [{ count: 3 }])?.path).toBe("fins[0].at");
  });

  test("takes a value that any branch takes", () => {
    expect(checkField("rocket", "inertiaWithoutMotor", "0.36 kg m2")).toBeUndefined();
    expect(checkField("plan", "weather.gradientHeight", "none")).toBeUndefined();
    expect(checkField("plan", "weather.gradientHeight", "nome")?.example).toBe('"300 m"');
  });

  test("judges a club's limit by its rule, one at a time", () => {
    const of = (rule: string, value: unknown) => checkField("rule-set", `limits.${rule}.stop`, value);
    expect(of("wind-limit", "6 m")).toMatchObject({
      path: "limits.wind-limit.stop",
      code: "wrong-dimension",
      found: '"6 m"',
      accepted: "a speed with its unit",
    });
    expect(of("wind-limit", "6")?.code).toBe("unit-missing");
    expect(of("landing-inside", 30)?.accepted).toBe("a number from 0 to 1");
    for (const right of ["6 m/s", "14 mph", "none", undefined]) expect(of("wind-limit", right)).toBeUndefined();
    expect(of("landing-inside", 0.3)).toBeUndefined();
    expect(of("no-such-rule", "6")).toBeUndefined();
    expect(checkField("rule-set", "limits.weather-age", "off")).toBeUndefined();
  });

  test("is fast enough for every keystroke", () => {
    const start = performance.now();
    for (let i = 0; i < 2000; i += 1) checkField("rocket", "fins[0].root", i % 2 === 0 ? "18o mm" : "180 mm");
    expect((performance.now() - start) / 2000, "ms for one").toBeLessThan(0.5);
  });
});

describe("spellings()", () => {
  test.each([
    ["rocket", "fins[0].root", ["180 mm", "7 1/16 in"]],
    ["rocket", "length", ["1.52 m", "59 13/16 in"]],
    ["tool", "depthPerSecond", ["1/32 in", "0.79 mm"]],
    ["plan", "weather.wind", ["2 m/s", "4.5 mph"]],
    ["plan", "weather.temperature", ["12 degC", "54 degF"]],
    ["motor", "delay.longest", ["14 s"]],
    ["plan", "weather.terrain", ["water", "open"]],
    ["plan", "limits.leastClean", ["0.8"]],
    ["rocket", "nose", []],
    ["rocket", "nonsense", []],
  ] as const)("of %s %s", (kind, path, expected) => {
    expect(spellings(kind, path)).toEqual(expected);
  });

  test("of every quantity are right, and in both systems but for times and angles", () => {
    for (const kind of kindNames) {
      for (const path of pathsOf(kind)) {
        const shape = fieldAt(kind, path);
        if (shape?.holds !== "quantity") continue;
        const texts = spellings(kind, path);
        const name = `${kind} ${path.join(".")}: ${texts.join(" | ")}`;
        for (const text of texts) expect(checkField(kind, path, text), name).toBeUndefined();
        const both = shape.dimension !== "time" && shape.dimension !== "angle";
        expect(texts.length, name).toBe(both ? 2 : 1);
      }
    }
  });
});
