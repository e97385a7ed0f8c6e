import type { FlightDocument, LogMapping, Raw } from "@delaywright/documents";
import { beginFlight } from "../prep/flights.js";
import { addDocument, changeDocuments, type Entry, entryNow } from "../store/index.js";

/** A log of a flight: its file, and what the columns hold. */
export interface FlightLog {
  readonly source: string;
  readonly mapping: LogMapping;
  readonly name: string;
}

/** A mapping that the flyer confirmed for a file with the same headings. */
export interface Remembered {
  /** Name of the log that it was confirmed for. */
  readonly name: string;
  readonly mapping: LogMapping;
}

function isKeyed(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** The log of a flight, inside it or in a document of its own; null: it has none that can be read. */
export function logOf(flight: Raw, entries: readonly Pick<Entry, "path" | "kind" | "raw">[]): FlightLog | null {
  const { log } = flight;
  const raw = typeof log === "string" ? entries.find(({ path, kind }) => path === log && kind === "log")?.raw : log;
  if (!isKeyed(raw)) return null;
  const { source, columns, name } = raw;
  if (typeof source !== "string" || !isKeyed(columns)) return null;
  return { source, mapping: columns as unknown as LogMapping, name: typeof name === "string" ? name : source };
}

/** The newest mapping that was confirmed for these headings; null: they are new, or there are none. */
export function rememberedFor(
  headingsKey: string,
  logs: readonly Pick<Entry, "raw" | "name" | "savedAt">[],
): Remembered | null {
  if (headingsKey === "") return null;
  const [newest] = logs
    .filter(({ raw }) => raw?.["headings"] === headingsKey && isKeyed(raw["columns"]))
    .toSorted((one, other) => other.savedAt - one.savedAt);
  return newest?.raw == null ? null : { name: newest.name, mapping: newest.raw["columns"] as unknown as LogMapping };
}

/** What is kept of a log with its flight. */
export interface NewLog {
  readonly name: string;
  readonly source: string;
  readonly mapping: LogMapping;
  readonly headings: string;
  /** Which flight of the record, from 1; null: the only one. */
  readonly number: number | null;
}

/** Gives a flight its log, in one step of undo; what was found out before belonged to another log, or to none. */
export function keepLog(flight: string, { name, source, mapping, headings, number }: NewLog): void {
  const entry = entryNow(flight);
  if (entry?.raw == null) return;
  const document = { kind: "log", version: 1, source, columns: mapping, ...(headings === "" ? {} : { headings }) };
  const log = addDocument("log", { ...document, name });
  const { logFlight: _, findings, ...rest } = entry.raw as Raw & Pick<FlightDocument, "findings">;
  const said = saidOf(findings);
  const raw = { ...rest, log, ...(number === null ? {} : { logFlight: number }), ...said };
  changeDocuments("log of the flight", [{ path: flight, raw }]);
}

/** What the flyer said holds for any log. */
function saidOf(findings: FlightDocument["findings"]): Raw | Record<string, never> {
  const { set } = findings ?? {};
  return set === undefined ? {} : { findings: { set } };
}

/** Takes a flight's log away; the log's own document goes with it where no other flight has it. */
export function dropLog(flight: string, flights: readonly Entry[]): void {
  const entry = entryNow(flight);
  if (entry?.raw == null) return;
  const { log, logFlight: _, findings: __, ...rest } = entry.raw;
  const shared = flights.some(({ path, raw }) => path !== flight && raw?.["log"] === log);
  const own = typeof log === "string" && !shared && entryNow(log) !== undefined;
  changeDocuments("log taken away", [
    { path: flight, raw: rest as Raw },
    ...(own ? [{ path: log, remove: true as const }] : []),
  ]);
}

/** Changes a flight's document. */
export function changeFlight(flight: string, label: string, change: (raw: Raw) => Raw): void {
  const entry = entryNow(flight);
  if (entry?.raw != null) changeDocuments(label, [{ path: flight, raw: change(entry.raw) }]);
}

/** The flight that a debrief is written to: the one given, or a new one of the plan, by its path. */
export function flightFor(plan: string, flight: string | null): string {
  return flight ?? beginFlight(plan);
}
