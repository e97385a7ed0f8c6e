import type { LogMapping, ReadLogRecord } from "../src/log/log-types.js";
import { readLog } from "../src/log/read-log.js";

/** A log as read, where it can be. */
export function ready(given: Uint8Array | string, mapping?: LogMapping): ReadLogRecord {
  const read = readLog(given, mapping);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read;
}

/** What each column is taken for, with its unit: `time s`. */
export const taken = ({ columns }: Pick<ReadLogRecord, "columns">) =>
  columns.map(({ guess, unit, reversed }) => [reversed ? "reversed" : "", guess ?? "-", unit ?? ""].join(" ").trim());
