import { amountIn, amountParts, parseQuantity, type UnitSystem } from "@delaywright/documents";

/** A wind as it is shown: a figure in the unit of gauges and edges. */
export interface ShownWind {
  /** As precise as it is shown. */
  readonly figure: number;
  readonly unit: string;
}

/** The unit that winds are shown in. */
export function windUnit(units: UnitSystem): string {
  return amountParts(0, "wind", units).unit;
}

/**
 * A typed wind in the unit that winds are shown in.
 *
 * @param typed as it stands in the plan
 * @returns null where it is no wind
 * @example
 * windIn("4 m/s", "imperial"); // { figure: 9, unit: "mph" }
 */
export function windIn(typed: unknown, units: UnitSystem): ShownWind | null {
  const read = typeof typed === "string" ? parseQuantity(typed, "speed") : null;
  if (read?.ok !== true) return null;
  const unit = windUnit(units);
  if (read.unit !== unit) return { figure: Number(amountParts(read.value, "wind", units).figure), unit };
  const one = parseQuantity(`1 ${unit}`, "speed");
  return { figure: one.ok ? read.value / one.value : 0, unit };
}

/**
 * A typed wind in words: as it was typed where that is in the unit that winds are shown in, else in that unit, so that it can be
 * held against a gauge or an edge.
 *
 * @param typed as it stands in the plan; what is no wind is shown as it is
 * @example
 * shownWind("4 m/s", "imperial"); // "9 mph"
 */
export function shownWind(typed: string, units: UnitSystem): string {
  const read = parseQuantity(typed, "speed");
  return !read.ok || read.unit === windUnit(units) ? typed : amountIn(read.value, "wind", units);
}
