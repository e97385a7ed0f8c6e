import Papa from "papaparse";
import { decodeText } from "../decode.js";
import { type Fault, shorten, show } from "../issue.js";
import { findUnit, units } from "../quantity/units.js";

/** A thrust curve as its file gives it, in SI units. */
export interface CsvThrust {
  /** [s], rising */
  readonly times: readonly number[];
  /** [N] */
  readonly thrusts: readonly number[];
}

export type ReadThrust =
  | { readonly ok: true; readonly curve: CsvThrust }
  | { readonly ok: false; readonly faults: readonly Fault[] };

interface Row {
  readonly line: number;
  readonly text: string;
  readonly cells: readonly string[];
}
interface Column {
  readonly index: number;
  readonly factor: number;
}

const MOST_POINTS = 20_000;
const LONGEST_LINE = 2_000;
const ONE_SIGN = "one decimal sign in the whole file, and thousands written together";
const EXAMPLE = '"0.10, 190"';

/** How a row is refused whose numbers hold the sign that parts its columns. */
const parts: Readonly<Record<string, { readonly code: string; readonly accepted: string; readonly example: string }>> =
  Object.freeze({
    ",": {
      code: "comma-parts-columns",
      accepted:
        "a line of numbers with a decimal point and no sign for thousands, or with semicolons between the columns,",
      example: '"0.10, 1250.5" or "0,10; 1250,5"',
    },
    " ": {
      code: "blank-parts-columns",
      accepted: "a line of numbers without blanks, thousands written together,",
      example: '"0.10 1250.5"',
    },
  });

/**
 * Reads a thrust curve from comma-separated values: a time and a thrust column, by their headings or in this order.
 *
 * Commas, semicolons, tabs and spaces may part the columns; a decimal comma is understood where it can part
 * neither columns nor thousands. Where commas or blanks part the columns, a row with more cells than its heading,
 * or than most rows where there is none, is refused: the sign may stand in its numbers.
 * Units stand in the heading, `time (ms)`, `thrust [lbf]`; without one they are seconds and newtons. Lines that start with `#` or `//` are comments.
 *
 * @param text the file's text
 * @returns times [s] and thrusts [N], or every line that is wrong
 * @example
 * readThrust("time,thrust\n0,0\n0.1,190\n2,0"); // { ok: true, curve: { times: [0, 0.1, 2], thrusts: [0, 190, 0] } }
 */
