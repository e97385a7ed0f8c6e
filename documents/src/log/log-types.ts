import type { LogSamples } from "@delaywright/engine";
import type { Fault } from "../issue.js";
import type { LogDocument } from "../kinds/log/schema.js";

/** What the columns of a log hold: the `columns` of a log document. */
export type LogMapping = LogDocument["columns"];

/** What a column may hold. */
export type LogQuantity = keyof LogMapping;

/** By what a column was taken for what it is. Codes: words in `words/log.en.ts`. */
export type LogColumnReason =
  | "given"
  | "heading-word"
  | "heading-unit"
  | "rises"
  | "leaves-and-comes-back"
  | "air-pressure"
  | "agrees-with-pressure"
  | "slope-of-height"
  | "rests-at-one-g"
  | "peaks-early"
  | "nearly-constant"
  | "drifts-slowly"
  | "texts"
  | "not-used";

/** By what the unit of a column was chosen. */
export type LogUnitReason =
  | "given"
  | "in-heading"
  | "in-unit-row"
  | "by-form"
  | "sample-rate"
  | "fall-near-apogee"
  | "air-pressure"
  | "agrees-with-pressure"
  | "agrees-with-height"
  | "rests-at-one-g"
  | "plausible"
  | "si";

/** What is not certain about a log. */
export type LogDoubtCode =
  | "column-by-figures"
  | "unit-guessed"
  | "unit-disagrees"
  | "axis-guessed"
  | "reversed"
  | "several-columns"
  | "count-not-time"
  | "height-or-altitude"
  | "time-goes-back"
  | "rows-skipped"
  | "cells-unread"
  | "figures-beyond"
  | "ragged"
  | "rows-too-long"
  | "too-many-marks";

/** One thing about a log that the flyer should look at. */
export interface LogDoubt {
  readonly code: LogDoubtCode;
  /** Which column, from 0; null for the file as a whole. */
  readonly column: number | null;
  /** What the column is taken for; null for the file as a whole. */
  readonly quantity: LogQuantity | null;
  /** What was found, ready to show; empty where there is nothing more to say. */
  readonly found: string;
  /** What it might be instead, or what was expected, ready to show; may be empty. */
  readonly instead: string;
  /** How many rows or cells it concerns; 0 where it concerns none. */
  readonly count: number;
  /** Line of the first of them, from 1; 0 where there is none. */
  readonly line: number;
}

/** A line, or a cell in it, that could not be read. */
export interface UnreadText {
  /** From 1. */
  readonly line: number;
  /** What stands there, shortened, in quotes. */
  readonly found: string;
}

/** A column of a log, and what it is taken for. */
export interface LogColumn {
  /** From 0. */
  readonly index: number;
  /** Empty where there is none. */
  readonly heading: string;
  /** Its first cells that are not empty. */
  readonly cells: readonly string[];
  /** Null: not used. */
  readonly guess: LogQuantity | null;
  readonly why: LogColumnReason;
  /** As a mapping writes it; null where there is none. */
  readonly unit: string | null;
  readonly unitWhy: LogUnitReason | null;
  /** Whether its figures stand the other way round: only acceleration. */
  readonly reversed: boolean;
  /** Texts where a figure should stand: how many, and the first of them. */
  readonly unread: { readonly count: number; readonly first: readonly UnreadText[] };
}

/** How a log's text is laid out. */
export interface LogLayout {
  readonly delimiter: "," | ";" | "\t" | "|" | " ";
  readonly decimal: "." | ",";
  /** Line of the headings, from 1; null where there is none. */
  readonly headingLine: number | null;
  /** Line of the first row, from 1. */
  readonly firstLine: number;
}

/** The first rows of a log and what its columns are taken for: what the flyer confirms. */
export interface LogPreview {
  readonly layout: LogLayout;
  /** As they stand in the file; empty where there is no heading line. */
  readonly headings: readonly string[];
  /** By which a mapping is remembered; empty where there is no heading line. */
  readonly headingsKey: string;
  /** First rows, as cells. */
  readonly lines: readonly { readonly line: number; readonly cells: readonly string[] }[];
  readonly columns: readonly LogColumn[];
  /** Guessed or given, with every unit written out. */
  readonly mapping: LogMapping;
  readonly doubts: readonly LogDoubt[];
}

/** A log as read. */
export interface ReadLogRecord extends LogPreview {
  readonly ok: true;
  readonly samples: LogSamples;
  /** Rows in the samples. */
  readonly rows: number;
  /** First lines that were passed over, comments and blank lines not counted. */
  readonly skipped: readonly UnreadText[];
  /** How many were passed over in all. */
  readonly skippedRows: number;
}

/** What is wrong with a log. The preview is there when the file is a table at all: a mapping may mend it. */
export interface UnreadLog {
  readonly ok: false;
  readonly faults: readonly Fault[];
  readonly preview: LogPreview | null;
}

export type ReadLog = ReadLogRecord | UnreadLog;
