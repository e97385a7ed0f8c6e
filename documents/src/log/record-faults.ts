import type { Fault } from "../issue.js";
import { movingQuantities } from "./log-quantities.js";
import type { LogDoubt } from "./log-types.js";
import { type Choice, columnDoubt } from "./match-headings.js";
import type { RawColumns, Tally } from "./read-columns.js";

const FEWEST_ROWS = 4;

/**
 * What keeps a record from being one.
 *
 * @param blamed quantities whose mapping is at fault already: that they are missing is not told again
 */
export function recordFaults(
  choice: Choice,
  raw: RawColumns | null,
  blamed: ReadonlySet<string | undefined>,
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
