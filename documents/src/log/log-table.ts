import type { Fault } from "../issue.js";
import { findHeadings, type Headings } from "./find-headings.js";
import { logBytes } from "./log-bytes.js";
import { countLines, LONGEST_LINE } from "./log-lines.js";
import type { LogLayout } from "./log-types.js";
import { readSample, type Sample } from "./sample-columns.js";
import { sampleLines } from "./sample-lines.js";
import { sniffSigns } from "./sniff-layout.js";

/** Rows beyond are not read: at 200 a second they last seven hours. */
export const MOST_ROWS = 5_000_000;

/** A log as a table: its bytes, how they are laid out, its headings and rows that stand for all of them. */
export interface LogTable {
  readonly bytes: Uint8Array;
  readonly end: number;
  readonly layout: LogLayout;
  readonly headings: Headings;
  /** Bound of the number of rows. */
  readonly lines: number;
  readonly sample: Sample;
}

export type OpenedLog = { readonly ok: true; readonly table: LogTable } | { readonly ok: false; readonly fault: Fault };

/** Finds out how a log is laid out. */
export function openLog(given: Uint8Array | string): OpenedLog {
  const text = logBytes(given);
  if (!text.ok) return { ok: false, fault: text.faults[0]! };
  const { bytes, start, end } = text;
  const lines = countLines(bytes, start, end);
  if (lines > MOST_ROWS) return refuse("too-many-rows", `${lines} lines`, `at most ${MOST_ROWS}`);
  const chosen = sampleLines(bytes, start, end, lines);
  if (chosen.count === 0)
    return refuse("line-too-long", `no line of less than ${LONGEST_LINE} bytes`, "a row of figures on each line");
  const signs = sniffSigns(bytes, chosen);
  if (signs === null) return refuse("one-column", "one column", "a column of the time and one of what was measured");
  const sample = readSample(bytes, chosen, signs);
  const headings = findHeadings({ bytes, start, end, signs, sample });
  if (sample.numbers.length === 0 || headings === null)
    return refuse("no-figures", "no column of figures", "rows of figures");
  const { headingLine, firstLine } = headings;
  return { ok: true, table: { bytes, end, layout: { ...signs, headingLine, firstLine }, headings, lines, sample } };
}

function refuse(code: string, found: string, accepted: string): OpenedLog {
  return { ok: false, fault: { path: "", code, found, accepted, example: '"time (s),height (m)"' } };
}
