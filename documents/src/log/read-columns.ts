import type { LogMark } from "@delaywright/engine";
import { shorten, show } from "../issue.js";
import {
  type Cells,
  cellText,
  isBlankLine,
  isComment,
  LONGEST_LINE,
  lineEnd,
  newCells,
  nextLine,
  splitLine,
} from "./log-lines.js";
import { clockIn, isMissing, numberIn } from "./log-number.js";
import type { LogTable } from "./log-table.js";
import { textAt } from "./log-text.js";
import type { LogQuantity, UnreadText } from "./log-types.js";
import type { MeasuredQuantity } from "./log-units.js";
import type { Choice } from "./match-headings.js";

/** So many of what could not be read are told with their lines. */
const TOLD = 20;
const MOST_MARKS = 500;
/** Times beyond are no times in any unit. */
const LATEST = 1e18;
const NOON = 43_200;

/** Lines or cells of one sort: how many, and the first of them. */
export interface Tally {
  count: number;
  readonly first: UnreadText[];
}

/** The columns of a log as they stand. */
export interface RawColumns {
  readonly rows: number;
  readonly values: ReadonlyMap<MeasuredQuantity, Float64Array>;
  /** Times of marks as they stand. */
  readonly marks: readonly LogMark[];
  readonly tooManyMarks: boolean;
  readonly skipped: Tally;
  /** By column. */
  readonly unread: ReadonlyMap<number, Tally>;
  /** Rows that end before the last column that is read. */
  readonly ragged: Tally;
  /** Rows that go on behind the last column of the file: a sign in a number may have parted it. */
  readonly long: Tally;
  /** Columns of the file: those that its headings name, without any those that most rows fill. */
  readonly width: number;
  /** Steps of the time forward and back. */
  readonly forward: number;
  readonly back: Tally;
}

const newTally = (): Tally => ({ count: 0, first: [] });

function tell(tally: Tally, line: number, found: () => string): void {
  if (tally.count++ < TOLD) tally.first.push({ line, found: found() });
}

function sameBytes(bytes: Uint8Array, [a, aTo]: readonly [number, number], [b, bTo]: readonly [number, number]) {
  if (aTo - a !== bTo - b) return false;
  for (let k = 0; k < aTo - a; k++) if (bytes[a + k] !== bytes[b + k]) return false;
  return true;
}

/** Neither empty nor a flag taken down. */
function saysSomething(bytes: Uint8Array, [from, to]: readonly [number, number]): boolean {
  return to - from > 1 || (to - from === 1 && bytes[from] !== 48);
}

function shownLine(bytes: Uint8Array, from: number, stop: number): string {
  return show(shorten(textAt(bytes, from, Math.min(stop, from + 200)), 60));
}

/** Whether a log's time is a clock's: `12:04:07.25`. */
export function isClock({ sample }: LogTable, choice: Choice): boolean {
  const column = sample.columns[choice.get("time")?.index ?? -1];
  return column !== undefined && column.clocks > 0.5 * column.filled;
}

/** How many columns a file has; empty ones at its end do not count. */
function widthOf({ headings, sample }: LogTable): number {
  const named = headings.names.findLastIndex((name) => name !== "") + 1;
  return named > 0 ? named : sample.columns.findLastIndex(({ filled }) => filled >= 0.5 * sample.rows) + 1;
}

/** Whether something stands in a row behind so many cells. */
function goesOn({ from, to, count }: Cells, width: number): boolean {
  for (let c = width; c < count; c++) if (to[c]! > from[c]!) return true;
  return false;
}

/** Reads the chosen columns of all rows: figures as they stand, NaN where none stands; rows without a time are passed over. */
export function readColumns(table: LogTable, choice: Choice): RawColumns {
  const { bytes, end, layout, headings, lines } = table;
  const [sign, point] = [layout.delimiter.charCodeAt(0), layout.decimal.charCodeAt(0)];
  const timeAt = choice.get("time")!.index;
  const marksAt = choice.get("marks")?.index;
  const timeIn = isClock(table, choice) ? clockIn : numberIn;
  const columns = ([...choice] as [LogQuantity, { index: number }][])
    .filter((each): each is [MeasuredQuantity, { index: number }] => each[0] !== "marks" && each[0] !== "time")
    .map(([quantity, { index }]) => ({ quantity, index, values: new Float64Array(lines), unread: newTally() }));
  const last = Math.max(timeAt, ...columns.map(({ index }) => index));
  const width = widthOf(table);
  const time = new Float64Array(lines);
  const [skipped, ragged, long, back] = [newTally(), newTally(), newTally(), newTally()];
  const marks: LogMark[] = [];
  const cells = newCells();
  let [rows, forward, dropped, day] = [0, 0, 0, 0];
  let mark: readonly [number, number] | null = null;
  let at = headings.rowsFrom;
  for (let line = layout.firstLine; at < end; line++) {
    const [from, stop] = [at, lineEnd(bytes, at, end)];
    at = nextLine(bytes, stop, end);
    if (isBlankLine(bytes, from, stop) || isComment(bytes, from, stop, sign)) continue;
    if (stop - from > LONGEST_LINE) {
      tell(skipped, line, () => `${stop - from} bytes`);
      continue;
    }
    splitLine(bytes, from, stop, sign, cells);
    const now: number =
      timeAt < cells.count ? timeIn(bytes, cells.from[timeAt]!, cells.to[timeAt]!, point) : Number.NaN;
    if (!(Math.abs(now) < LATEST)) {
      tell(skipped, line, () => shownLine(bytes, from, stop));
      continue;
    }
    if (rows > 0) {
      const step = now + day - time[rows - 1]!;
      if (timeIn === clockIn && step < -NOON) day += 2 * NOON;
      else if (step > 0) forward++;
      else if (step < 0) tell(back, line, () => show(cellText(bytes, cells, timeAt)));
    }
    time[rows] = now + day;
    if (cells.count <= last) tell(ragged, line, () => `${cells.count} cells`);
    else if (cells.count > width && goesOn(cells, width)) tell(long, line, () => shownLine(bytes, from, stop));
    for (const column of columns) {
      const { index, values, unread } = column;
      let value = Number.NaN;
      if (index < cells.count) {
        const [start, to] = [cells.from[index]!, cells.to[index]!];
        value = numberIn(bytes, start, to, point);
        if (!Number.isFinite(value)) {
          if (!Number.isNaN(value) || !isMissing(bytes, start, to))
            tell(unread, line, () => show(shorten(cellText(bytes, cells, index), 40)));
          value = Number.NaN;
        }
      }
      values[rows] = value;
    }
    if (marksAt !== undefined) {
      const here =
        marksAt < cells.count ? ([cells.from[marksAt]!, cells.to[marksAt]!] as const) : ([stop, stop] as const);
      if (mark !== null && !sameBytes(bytes, mark, here) && saysSomething(bytes, here)) {
        if (marks.length === MOST_MARKS) dropped++;
        else marks.push({ time: now + day, text: shorten(textAt(bytes, ...here), 60) });
      }
      mark = here;
    }
    rows++;
  }
  const values = new Map<MeasuredQuantity, Float64Array>([["time", time.subarray(0, rows)]]);
  for (const { quantity, values: read } of columns) values.set(quantity, read.subarray(0, rows));
  return {
    rows,
    values,
    marks: dropped > 0 ? [] : marks,
    tooManyMarks: dropped > 0,
    skipped,
    unread: new Map(columns.map(({ index, unread }) => [index, unread])),
    ragged,
    long,
    width,
    forward,
    back,
  };
}
