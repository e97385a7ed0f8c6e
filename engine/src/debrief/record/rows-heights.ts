import type { FieldAir } from "../../air/field-air.js";
import { withoutHeld } from "./bridged.js";
import { heightsFromPressure, heightsInDaysAir } from "./pressure-heights.js";
import { median } from "./rows.js";

/**
 * Heights above the pad of a barometric column; NaN where a figure is missing or is none.
 *
 * @param quiet end of the stretch on the pad [s]; its last 10 s are the zero
 */
export function heightsOf(
  source: "pressure" | "height" | "altitude",
  column: Float64Array,
  time: Float64Array,
  quiet: number,
  air: FieldAir | undefined,
): Float64Array {
  const pad = padLevel(column, time, quiet);
  let height: Float64Array;
  if (source === "pressure") height = column.map(heightsFromPressure(pad, air));
  else {
    const rise = column.map((x) => x - pad);
    if (air === undefined) height = rise;
    else height = rise.map(heightsInDaysAir(source === "altitude" ? pad : air.elevation, air));
  }
  withoutHeld(height);
  return height;
}

/** Median over the last 10 s of the quiet stretch; the first figure where there is none. */
function padLevel(column: Float64Array, time: Float64Array, quiet: number): number {
  const still = column.filter((x, i) => time[i]! < quiet && time[i]! >= quiet - 10 && Number.isFinite(x));
  if (still.length === 0) return column.find(Number.isFinite) ?? 0;
  const middle = median(still);
  // steps of the figures are coarser than the level: the mean tells between two of them
  const reach = 4 * Math.max(1e-9, spreadOf(still, middle));
  const near = still.filter((x) => Math.abs(x - middle) <= reach);
  return near.reduce((sum, x) => sum + x, 0) / near.length;
}

const spreadOf = (values: Float64Array, middle: number): number =>
  Math.sqrt(values.reduce((sum, x) => sum + (x - middle) ** 2, 0) / values.length);
