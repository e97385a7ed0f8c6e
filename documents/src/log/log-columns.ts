import { shorten } from "../issue.js";
import type { LogTable } from "./log-table.js";
import type { LogColumn, LogQuantity } from "./log-types.js";
import type { Choice, Chosen } from "./match-headings.js";
import type { RawColumns } from "./read-columns.js";
import type { ChosenUnits } from "./unit-context.js";

const noneUnread = Object.freeze({ count: 0, first: [] });

/** Every column of a log with what it is taken for. */
export function logColumns(
  { headings, sample }: LogTable,
  choice: Choice,
  units: ChosenUnits,
  raw: RawColumns | null,
): readonly LogColumn[] {
  const byIndex = new Map<number, readonly [LogQuantity, Chosen]>([...choice].map((each) => [each[1].index, each]));
  const count = Math.max(headings.names.length, sample.columns.length);
  return Array.from({ length: count }, (_, index): LogColumn => {
    const [guess, chosen] = byIndex.get(index) ?? [null, null];
    const unit = guess === null || guess === "marks" ? undefined : units.get(guess);
    return {
      index,
      heading: headings.names[index] ?? "",
      cells: (sample.columns[index]?.cells ?? []).map((each) => shorten(each, 60)),
      guess,
      why: chosen?.why ?? "not-used",
      unit: unit?.symbol ?? null,
      unitWhy: unit?.why ?? null,
      reversed: chosen?.reversed === true,
      unread: raw?.unread.get(index) ?? noneUnread,
    };
  });
}
