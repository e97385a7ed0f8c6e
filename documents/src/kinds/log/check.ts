import { logQuantities, movingQuantities } from "../../log/log-quantities.js";
import { findLogUnit, unitChoices } from "../../log/log-units.js";
import type { RawView } from "../raw.js";

/** A log needs its time and something that moves with height, each from a column of its own, in units that are known. */
export function checkLog(log: RawView): void {
  const columns = log.at("columns");
  if (!columns.isObject) return;
  if (!columns.has("time"))
    columns.at("time").report("missing", "the column of the time", '{ "column": "Time (s)", "unit": "s" }');
  if (!movingQuantities.some((key) => columns.has(key))) {
    columns
      .at("height")
      .report("missing", "height, altitude, pressure or acceleration", '{ "column": "Height (m)", "unit": "m" }');
  }
  for (const quantity of logQuantities) {
    if (quantity === "marks") continue;
    const unit = columns.at(quantity).at("unit");
    if (unit.text === undefined || findLogUnit(unit.text, quantity) !== undefined) continue;
    const choices = unitChoices(quantity);
    unit.report("unit-unknown", `one of ${choices.join(", ")}`, JSON.stringify(choices[0]));
  }
  const taken = new Map<unknown, string>();
  for (const key of columns.keys) {
    const column = columns.at(key).at("column");
    const other = column.given === undefined ? undefined : taken.get(column.given);
    if (other !== undefined) column.report("not-together", `a column of its own, since ${other} stands there`);
    taken.set(column.given, key);
  }
}
