import type { LogMapping, LogPreview, LogQuantity } from "@delaywright/documents";

/** What a column may hold, in the order in which it is offered. */
export const logQuantities: readonly LogQuantity[] = [
  "time",
  "height",
  "altitude",
  "pressure",
  "speed",
  "acceleration",
  "temperature",
  "battery",
  "marks",
];

type Preview = Pick<LogPreview, "columns" | "mapping">;

/** By what a mapping names a column: its heading where that tells it from the others, else its number from 1. */
function nameOf(columns: Preview["columns"], index: number): string | number {
  const heading = columns[index]?.heading.trim() ?? "";
  const alone = columns.filter((column) => column.heading.trim() === heading).length === 1;
  return heading !== "" && alone ? heading : index + 1;
}

/**
 * A mapping with a column taken for something else.
 *
 * @param index of the column, from 0
 * @param quantity null: not used; what held it before holds nothing
 */
export function withColumn({ columns, mapping }: Preview, index: number, quantity: LogQuantity | null): LogMapping {
  const before = columns[index]?.guess ?? null;
  const others = Object.entries(mapping).filter(([key]) => key !== before && key !== quantity);
  const own = quantity === null ? [] : [[quantity, { column: nameOf(columns, index) }]];
  return Object.fromEntries([...others, ...own]) as LogMapping;
}

/** A mapping with another unit for what a column holds. */
export function withUnit(mapping: LogMapping, quantity: LogQuantity, unit: string): LogMapping {
  const column = mapping[quantity];
  return column === undefined ? mapping : { ...mapping, [quantity]: { ...column, unit } };
}

/** A mapping with the acceleration's way round turned. */
export function withReversed(mapping: LogMapping, reversed: boolean): LogMapping {
  const { acceleration } = mapping;
  if (acceleration === undefined) return mapping;
  const { reversed: _, ...rest } = acceleration;
  return { ...mapping, acceleration: reversed ? { ...rest, reversed } : rest };
}

/** Whether a flight can be found with a mapping: its time, and something that moves with height. */
export function isEnough(mapping: LogMapping): boolean {
  const tells = ["height", "altitude", "pressure", "acceleration"] as const;
  return mapping.time !== undefined && tells.some((quantity) => mapping[quantity] !== undefined);
}
