import type { Fault } from "../issue.js";
import { movingQuantities } from "./log-quantities.js";
import type { LogDoubt, LogLayout } from "./log-types.js";
import { type Choice, columnDoubt } from "./match-headings.js";
import type { RawColumns, Tally } from "./read-columns.js";

const FEWEST_ROWS = 4;

/** Rows that are too long are a fault where they are more than so many, and more than this share of all. */
const MOST_LONG = 3;
const LONG_SHARE = 0.002;
const POINTS = "numbers with a decimal point and no sign for thousands, or semicolons between the columns";

/**
 * What keeps a record from being one.
 *
 * @param delimiter what parts its columns: where that may stand in numbers, too, many rows that are too long are a fault
 * @param blamed quantities whose mapping is at fault already: that they are missing is not told again
 */
export function recordFaults(
  choice: Choice,
  raw: RawColumns | null,
  { blamed, delimiter }: { blamed: ReadonlySet<string | undefined>; delimiter: LogLayout["delimiter"] },
): readonly Fault[] {
  const faults: Fault[] = [];
  const report = (path: string, code: string, found: string, accepted: string, example = "") =>
    faults.push({ path, code, found, accepted, example });
  if (!choice.has("time") && !blamed.has("time"))
    report(
      "columns.time",
      "no-time",
      "nothing",
      "a column of the time, which rises",
      '{ "column": "Time (s)", "unit": "s" }',
    );
  const moving = movingQuantities.filter((each) => choice.has(each));
  if (moving.length === 0 && !movingQuantities.some((each) => blamed.has(each)))
    report(
      "columns.height",
      "nothing-of-flight",
      "nothing",
      "a column of height, altitude, pressure or acceleration",
      '{ "column": "Height (m)", "unit": "m" }',
    );
  if (raw === null) return faults;
  const long = longFault(raw, delimiter);
  // what else is wrong with such columns follows from it
  if (long !== null) return [...faults, long];
  if (raw.rows < FEWEST_ROWS) report("", "too-few-rows", `${raw.rows} rows with a time`, `at least ${FEWEST_ROWS}`);
  else if (raw.forward === 0 && raw.back.count === 0)
    report("columns.time", "time-stands", "the same time in every row", "times that rise");
  else if (raw.back.count >= raw.forward)
    report(
      "columns.time",
      "time-runs-back",
      `a time that falls in ${raw.back.count} of ${raw.rows} rows, first at line ${raw.back.first[0]?.line}`,
      "times that rise",
    );
  for (const [quantity, values] of raw.values) {
    if (quantity !== "time" && raw.rows > 0 && values.every((value) => Number.isNaN(value)))
      report(`columns.${quantity}`, "no-figures", "no number in this column", "a column of figures");
  }
  const [first] = moving;
  if (faults.length === 0 && first !== undefined && moving.every((each) => isFlat(raw.values.get(each)!)))
    report(
      `columns.${first}`,
      "nothing-moves",
      "the same figure in every row",
      "figures that change as a rocket flies",
    );
  return faults;
}

/** Many rows with more cells than the file has columns, parted by a sign that numbers are written with. */
function longFault({ rows, width, long }: RawColumns, delimiter: LogLayout["delimiter"]): Fault | null {
  const [first] = long.first;
  const isMany = long.count > MOST_LONG && long.count > LONG_SHARE * rows;
  if ((delimiter !== "," && delimiter !== " ") || first === undefined || !isMany) return null;
  const like = looksLike(first.found, delimiter);
  const found = `${long.count} of ${rows} rows with more cells than its ${width} columns, first in line ${first.line}: ${first.found}${like}`;
  return delimiter === ","
    ? { path: "", code: "comma-parts-columns", found, accepted: POINTS, example: '"0.10,1250.5" or "0,10;1250,5"' }
    : { path: "", code: "blank-parts-columns", found, accepted: "numbers without blanks", example: '"0.10 1250.5"' };
}

/** The number that a row seems to hold in several cells, as words that follow it; empty where none is seen. */
function looksLike(row: string, delimiter: "," | " "): string {
  const thousands =
    delimiter === "," ? /(?<![\d.])[1-9]\d{0,2}(,\d{3})+(?!\d)(\.\d+)?/ : /(?<![\d.])[1-9]\d{0,2}( \d{3})+(?!\d)/;
  const number = thousands.exec(row)?.[0];
  if (number !== undefined) return `, which looks like the number ${number}`;
  return delimiter === "," && !row.includes(".") ? ", which looks like decimal commas" : "";
}

function isFlat(values: Float64Array): boolean {
  const first = values.find((value) => !Number.isNaN(value));
  return values.every((value) => value === first || Number.isNaN(value));
}

/** What about a record as a whole is not as it should be. */
export function recordDoubts(choice: Choice, raw: RawColumns): readonly LogDoubt[] {
  const doubts: LogDoubt[] = [];
  const time = choice.get("time")!.index;
  const whole = (code: LogDoubt["code"], { count, first }: Tally) =>
    doubts.push({ code, column: null, quantity: null, ...firstOf(first), instead: "", count });
  if (raw.back.count > 0) {
    const { count, first } = raw.back;
    doubts.push(columnDoubt("time-goes-back", time, "time", { ...firstOf(first), count }));
  }
  if (raw.skipped.count > 0) whole("rows-skipped", raw.skipped);
  if (raw.ragged.count > 0) whole("ragged", raw.ragged);
  if (raw.long.count > 0) whole("rows-too-long", raw.long);
  for (const [quantity, { index }] of choice) {
    const unread = raw.unread.get(index);
    if (unread !== undefined && unread.count > 0)
      doubts.push(columnDoubt("cells-unread", index, quantity, { ...firstOf(unread.first), count: unread.count }));
  }
  const marks = choice.get("marks");
  if (raw.tooManyMarks && marks !== undefined) doubts.push(columnDoubt("too-many-marks", marks.index, "marks"));
  return doubts;
}

function firstOf(first: Tally["first"]) {
  return { line: first[0]?.line ?? 0, found: first[0]?.found ?? "" };
}
