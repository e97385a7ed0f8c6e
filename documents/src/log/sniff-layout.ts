import { type Cells, isComment, newCells, splitLine } from "./log-lines.js";
import { clockIn, isMissing, numberIn } from "./log-number.js";
import type { LogLayout } from "./log-types.js";
import type { SampleLines } from "./sample-lines.js";

export type Delimiter = LogLayout["delimiter"];

/** How columns are parted, and which sign stands before decimals. */
export interface Signs {
  readonly delimiter: Delimiter;
  readonly decimal: LogLayout["decimal"];
}

/** In the order in which they win where figures cannot tell them apart. */
const delimiters: readonly Delimiter[] = ["\t", ";", "|", ",", " "];

/** So many lines are looked at. */
const LOOKED = 400;

const POINT = 46;
const COMMA = 44;

/**
 * Finds the signs of a table: those by which most of what they part are numbers.
 *
 * @returns null where no sign parts the lines into two columns or more
 */
export function sniffSigns(bytes: Uint8Array, lines: SampleLines): Signs | null {
  const tried = delimiters.flatMap((delimiter) => tryDelimiter(bytes, lines, delimiter) ?? []);
  const best = Math.max(...tried.map(({ score }) => score));
  return tried.find(({ score }) => score >= best - 0.02)?.signs ?? null;
}

function tryDelimiter(bytes: Uint8Array, lines: SampleLines, delimiter: Delimiter) {
  const code = delimiter.charCodeAt(0);
  const cells = newCells();
  const step = Math.max(1, Math.floor(lines.count / LOOKED));
  const tally = { filled: 0, points: 0, commas: 0, whole: 0, tables: 0, lines: 0 };
  for (let k = 0; k < lines.count; k += step) {
    const [from, to] = [lines.from[k]!, lines.to[k]!];
    if (isComment(bytes, from, to, code)) continue;
    splitLine(bytes, from, to, code, cells);
    tally.lines++;
    if (cells.count < 2) continue;
    tally.tables++;
    count(bytes, cells, tally);
  }
  if (tally.lines === 0 || tally.tables < tally.lines / 2) return null;
  const decimal: Signs["decimal"] = tally.commas > tally.points ? "," : ".";
  const numbers = tally.whole + (decimal === "," ? tally.commas : tally.points);
  return { signs: { delimiter, decimal }, score: ((numbers / Math.max(1, tally.filled)) * tally.tables) / tally.lines };
}

function count(
  bytes: Uint8Array,
  cells: Cells,
  tally: { filled: number; points: number; commas: number; whole: number },
): void {
  for (let c = 0; c < cells.count; c++) {
    const [from, to] = [cells.from[c]!, cells.to[c]!];
    if (isMissing(bytes, from, to)) continue;
    tally.filled++;
    const [byPoint, byComma] = [POINT, COMMA].map((sign) => isFigure(bytes, from, to, sign)) as [boolean, boolean];
    if (byPoint && byComma) tally.whole++;
    else if (byPoint) tally.points++;
    else if (byComma) tally.commas++;
  }
}

function isFigure(bytes: Uint8Array, from: number, to: number, sign: number): boolean {
  return !Number.isNaN(numberIn(bytes, from, to, sign)) || !Number.isNaN(clockIn(bytes, from, to, sign));
}
