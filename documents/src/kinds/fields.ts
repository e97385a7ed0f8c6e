import * as z from "zod";
import { parseQuantity, type QuantityIssue } from "../quantity/parse.js";
import { type Dimension, units } from "../quantity/units.js";
import { quantityWords, within } from "../words/accepted.en.js";

z.config({ jitless: true });

/** What a field accepts, in words, with an example: kept beside its schema for messages. */
export interface FieldFacts {
  readonly accepted: string;
  /** As JSON; empty where there is none. */
  readonly example: string;
  /** Of a quantity: what it may measure, and its range. */
  readonly dimensions?: readonly Dimension[];
  readonly limits?: QuantityLimits;
}

/** The facts of every field whose schema does not say them by itself. */
export const fieldFacts = z.registry<FieldFacts>();

/** Limits of a quantity, written as the flyer would write them. */
export interface QuantityLimits {
  readonly above?: string;
  readonly from?: string;
  readonly to?: string;
  /** A value to show where the field is wrong. */
  readonly example?: string;
}

/**
 * A field that holds a quantity with its unit, kept as it was typed.
 *
 * @param dimension what it measures, or the dimensions of which it may measure one
 * @param limits the range that is accepted and an example
 */
export function quantity(dimension: Dimension | readonly Dimension[], limits: QuantityLimits = {}): z.ZodString {
  const dimensions: readonly Dimension[] = typeof dimension === "string" ? [dimension] : dimension;
  const range = within(limits);
  const words = dimensions.map((each) => quantityWords[each].accepted).join(", or ");
  const accepted = range === "" ? words : `${words}, ${range}`;
  const example = limits.example ?? quantityWords[dimensions[0] ?? "length"].example;
  const schema = z.string().superRefine((text, context) => {
    const issue = quantityIssue(text, dimensions, limits, { accepted, example });
    if (issue !== undefined) context.addIssue({ code: "custom", params: { ...issue } });
  });
  // `meta` would make a copy, and there are hundreds of quantities
  z.globalRegistry.add(schema, { pattern: quantityPattern(dimensions), examples: [example] });
  return schema.register(fieldFacts, { accepted, example: JSON.stringify(example), dimensions, limits });
}

function quantityIssue(
  text: string,
  dimensions: readonly Dimension[],
  limits: QuantityLimits,
  facts: FieldFacts,
): (FieldFacts & { readonly code: string }) | undefined {
  let first: QuantityIssue | undefined;
  for (const dimension of dimensions) {
    const parsed = parseQuantity(text, dimension, facts.example);
    if (!parsed.ok) {
      first ??= parsed.issue;
      continue;
    }
    const inside =
      (limits.above === undefined || parsed.value > limit(limits.above, dimension)) &&
      (limits.from === undefined || parsed.value >= limit(limits.from, dimension)) &&
      (limits.to === undefined || parsed.value <= limit(limits.to, dimension));
    return inside ? undefined : { ...facts, code: "out-of-range", example: JSON.stringify(facts.example) };
  }
  if (first === undefined) return undefined;
  const ranged = first.code === "beyond-bounds" && within(limits) !== "";
  const { accepted } = dimensions.length > 1 || ranged ? facts : first;
  return { code: first.code, accepted, example: JSON.stringify(facts.example) };
}

/** A limit that is of another dimension than the text bounds nothing but its sign. */
function limit(text: string, dimension: Dimension): number {
  const parsed = parseQuantity(text, dimension);
  return parsed.ok ? parsed.value : Number.parseFloat(text);
}

/** A regular expression by which editors can tell a quantity from a bare number. */
function quantityPattern(dimensions: readonly Dimension[]): string {
  const symbols = dimensions.flatMap((each) => units[each].flatMap((unit) => [unit.symbol, ...unit.also]));
  const squares = symbols.filter((symbol) => symbol.endsWith("2")).flatMap((symbol) => squareForms(symbol));
  const all = [...new Set([...symbols, ...squares, ...(dimensions.includes("length") ? ["µm", "μm"] : [])])];
  const escaped = all.map((symbol) => symbol.replace(/[.*+?^$(){}|[\]\\/]/g, "\\$&"));
  return `^\\s*[-+−]?\\s*[.,0-9½¼¾⅛⅜⅝⅞].*(${escaped.join("|")})\\s*$`;
}

function squareForms(symbol: string): string[] {
  const forms = [symbol.replaceAll("2", "²"), symbol.replaceAll("2", "^2")];
  return [...forms, ...[symbol, ...forms].map((form) => form.replace(" ", "·"))];
}

/** A short text. */
export function text(most = 200): z.ZodString {
  return z
    .string()
    .trim()
    .min(1)
    .max(most)
    .register(fieldFacts, { accepted: `a text of 1 to ${most} letters`, example: "" });
}

/** A pure number in a range, ends included. */
export function number(least: number, most: number, example: number): z.ZodNumber {
  const accepted = `a number from ${least} to ${most}`;
  return z
    .number()
    .min(least)
    .max(most)
    .register(fieldFacts, { accepted, example: String(example) });
}

/** A whole number in a range, ends included. */
export function count(least: number, most: number, example: number): z.ZodInt {
  const accepted = `a whole number from ${least} to ${most}`;
  return z
    .int()
    .min(least)
    .max(most)
    .register(fieldFacts, { accepted, example: String(example) });
}

/** Yes or no. */
export function yesNo(): z.ZodBoolean {
  return z.boolean().register(fieldFacts, { accepted: "true or false", example: "true" });
}

/** A relative path to another file. */
export function filePath(example: string): z.ZodString {
  return z
    .string()
    .trim()
    .min(1)
    .max(1000)
    .register(fieldFacts, { accepted: "the relative path of a file", example: JSON.stringify(example) });
}

/** A calendar day, `2026-05-02`. */
export function day(): z.ZodString {
  return z
    .string()
    .regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/)
    .register(fieldFacts, { accepted: "a day as year-month-day", example: '"2026-05-02"' });
}

/** A time of day, `11:30`. */
export function timeOfDay(): z.ZodString {
  return z
    .string()
    .regex(/^([01]?\d|2[0-3]):[0-5]\d$/)
    .register(fieldFacts, { accepted: "a time of day in hours and minutes", example: '"11:30"' });
}

/** A distance to something that may not be there: a quantity, or none. */
export function lengthOrNone(example: string, limits: QuantityLimits = { from: "0 m", to: "1000 km" }) {
  return z
    .union([z.literal("none"), quantity("length", { ...limits, example })])
    .register(fieldFacts, { accepted: 'a length with its unit, or "none"', example: JSON.stringify(example) });
}

/** A moment, `2026-05-02T10:12`, with or without seconds and zone. */
export function moment(): z.ZodString {
  return z
    .string()
    .regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d(:[0-5]\d(\.\d+)?)?(Z|[+-]\d\d:\d\d)?$/)
    .register(fieldFacts, { accepted: "a day and time", example: '"2026-05-02T10:12"' });
}

/** What every document starts with. */
export function head<const Kind extends string>(kind: Kind) {
  return {
    $schema: z.string().max(1000).optional().describe("The JSON Schema of this kind of document, for editors."),
    kind: z.literal(kind).describe("What this document is."),
    version: z.literal(1).describe("Version of the kind, so that later programs still read it."),
    name: text().describe("What you call it."),
    note: z.string().max(10_000).optional().describe("Anything worth remembering."),
  };
}
