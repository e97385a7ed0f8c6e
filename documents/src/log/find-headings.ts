import { cellText, isBlankLine, isComment, lineEnd, newCells, nextLine, splitLine } from "./log-lines.js";
import { clockIn, isMissing, numberIn } from "./log-number.js";
import { findLogUnit, unitQuantities } from "./log-units.js";
import type { Sample } from "./sample-columns.js";
import type { Signs } from "./sniff-layout.js";

/** Where rows begin and what stands above them. */
export interface Headings {
  /** Empty where there is no heading line. */
  readonly names: readonly string[];
  /** Units below the headings; empty where there are none. */
  readonly units: readonly string[];
  readonly headingLine: number | null;
  readonly firstLine: number;
  /** Where the first row stands in the bytes. */
  readonly rowsFrom: number;
}

interface Above {
  readonly line: number;
  readonly cells: readonly string[];
  readonly comment: boolean;
  /** Whether a figure stands where figures stand in rows: then it is no heading. */
  readonly figures: boolean;
  readonly at: number;
}

/** Rows begin within so many lines. */
const LONGEST_PREAMBLE = 2000;

interface Where {
  readonly bytes: Uint8Array;
  readonly start: number;
  readonly end: number;
  readonly signs: Signs;
  readonly sample: Sample;
}

/**
 * Finds the line of the headings, if there is one, and the first row.
 *
 * Headings are the last line of words above the first row that has as many cells, also behind a sign of remark; units may stand in a line between.
 *
 * @returns null where no row is found
 */
export function findHeadings({ bytes, start, end, signs, sample }: Where): Headings | null {
  const sign = signs.delimiter.charCodeAt(0);
  const point = signs.decimal.charCodeAt(0);
  const numbers = new Set(sample.numbers.map(({ index }) => index));
  const cells = newCells();
  const above: Above[] = [];
  let at = start;
  for (let line = 1; at < end && line <= LONGEST_PREAMBLE; line++) {
    const stop = lineEnd(bytes, at, end);
    const next = nextLine(bytes, stop, end);
    const comment = isComment(bytes, at, stop, sign);
    if (!isBlankLine(bytes, at, stop)) {
      splitLine(bytes, at, stop, sign, cells);
      const held = heldIn(bytes, cells, numbers, point);
      const isRow = held.figures > 0.5 * numbers.size && held.words <= numbers.size / 3;
      if (!comment && isRow) return headed(above, { line, at, numbers, sample });
      const texts = Array.from({ length: cells.count }, (_, c) => cellText(bytes, cells, c));
      above.push({ line, at, cells: texts, comment, figures: held.figures > 0 });
    }
    at = next;
  }
  return null;
}

/** Figures and words in the columns of figures. */
function heldIn(bytes: Uint8Array, cells: ReturnType<typeof newCells>, numbers: ReadonlySet<number>, point: number) {
  let figures = 0;
  let words = 0;
  for (const c of numbers) {
    if (c >= cells.count) continue;
    const [from, to] = [cells.from[c]!, cells.to[c]!];
    if (!Number.isNaN(numberIn(bytes, from, to, point)) || !Number.isNaN(clockIn(bytes, from, to, point))) figures++;
    else if (!isMissing(bytes, from, to)) words++;
  }
  return { figures, words };
}

const hasLetters = (cell: string) => /\p{L}/u.test(cell) && !/^[-+]?(nan|inf(inity)?)$/i.test(cell);

function headed(
  above: readonly Above[],
  row: { line: number; at: number; numbers: ReadonlySet<number>; sample: Sample },
): Headings {
  const { numbers, sample } = row;
  const least = Math.max(2, Math.min(numbers.size, Math.ceil(sample.columns.length / 2)));
  const fits = ({ cells, figures }: Above) =>
    !figures && cells.length >= least && cells.filter(hasLetters).length >= least / 2;
  const last = above.findLastIndex((each) => !each.comment && !each.figures && each.cells.some(hasLetters));
  const plain = above[last];
  // between the last words and the first whole row there may be rows with figures missing
  const first = above.slice(last + 1).find((each) => !each.comment && each.figures) ?? row;
  const rows = { firstLine: first.line, rowsFrom: first.at };
  if (plain !== undefined && fits(plain)) {
    const before = above[last - 1];
    const withUnits = isUnitRow(plain.cells) && before !== undefined && fits(before) && !isUnitRow(before.cells);
    const heading = withUnits ? before : plain;
    return { names: stripped(heading), units: withUnits ? plain.cells : [], headingLine: heading.line, ...rows };
  }
  const remark = above.findLast((each) => each.comment && fits(each));
  if (remark === undefined) return { names: [], units: [], headingLine: null, ...rows };
  return { names: stripped(remark), units: [], headingLine: remark.line, ...rows };
}

/** Headings without the sign of a remark before the first. */
function stripped({ cells, comment }: Above): readonly string[] {
  if (!comment) return cells;
  const [first = "", ...rest] = cells;
  const plain = first.replace(/^\s*(#+|\/\/+|%+|;+)\s*/, "");
  return plain === "" && first !== "#" ? rest : [plain, ...rest];
}

function isUnitRow(cells: readonly string[]): boolean {
  const filled = cells.map((cell) => cell.replace(/^[([{]|[)\]}]$/g, "")).filter((cell) => /\p{L}/u.test(cell));
  const known = filled.filter((cell) => unitQuantities.some((each) => findLogUnit(cell, each) !== undefined));
  return filled.length > 0 && known.length >= 0.6 * filled.length;
}
