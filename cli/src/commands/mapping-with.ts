import { headingsKey, type LogMapping, type LogPreview, placed, type ReadLog } from "@delaywright/documents";
import type { GivenColumns } from "../args/columns.js";
import type { FolderFlight } from "./flights-folder.js";

/** What a log is read with beside itself. */
interface MappingKnown {
  /** As typed. */
  readonly columns: GivenColumns | undefined;
  /** Its own document says what its columns hold. */
  readonly known: boolean;
  readonly others: readonly FolderFlight[];
}

/**
 * With which mapping a log is to be read again: what was typed over what is known, and what an earlier log of the same headings
 * was read with before what would be guessed.
 *
 * @param read the log as it was read first
 * @returns null: it need not be read again
 */
export function mappingWith(
  read: ReadLog,
  { columns, known, others }: MappingKnown,
): { readonly read: ReadLog; readonly mapping: LogMapping | null } {
  const preview = read.ok ? read : read.preview;
  if (preview === null) return { read, mapping: null };
  const remembered = known ? undefined : rememberedFor(preview, others);
  if (columns === undefined) return { read, mapping: remembered ?? null };
  return { read, mapping: typedOver(remembered ?? preview.mapping, columns, preview) };
}

function rememberedFor({ headings }: LogPreview, others: readonly FolderFlight[]): LogMapping | undefined {
  const key = headingsKey(headings);
  if (key === "") return undefined;
  const logs = others.map(({ loaded }) => placed(loaded.root?.children["log"], "log")?.document);
  return logs.findLast((log) => log?.headings === key)?.columns;
}

/** A column that was named for one thing no longer holds another. */
function typedOver(before: LogMapping, columns: GivenColumns, { headings }: LogPreview): LogMapping {
  const indexOf = (column: string | number): number =>
    typeof column === "number" ? column - 1 : headings.findIndex((heading) => heading.trim() === column.trim());
  const taken = Object.values(columns).flatMap((entry) => (entry == null ? [] : [indexOf(entry.column)]));
  const kept = Object.entries(before).filter(
    ([, entry]) => entry !== undefined && !taken.includes(indexOf(entry.column)),
  );
  const given = Object.entries(columns).filter(([, entry]) => entry !== null);
  const dropped = Object.keys(columns);
  return Object.fromEntries([...kept.filter(([key]) => !dropped.includes(key)), ...given]) as LogMapping;
}