export function readThrust(text: string): ReadThrust {
  const lines = text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/);
  const kept = lines
    .map((line, index) => ({ line: index + 1, text: line.trim() }))
    .filter((each) => !/^($|#|\/\/)/.test(each.text));
  const long = kept.find((each) => each.text.length > LONGEST_LINE);
  if (long !== undefined)
    return refuse(long.line, "line-too-long", `${long.text.length} characters`, `at most ${LONGEST_LINE}`);
  const delimiter = chooseDelimiter(kept.map((each) => each.text));
  const rows: Row[] = kept.map((each) => ({ ...each, cells: split(each.text, delimiter) }));
  const first = rows[0];
  if (first === undefined) return refuse(1, "no-points", "an empty file", "lines with a time and a thrust");
  const hasHeading = first.cells.some(
    (cell) => /[^\s,]/.test(cell) && Number.isNaN(readNumber(cell.replaceAll(",", ""), false)),
  );
  const columns = hasHeading ? headed(first) : { time: { index: 0, factor: 1 }, thrust: { index: 1, factor: 1 } };
  if ("faults" in columns) return { ok: false, faults: columns.faults };
  const points = hasHeading ? rows.slice(1) : rows;
  const width = hasHeading ? filled(first.cells) : commonWidth(points, delimiter);
  return readRows(points, columns, { delimiter, width });
}

/**
 * Reads a thrust curve from a file, as `readThrust` does from its text.
 *
 * @param bytes the whole file, UTF-8
 * @returns times [s] and thrusts [N], or everything that is wrong
 * @example
 * readThrustFile(bytes); // { ok: true, curve: { times: [0, 0.1, 2], thrusts: [0, 190, 0] } }
 */
export function readThrustFile(bytes: Uint8Array): ReadThrust {
  const decoded = decodeText(bytes);
  if (decoded.ok) return readThrust(decoded.text);
  return decoded.fault.code === "empty-file" ? readThrust("") : { ok: false, faults: [decoded.fault] };
}

/** How many cells a row has, without empty ones at its end. */
function filled(cells: readonly string[]): number {
  return cells.findLastIndex((cell) => cell !== "") + 1;
}

/** How many cells most rows have, where no heading tells. Where commas part them and no point stands in them, two: more may be decimals. */
function commonWidth(rows: readonly Row[], delimiter: string): number {
  if (delimiter === "," && !rows.some(({ text }) => text.includes("."))) return 2;
  const counts = new Map<number, number>();
  for (const count of rows.map(({ cells }) => filled(cells))) counts.set(count, (counts.get(count) ?? 0) + 1);
  const [most] = [...counts].sort(([a, ofA], [b, ofB]) => ofB - ofA || a - b);
  return Math.max(2, most?.[0] ?? 2);
}

function readRows(
  rows: readonly Row[],
  columns: { time: Column; thrust: Column },
  { delimiter, width }: { delimiter: string; width: number },
): ReadThrust {
  const decimalComma = delimiter !== ",";
  const parted = parts[delimiter];
  const faults: Fault[] = [];
  const times: number[] = [];
  const thrusts: number[] = [];
  if (rows.length > MOST_POINTS)
    return refuse(rows[MOST_POINTS]?.line ?? 0, "too-many-points", `${rows.length} points`, `at most ${MOST_POINTS}`);
  const isUnclear = decimalComma ? unclearComma(rows, columns) : () => false;
  for (const { line, text, cells } of rows) {
    if (faults.length >= 100) break;
    const both = [columns.time, columns.thrust].map(({ index }) => cells[index] ?? "");
    const quoted = decimalComma ? undefined : both.find((cell) => /\d,\d/.test(cell));
    if (parted !== undefined && (filled(cells) > width || quoted !== undefined)) {
      faults.push(atLine(line, parted.code, show(quoted ?? text), parted.accepted, parted.example));
      continue;
    }
    for (const cell of both)
      if (isUnclear(cell)) faults.push(atLine(line, "ambiguous-comma", show(cell), ONE_SIGN, '"0.10; 1250"'));
    const [time, thrust] = [columns.time, columns.thrust].map(({ index, factor }) => {
      const number = readNumber(cells[index] ?? "", decimalComma) * factor;
      if (!Number.isFinite(number)) faults.push(atLine(line, "not-a-number", show(cells[index]), "a number", EXAMPLE));
      return number;
    }) as [number, number];
    const before = times.at(-1);
    if (time < 0) faults.push(atLine(line, "out-of-range", `${time} s`, "a time from ignition, 0 or more"));
    if (before !== undefined && time <= before)
      faults.push(atLine(line, "time-not-rising", `${time} s`, `a time after ${before} s`));
    if (thrust < 0) faults.push(atLine(line, "out-of-range", `${thrust} N`, "a thrust of 0 or more"));
    times.push(time);
    thrusts.push(thrust);
  }
  const last = rows.at(-1)?.line ?? 1;
  if (faults.length === 0 && times.length < 2)
    return refuse(last, "no-points", `${times.length} points`, "at least two lines with a time and a thrust");
  if (faults.length === 0 && !thrusts.some((thrust) => thrust > 0))
    return refuse(last, "no-thrust", "no thrust above 0", "at least one thrust above 0");
  return faults.length > 0 ? { ok: false, faults } : { ok: true, curve: { times, thrusts } };
}

/**
 * Whether a comma in a number may part thousands: where points stand before decimals elsewhere in the file, or where no number
 * shows that commas do. Never guessed: the one is a thousand times the other.
 */
function unclearComma(
  rows: readonly Row[],
  { time, thrust }: { time: Column; thrust: Column },
): (cell: string) => boolean {
  const numbers = rows.flatMap(({ cells }) => [cells[time.index] ?? "", cells[thrust.index] ?? ""]);
  const hasPoints = numbers.some((cell) => cell.includes("."));
  const isDecimal = (cell: string): boolean => cell.includes(",") && !/^[-+]?[1-9]\d{0,2},\d{3}$/.test(cell);
  const decided = !hasPoints && numbers.some(isDecimal);
  return (cell) => !decided && cell.includes(",");
}

/** Finds the columns by the words of their headings. */
function headed({ line, cells }: Row): { time: Column; thrust: Column } | { faults: Fault[] } {
  const faults: Fault[] = [];
  const find = (words: RegExp, position: number, dimension: "time" | "force", name: string): Column => {
    const byWord = cells.findIndex((cell) => words.test(cell.trim()));
    const index = byWord >= 0 ? byWord : position;
    const unit = unitOf(cells[index] ?? "", dimension);
    if (byWord < 0 && unit === undefined)
      faults.push(
        atLine(line, "column-missing", show(cells.join(" | ")), `a heading ${name}`, '"time (s), thrust (N)"'),
      );
    else if (unit === null) {
      const known = units[dimension].map((each) => each.symbol).join(", ");
      faults.push(
        atLine(
          line,
          "unit-unknown",
          show(cells[index]),
          `a ${name} column in one of ${known}`,
          '"time (s), thrust (N)"',
        ),
      );
    }
    return { index, factor: unit ?? 1 };
  };
  const time = find(/^(time|t)(?![a-z])/i, 0, "time", "time");
  const thrust = find(/^(thrust|force|f)(?![a-z])/i, 1, "force", "thrust");
  return faults.length > 0 ? { faults } : { time, thrust };
}

/** The factor of the unit in a heading: undefined where none is named, null where it is not known. */
function unitOf(heading: string, dimension: "time" | "force"): number | null | undefined {
  const named =
    /[([]\s*([^)\]]*?)\s*[)\]]/.exec(heading)?.[1] ??
    /^\s*(?:time|t|thrust|force|f)[\s,/_]+([a-z]+)\s*$/i.exec(heading)?.[1];
  const alone = findUnit(heading.trim(), dimension);
  if (alone !== undefined) return alone.factor;
  if (named === undefined || named === "") return undefined;
  return findUnit(named, dimension)?.factor ?? null;
}

