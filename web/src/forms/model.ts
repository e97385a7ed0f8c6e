import type { Kind } from "@delaywright/documents";
import type { ReactNode } from "react";
import { joinField, type Keyed } from "../parts/field-path.js";

/** One field, shown by the control that fits what it holds. Paths are from where the form stands. */
export interface FieldPart {
  readonly part: "field";
  readonly field: string;
  readonly label: string;
  readonly aside?: string;
  readonly hint?: string;
  /** What counts while it is left out. */
  readonly leftOut?: string;
  /** What its object must have beside it. */
  readonly along?: Keyed;
  /** Other words for choices. */
  readonly words?: Readonly<Record<string, string>>;
  readonly percent?: boolean;
  readonly wind?: boolean;
  readonly long?: boolean;
  /** A text that is a day. */
  readonly day?: boolean;
  /** Yes, no, or not said, where not said means not known. */
  readonly threeWay?: boolean;
  /** Kinds of documents that fit. */
  readonly kinds?: readonly Kind[];
}

/** Rows of a list; the parts inside it are from one row. */
export interface RowsPart {
  readonly part: "rows";
  readonly field: string;
  readonly label: string;
  readonly one: string;
  readonly start: unknown;
  readonly parts: readonly FormPart[];
  readonly hint?: string;
  readonly flat?: boolean;
  readonly fixedOrder?: boolean;
}

/** One way of saying what an object holds. */
export interface Branch {
  readonly id: string;
  readonly label: string;
  /** Keys of the object that belong to it. */
  readonly keys: readonly string[];
  /** Keys by which it is told. */
  readonly start?: Keyed;
  /** Whether an object may be of it; several may fit one that says nothing. */
  readonly matches: (whole: Keyed) => boolean;
  readonly parts: readonly FormPart[];
}

/** Several ways of saying one thing, of which one holds. */
export interface EitherPart {
  readonly part: "either";
  readonly label: string;
  /** The object whose keys it chooses between; empty: where the form stands. */
  readonly at: string;
  readonly branches: readonly Branch[];
  /** Nothing is chosen until the document says so. */
  readonly undecided?: boolean;
  /** Shown as a switch: the second branch is on. */
  readonly turn?: boolean;
  readonly hint?: string;
}

/** Parts behind one line. */
export interface MorePart {
  readonly part: "more";
  readonly label: string;
  readonly aside?: string;
  readonly parts: readonly FormPart[];
}

/** A control of its own, for the fields it names. */
export interface OwnPart {
  readonly part: "own";
  readonly id: string;
  readonly fields: readonly string[];
  readonly show: (path: string, base: string) => ReactNode;
}

/** Lists of numbers side by side. */
export interface ColumnsPart {
  readonly part: "columns";
  readonly field: string;
  readonly label: string;
  readonly columns: readonly { readonly key: string; readonly label: string }[];
}

export type FormPart = FieldPart | RowsPart | EitherPart | MorePart | OwnPart | ColumnsPart;

/** A field of a form. */
export function field(name: string, label: string, more: Omit<FieldPart, "part" | "field" | "label"> = {}): FieldPart {
  return { part: "field", field: name, label, ...more };
}

/** Parts behind one line. */
export function more(label: string, parts: readonly FormPart[], aside?: string): MorePart {
  return { part: "more", label, parts, ...(aside === undefined ? {} : { aside }) };
}

/**
 * Every field that a form reaches, with `[]` for the rows of lists.
 *
 * @example
 * fieldsOf([field("nose.length", "Length")]); // ["nose.length"]
 */
export function fieldsOf(parts: readonly FormPart[], base = ""): string[] {
  return [...new Set(parts.flatMap((part) => fieldsOfOne(part, base)))];
}

function fieldsOfOne(part: FormPart, base: string): string[] {
  switch (part.part) {
    case "field":
      return [joinField(base, part.field)];
    case "rows": {
      const row = `${joinField(base, part.field)}[]`;
      const started = typeof part.start === "object" && part.start !== null ? Object.entries(part.start) : [];
      return [...fieldsOf(part.parts, row), ...started.flatMap(told).map((key) => joinField(row, key))];
    }
    case "either": {
      const at = joinField(base, part.at);
      const keys = part.branches.flatMap(({ start = {} }) => Object.entries(start).flatMap(told));
      return [...keys.map((key) => joinField(at, key)), ...part.branches.flatMap(({ parts }) => fieldsOf(parts, base))];
    }
    case "more":
      return fieldsOf(part.parts, base);
    case "own":
      return part.fields.map((name) => joinField(base, name));
    case "columns":
      return part.columns.map(({ key }) => `${joinField(joinField(base, part.field), key)}[]`);
  }
}

/** The key that a start sets, or the keys inside it. */
function told([key, value]: readonly [string, unknown]): string[] {
  if (Array.isArray(value)) return [];
  if (typeof value !== "object" || value === null) return [key];
  return Object.entries(value)
    .filter(([, inner]) => !Array.isArray(inner))
    .map(([inner]) => joinField(key, inner));
}
