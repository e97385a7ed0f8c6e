import { cellText, isComment, newCells, splitLine } from "./log-lines.js";
import { clockIn, isMissing, numberIn } from "./log-number.js";
import type { SampleLines } from "./sample-lines.js";
import type { Signs } from "./sniff-layout.js";

/** One column of the sample. */
export interface SampleColumn {
  readonly index: number;
  /** As it stands, NaN where no number is; a clock's time in seconds. */
  readonly values: Float64Array;
  /** Cells that are not empty, and those of them that are numbers or a clock's times. */
  readonly filled: number;
  readonly figures: number;
  readonly clocks: number;
  /** First cells that are not empty. */
  readonly cells: readonly string[];
}

/** Rows that stand for all of a log. */
export interface Sample {
  readonly columns: readonly SampleColumn[];
  /** Those that hold figures. */
  readonly numbers: readonly SampleColumn[];
  /** Neighbouring rows have the same number. */
  readonly burst: Int32Array;
  readonly rows: number;
}

const SHOWN_CELLS = 4;
const FIRST_LINES = 50;

/** Reads the columns of the lines that were chosen. Rows hold two figures; where no line does, one. */
export function readSample(bytes: Uint8Array, lines: SampleLines, signs: Signs): Sample {
  const sample = readRows(bytes, lines, signs, 2);
  return sample.numbers.length > 0 ? sample : readRows(bytes, lines, signs, 1);
}

function readRows(bytes: Uint8Array, lines: SampleLines, { delimiter, decimal }: Signs, least: number): Sample {
  const [sign, point] = [delimiter.charCodeAt(0), decimal.charCodeAt(0)];
  const cells = newCells();
  const columns: { values: Float64Array; filled: number; figures: number; clocks: number; cells: string[] }[] = [];
  const burst = new Int32Array(lines.count);
  let rows = 0;
  for (let k = 0; k < lines.count; k++) {
    const [from, to] = [lines.from[k]!, lines.to[k]!];
    if (isComment(bytes, from, to, sign)) continue;
    splitLine(bytes, from, to, sign, cells);
    if (!holdsFigures(bytes, cells, point, least)) continue;
    while (columns.length < cells.count)
      columns.push({
        values: new Float64Array(lines.count).fill(Number.NaN),
        filled: 0,
        figures: 0,
        clocks: 0,
        cells: [],
      });
    for (let c = 0; c < cells.count; c++) {
      const [start, stop] = [cells.from[c]!, cells.to[c]!];
      const column = columns[c]!;
      let value = numberIn(bytes, start, stop, point);
      if (Number.isNaN(value)) {
        if (isMissing(bytes, start, stop)) continue;
        value = clockIn(bytes, start, stop, point);
        if (!Number.isNaN(value)) column.clocks++;
      }
      column.filled++;
      if (Number.isFinite(value)) {
        column.figures++;
        column.values[rows] = value;
      }
      if (column.cells.length < SHOWN_CELLS && k < FIRST_LINES * SHOWN_CELLS)
        column.cells.push(cellText(bytes, cells, c));
    }
    burst[rows++] = lines.burst[k]!;
  }
  const read = columns.map((column, index) => ({ ...column, index, values: column.values.subarray(0, rows) }));
  return {
    columns: read,
    numbers: read.filter(({ filled, figures }) => figures >= 2 && figures >= 0.5 * filled),
    burst: burst.subarray(0, rows),
    rows,
  };
}

/** So many numbers, or nothing but a number. */
function holdsFigures(bytes: Uint8Array, cells: ReturnType<typeof newCells>, point: number, least: number): boolean {
  let figures = 0;
  let words = 0;
  for (let c = 0; c < cells.count; c++) {
    const [from, to] = [cells.from[c]!, cells.to[c]!];
    if (!Number.isNaN(numberIn(bytes, from, to, point)) || !Number.isNaN(clockIn(bytes, from, to, point))) figures++;
    else if (!isMissing(bytes, from, to)) words++;
  }
  return figures >= least || (figures === 1 && words === 0);
}
