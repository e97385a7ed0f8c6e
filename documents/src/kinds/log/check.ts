import type { RawView } from "../raw.js";

/** A log needs its time and something that moves with height. */
export function checkLog(log: RawView): void {
  const columns = log.at("columns");
  if (!columns.isObject) return;
  if (!columns.has("time"))
    columns.at("time").report("missing", "the column of the time", '{ "column": "Time (s)", "unit": "s" }');
  if (!["height", "altitude", "pressure", "acceleration"].some((key) => columns.has(key))) {
    columns
      .at("height")
      .report("missing", "height, altitude, pressure or acceleration", '{ "column": "Height (m)", "unit": "m" }');
  }
}
