import { textAt } from "./log-text.js";

/** Columns beyond are not looked at. */
export const MOST_COLUMNS = 500;

/** Longer lines are none [bytes]. */
export const LONGEST_LINE = 65_536;

/** Where the cells of a line stand: without blanks and quotes around them. */
export interface Cells {
  readonly from: Int32Array;
  readonly to: Int32Array;
  count: number;
}

export function newCells(): Cells {
  return { from: new Int32Array(MOST_COLUMNS), to: new Int32Array(MOST_COLUMNS), count: 0 };
}

/** The end of a line: where its sign stands, or the end of the file. */
export function lineEnd(bytes: Uint8Array, from: number, end: number): number {
  let i = from;
  while (i < end && bytes[i] !== 10 && bytes[i] !== 13) i++;
  return i;
}

/** Where the next line starts: lines end with CR, LF, or both. */
export function nextLine(bytes: Uint8Array, at: number, end: number): number {
  return Math.min(end, bytes[at] === 13 && bytes[at + 1] === 10 ? at + 2 : at + 1);
}

/** An upper bound of the lines in a log. */
export function countLines(bytes: Uint8Array, start: number, end: number): number {
  let lines = 1;
  for (let i = start; i < end; i++) {
    const byte = bytes[i];
    if (byte === 10 || (byte === 13 && bytes[i + 1] !== 10)) lines++;
  }
  return lines;
}

const blank = (byte: number | undefined) => byte === 32 || byte === 9;

/** Whether nothing stands between two places. */
export function isBlankLine(bytes: Uint8Array, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (!blank(bytes[i])) return false;
  return true;
}

/** Whether a line is a remark: it starts with `#`, `//`, `%`, or with `;` where that parts no columns. */
export function isComment(bytes: Uint8Array, from: number, to: number, delimiter: number): boolean {
  let i = from;
  while (i < to && blank(bytes[i])) i++;
  const byte = bytes[i];
  return byte === 35 || byte === 37 || (byte === 47 && bytes[i + 1] === 47) || (byte === 59 && delimiter !== 59);
}

/**
 * Finds the cells of one line.
 *
 * A quote that opens a cell ends within its line, so that one that is left open spoils one line only.
 *
 * @param delimiter code of the sign; a blank stands for any number of blanks
 */
export function splitLine(bytes: Uint8Array, from: number, to: number, delimiter: number, cells: Cells): void {
  const byBlanks = delimiter === 32;
  let count = 0;
  let i = from;
  while (count < MOST_COLUMNS) {
    while (i < to && blank(bytes[i]) && bytes[i] !== delimiter) i++;
    if (byBlanks) {
      while (i < to && blank(bytes[i])) i++;
      if (i >= to) break;
    }
    let start = i;
    let stop: number;
    if (bytes[i] === 34 && i < to) {
      start = ++i;
      while (i < to && (bytes[i] !== 34 || bytes[i + 1] === 34)) i += bytes[i] === 34 ? 2 : 1;
      stop = Math.min(i, to);
      while (i < to && bytes[i] !== delimiter && !(byBlanks && bytes[i] === 9)) i++;
    } else {
      while (i < to && bytes[i] !== delimiter && !(byBlanks && bytes[i] === 9)) i++;
      stop = i;
    }
    while (stop > start && blank(bytes[stop - 1])) stop--;
    cells.from[count] = start;
    cells.to[count] = stop;
    count++;
    if (i >= to) break;
    i++;
  }
  cells.count = count;
}

/** A cell as text; doubled quotes in it are one. */
export function cellText(bytes: Uint8Array, cells: Cells, index: number): string {
  return index < cells.count ? textAt(bytes, cells.from[index]!, cells.to[index]!).replaceAll('""', '"') : "";
}
