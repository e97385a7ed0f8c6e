import { type Fault, show } from "../issue.js";
import { logQuantities } from "./log-quantities.js";
import type { LogMapping } from "./log-types.js";
import { CLOCK_UNIT, findLogUnit, type MeasuredQuantity, unitChoices } from "./log-units.js";
import type { Choice } from "./match-headings.js";

/** Units as a mapping states them. */
export type GivenUnits = ReadonlyMap<MeasuredQuantity, string>;

const plain = (text: string) => text.normalize("NFC").toLowerCase().replace(/\s+/g, " ").trim();

/** Finds the columns that a mapping names. It counts as a whole: what it leaves out is not looked for. */
export function resolveMapping(mapping: LogMapping, headings: readonly string[], columns: number, faults: Fault[]) {
  const choice: Choice = new Map();
  const units = new Map<MeasuredQuantity, string>();
  for (const quantity of logQuantities) {
    const entry = mapping[quantity];
    if (entry === undefined) continue;
    const index = columnOf(entry.column, headings, columns);
    if (index < 0) {
      const accepted = headings.some((each) => each !== "")
        ? `one of ${headings.map((each) => show(each)).join(", ")}, or a number from 1 to ${columns}`
        : `a number from 1 to ${columns}`;
      faults.push({
        path: `columns.${quantity}.column`,
        code: "column-missing",
        found: show(entry.column),
        accepted,
        example: "1",
      });
      continue;
    }
    const reversed = "reversed" in entry && entry.reversed === true;
    choice.set(quantity, { index, why: "given", ...(reversed ? { reversed } : {}) });
    if (quantity === "marks" || !("unit" in entry) || entry.unit === undefined) continue;
    const unit = findLogUnit(entry.unit, quantity);
    if (unit !== undefined) units.set(quantity, unit.symbol);
    else faults.push(unitFault(quantity, entry.unit));
  }
  return { choice, units: units as GivenUnits };
}

function unitFault(quantity: MeasuredQuantity, unit: string): Fault {
  const accepted = `one of ${unitChoices(quantity).join(", ")}`;
  const example = quantity === "time" ? `"s", or "${CLOCK_UNIT}"` : show(unitChoices(quantity)[0]);
  return { path: `columns.${quantity}.unit`, code: "unit-unknown", found: show(unit), accepted, example };
}

function columnOf(column: string | number, headings: readonly string[], columns: number): number {
  if (typeof column === "number") return column <= columns ? column - 1 : -1;
  const exact = headings.findIndex((each) => each.trim() === column.trim());
  return exact >= 0 ? exact : headings.findIndex((each) => plain(each) === plain(column));
}

/** How a mapping names a column: by its heading where that is its own, else by its number. */
export function columnName(index: number, headings: readonly string[]): string | number {
  const heading = (headings[index] ?? "").trim();
  const own = headings.filter((each) => plain(each) === plain(heading)).length === 1;
  return heading !== "" && heading.length <= 200 && own ? heading : index + 1;
}