/** The sign that parts most lines into the same number of columns, two or more. A comma yields to a semicolon or a tab. */
function chooseDelimiter(lines: readonly string[]): string {
  const sample = lines.slice(0, 50);
  for (const delimiter of [";", "\t", "|"]) {
    if (sample.filter((line) => line.includes(delimiter)).length > sample.length / 2) return delimiter;
  }
  const byComma = sample.filter((line) => line.includes(",")).length;
  const bySpace = sample.filter((line) => /\S\s+\S/.test(line) && !/,\s/.test(line)).length;
  return byComma === 0 || bySpace > sample.length / 2 ? " " : ",";
}

function split(line: string, delimiter: string): string[] {
  const text = delimiter === " " ? line.replace(/\s+(?![^([]*[)\]])/g, "\t") : line;
  const parsed = Papa.parse<string[]>(text, { delimiter: delimiter === " " ? "\t" : delimiter });
  return (parsed.data[0] ?? []).map((cell) => cell.trim());
}

function readNumber(cell: string, decimalComma: boolean): number {
  const text = (decimalComma ? cell.replace(",", ".") : cell).replace(/^\u2212/, "-").trim();
  return /^[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d{1,3})?$/.test(text) ? Number(text) : Number.NaN;
}

function atLine(line: number, code: string, found: string, accepted: string, example = ""): Fault {
  return { path: `line ${line}`, code, found: shorten(found, 90), accepted, example };
}

function refuse(line: number, code: string, found: string, accepted: string): ReadThrust {
  return { ok: false, faults: [atLine(line, code, found, accepted, EXAMPLE)] };
}
