import type { Fault } from "../issue.js";
import { restsReversed } from "./choose-motion-units.js";
import { chooseUnits } from "./choose-units.js";
import { firstRows } from "./first-rows.js";
import { headingsKey } from "./headings-key.js";
import { logColumns } from "./log-columns.js";
import { logQuantities } from "./log-quantities.js";
import { type LogTable, openLog } from "./log-table.js";
import type { LogDoubt, LogMapping, LogPreview, ReadLog } from "./log-types.js";
import { matchColumns } from "./match-columns.js";
import { type Choice, columnDoubt } from "./match-headings.js";
import { type RawColumns, readColumns } from "./read-columns.js";
import { recordDoubts, recordFaults } from "./record-faults.js";
import { columnName, type GivenUnits, resolveMapping } from "./resolve-mapping.js";
import { toSamples } from "./to-samples.js";
import type { ChosenUnits } from "./unit-context.js";

/**
 * Reads an altimeter's record from a table of figures: one row a moment, columns parted by commas, semicolons, tabs, bars or blanks.
 *
 * What the columns hold is told from the words and units of their headings, and where these are silent from what the figures do;
 * what is not certain is told as a doubt. A mapping that is given counts as a whole.
 * Rows without a time are passed over and told; figures that are none are NaN. Up to 256 MB and 5,000,000 rows, in time linear in them.
 *
 * @param given the whole file as bytes (UTF-8, UTF-16, or any encoding of eight bits), or its text
 * @param mapping what the columns hold; left out: guessed
 * @returns the record in SI units with all that was guessed, or every fault with the preview by which a mapping may mend it
 * @example
 * const read = readLog("time (s),height (m)\n0,0\n0.05,1\n0.1,4\n0.15,9");
 * read.ok && read.samples.height; // Float64Array [0, 1, 4, 9]
 */
export function readLog(given: Uint8Array | string, mapping?: LogMapping): ReadLog {
  const opened = openLog(given);
  if (!opened.ok) return { ok: false, faults: [opened.fault], preview: null };
  const { table } = opened;
  const faults: Fault[] = [];
  const doubts: LogDoubt[] = [];
  const columns = Math.max(table.headings.names.length, table.sample.columns.length);
  const resolved =
    mapping === undefined
      ? { choice: matchColumns(table, doubts), units: null }
      : resolveMapping(mapping, table.headings.names, columns, faults);
  return readChosen(table, resolved, faults, doubts);
}

function readChosen(
  table: LogTable,
  { choice, units: given }: { choice: Choice; units: GivenUnits | null },
  faults: Fault[],
  doubts: LogDoubt[],
): ReadLog {
  const raw = choice.has("time") ? readColumns(table, choice) : null;
  const blamed = new Set(faults.map(({ path }) => path.split(".")[1]));
  faults.push(...recordFaults(choice, raw, { blamed, delimiter: table.layout.delimiter }));
  if (raw === null || faults.length > 0)
    return { ok: false, faults, preview: previewOf(table, choice, raw, new Map(), doubts) };
  if (given === null) turnAxis(choice, raw, doubts);
  const units = chooseUnits(table, choice, raw, given, doubts);
  const samples = toSamples(raw, choice, units, doubts);
  doubts.push(...recordDoubts(choice, raw));
  return {
    ok: true,
    ...previewOf(table, choice, raw, units, doubts),
    samples,
    rows: raw.rows,
    skipped: raw.skipped.first,
    skippedRows: raw.skipped.count,
  };
}

/** An accelerometer that points aft is turned round. */
function turnAxis(choice: Choice, raw: RawColumns, doubts: LogDoubt[]): void {
  const values = raw.values.get("acceleration");
  const chosen = choice.get("acceleration");
  if (values === undefined || chosen === undefined || !restsReversed(values)) return;
  choice.set("acceleration", { ...chosen, reversed: true });
  doubts.push(columnDoubt("reversed", chosen.index, "acceleration"));
}

function previewOf(
  table: LogTable,
  choice: Choice,
  raw: RawColumns | null,
  units: ChosenUnits,
  doubts: readonly LogDoubt[],
): LogPreview {
  const { names } = table.headings;
  const entries = logQuantities.flatMap((quantity) => {
    const chosen = choice.get(quantity);
    if (chosen === undefined) return [];
    const unit = quantity === "marks" ? undefined : units.get(quantity)?.symbol;
    const entry = {
      column: columnName(chosen.index, names),
      ...(unit === undefined ? {} : { unit }),
      ...(chosen.reversed === true ? { reversed: true } : {}),
    };
    return [[quantity, entry] as const];
  });
  return {
    layout: table.layout,
    headings: names,
    headingsKey: headingsKey(names),
    lines: firstRows(table),
    columns: logColumns(table, choice, units, raw),
    mapping: Object.fromEntries(entries) as LogMapping,
    doubts,
  };
}

/**
 * The first rows of a log as cells, and what its columns are taken for: what the flyer looks at before a log is taken.
 *
 * @returns null where the file is no table at all; the faults of `readLog` say why
 * @example
 * logPreview("time (s),height (m)\n0,0\n0.05,1\n0.1,4\n0.15,9")?.columns[1]?.guess; // "height"
 */
export function logPreview(given: Uint8Array | string, mapping?: LogMapping): LogPreview | null {
  const read = readLog(given, mapping);
  return read.ok ? read : read.preview;
}
