import {
  columnName,
  type LogMapping,
  type LogPreview,
  type LogQuantity,
  movingQuantities,
} from "@delaywright/documents";

type Preview = Pick<LogPreview, "columns" | "mapping">;

/**
 * A mapping with a column taken for something else.
 *
 * @param index of the column, from 0
 * @param quantity null: not used; what held it before holds nothing
 */
export function withColumn({ columns, mapping }: Preview, index: number, quantity: LogQuantity | null): LogMapping {
  const before = columns[index]?.guess ?? null;
  const headings = columns.map(({ heading }) => heading);
  const others = Object.entries(mapping).filter(([key]) => key !== before && key !== quantity);
  const own = quantity === null ? [] : [[quantity, { column: columnName(index, headings) }]];
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
  return mapping.time !== undefined && movingQuantities.some((quantity) => mapping[quantity] !== undefined);
}
