import { type Kind, kinds } from "@delaywright/documents";
import { describe, expect, test } from "vitest";
import { planPackingParts, planRulesParts, planSiteParts } from "./day-parts.js";
import { fieldParts } from "./field-parts.js";
import { headParts } from "./head-parts.js";
import { type FormPart, fieldsOf } from "./model.js";
import { motorInHandParts, motorParts } from "./motor-parts.js";
import {
  flyerParts,
  planBallastParts,
  planChoiceParts,
  planDayParts,
  planGuideParts,
  planHeadParts,
  planLimitsParts,
  planWeatherParts,
} from "./plan-parts.js";
import { rocketParts } from "./rocket-parts.js";
import { ruleSetParts } from "./rule-set-parts.js";
import { planSpreadParts } from "./spread-parts.js";
import { toolParts } from "./tool-parts.js";

interface Definition {
  readonly type: string;
  readonly innerType?: unknown;
  readonly options?: readonly unknown[];
  readonly element?: unknown;
  readonly items?: readonly unknown[];
  readonly shape?: Readonly<Record<string, unknown>>;
}

/** Every leaf that a schema can hold, with `[]` for the rows of lists. A field that takes a document is a leaf. */
function leavesOf(schema: unknown, path: string, references: readonly string[]): string[] {
  if (references.includes(path)) return [path];
  const { type, innerType, options, element, items, shape } = (schema as { readonly def: Definition }).def;
  if (type === "optional") return leavesOf(innerType, path, references);
  if (options !== undefined) return options.flatMap((each) => leavesOf(each, path, references));
  if (element !== undefined) return leavesOf(element, `${path}[]`, references);
  if (items !== undefined) return items.flatMap((each, index) => leavesOf(each, `${path}[${index}]`, references));
  if (shape === undefined) return [path];
  return Object.entries(shape).flatMap(([key, each]) =>
    leavesOf(each, path === "" ? key : `${path}.${key}`, references),
  );
}

const plan = [
  planDayParts,
  planHeadParts,
  planWeatherParts,
  planGuideParts,
  planLimitsParts,
  planChoiceParts,
  planBallastParts,
  planSpreadParts,
  planSiteParts,
  planPackingParts,
  planRulesParts,
].flat();

/** What every document starts with; `blankDocument()` writes it. */
const always = ["$schema", "kind", "version"];
/** What flights taught is taken in from a debrief, never typed. */
const taught = (leaf: string): boolean => leaf.startsWith("learned.");
const leftOut: Readonly<Record<string, readonly string[]>> = {
  // each is chosen at the head of its section
  plan: ["rocket", "motor", "tool", "field"],
  // readings are recorded where the cut is shown, and only ever added
  "motor-in-hand": ["when", "before", "after", "end", "spacers[]", "note"].map((key) => `readings[].${key}`),
};

const forms: readonly (readonly [Kind, readonly FormPart[], number])[] = [
  ["rocket", [...rocketParts, ...headParts], 81],
  ["motor", [...motorParts, ...headParts], 27],
  ["motor-in-hand", [...motorInHandParts, ...headParts], 7],
  ["tool", [...toolParts, ...headParts], 12],
  ["field", [...fieldParts, ...headParts], 29],
  ["plan", plan, 67],
  ["flyer", [...flyerParts, ...headParts], 5],
  ["rule-set", [...ruleSetParts, ...headParts], 10],
];

describe("fieldsOf()", () => {
  test.each(forms)("of the form of a %s names every field of its schema and no other", (kind, parts, count) => {
    const references = Object.keys(kinds[kind].references);
    const besides = [...always, ...(leftOut[kind] ?? [])];
    const leaves = [...new Set(leavesOf(kinds[kind].schema(), "", references))].filter(
      (each) => !besides.includes(each) && !taught(each),
    );
    const reached = fieldsOf(parts);
    expect(leaves.filter((each) => !reached.includes(each))).toEqual([]);
    expect(reached.filter((each) => !leaves.includes(each))).toEqual([]);
    expect(leaves.length).toBe(count);
  });

  test("lists a field once, however many branches show it", () => {
    expect(fieldsOf(rocketParts).filter((each) => each === "fins[].root")).toHaveLength(1);
  });
});
