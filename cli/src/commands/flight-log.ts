import { basename, extname, resolve } from "node:path";
import {
  type FlightDocument,
  flightOfPlan,
  flownParts,
  type Issue,
  LARGEST_LOG,
  type Loaded,
  type LogMapping,
  loadAny,
  logFaultSentence,
  type PlanParts,
  placed,
  type Raw,
  type ReadLogRecord,
  readLog,
} from "@delaywright/documents";
import type { GivenColumns } from "../args/columns.js";
import type { Io } from "../io/io.js";
import type { FolderFlight } from "./flights-folder.js";
import { mappingWith } from "./mapping-with.js";

/** A flight that is to be debriefed, read from a CSV, a log's document or a flight's. */
export interface FlightLog {
  readonly flown: PlanParts;
  /** The flight's document: as it is, or a new one of the plan. */
  readonly raw: Raw;
  readonly document: FlightDocument;
  /** Where it stands; the CSV's own path where there is none yet. */
  readonly file: string;
  /** LOG is the flight's own document. */
  readonly flight: boolean;
  /** Null: the flight's document has none, or it is gone and what was written down counts. */
  readonly record: { readonly file: string; readonly read: ReadLogRecord; readonly number?: number } | null;
  /** Told, though they stop nothing. */
  readonly issues: readonly Issue[];
}

/** What is wrong with documents or with the record. */
export interface NoFlightLog {
  readonly ok: false;
  readonly issues: readonly Issue[];
  /** Of a record: the same, said for people. */
  readonly sentences?: readonly string[];
}

type Opened<What> = ({ readonly ok: true } & What) | NoFlightLog;

/** How the record is read. */
interface Reading {
  readonly plan: PlanParts;
  readonly columns: GivenColumns | undefined;
  /** Flights whose mappings are remembered. */
  readonly others: readonly FolderFlight[];
}

/** Reads what was given as LOG: by its ending a document, else a record. */
export async function flightLog(path: string, reading: Reading, io: Io): Promise<Opened<FlightLog>> {
  if (extname(path).toLowerCase() !== ".json") return newFlight(path, path, undefined, reading, io);
  const loaded = await loadAny(path, io.files, ["log", "flight"]);
  if (loaded.root === undefined || loaded.kind === undefined) return { ok: false, issues: loaded.issues };
  if (loaded.kind === "flight") return knownFlight(path, loaded, reading, io);
  const log = placed(loaded.root, "log")?.document;
  if (log === undefined) return { ok: false, issues: loaded.issues };
  return newFlight(path, io.files.resolve(path, log.source), log.columns, reading, io);
}

async function newFlight(
  path: string,
  csv: string,
  mapping: LogMapping | undefined,
  reading: Reading,
  io: Io,
): Promise<Opened<FlightLog>> {
  const record = await recordOf(csv, mapping, reading, io);
  if (!record.ok) return record;
  const raw = flightOfPlan(basename(path, extname(path)), reading.plan);
  return {
    ok: true,
    flown: reading.plan,
    raw,
    document: raw as FlightDocument,
    file: path,
    flight: false,
    record,
    issues: [],
  };
}

async function knownFlight(path: string, loaded: Loaded, reading: Reading, io: Io): Promise<Opened<FlightLog>> {
  const document = placed(loaded.root, "flight")?.document;
  const flown = loaded.root === undefined ? undefined : flownParts(loaded.root);
  if (loaded.root === undefined || document === undefined || flown === undefined)
    return { ok: false, issues: loaded.issues };
  const node = loaded.root.children["log"];
  const log = placed(node, "log")?.document;
  const known = { ok: true as const, flown, raw: loaded.root.raw, document, file: path, flight: true };
  if (log === undefined || node === undefined) return { ...known, record: null, issues: loaded.issues };
  const record = await recordOf(io.files.resolve(node.file, log.source), log.columns, reading, io);
  if (record.ok) {
    const { logFlight } = document;
    return { ...known, record: { ...record, ...(logFlight === undefined ? {} : { number: logFlight }) }, issues: [] };
  }
  return document.findings === undefined ? record : { ...known, record: null, issues: record.issues };
}

async function recordOf(
  csv: string,
  mapping: LogMapping | undefined,
  { columns, others }: Reading,
  io: Io,
): Promise<Opened<{ readonly file: string; readonly read: ReadLogRecord }>> {
  const file = await io.files.readRecord(csv);
  if (!file.ok) return { ok: false, issues: [unreadable(csv, file.reason)] };
  const { bytes } = file;
  const chosen = mappingWith(readLog(bytes, mapping), { columns, known: mapping !== undefined, others });
  const read = chosen.mapping === null ? chosen.read : readLog(bytes, chosen.mapping);
  if (read.ok) return { ok: true, file: csv, read };
  return {
    ok: false,
    issues: read.faults.map((fault) => ({ file: csv, ...fault })),
    sentences: read.faults.map((fault) => `${csv}: ${logFaultSentence(fault)}`),
  };
}

const failures = Object.freeze({
  missing: "the path of a file that is there",
  "too-large": `a record of at most ${LARGEST_LOG / 1e6} MB`,
  "not-a-file": "the path of a file, not of a folder",
  "not-allowed": "a file that may be read",
});

function unreadable(file: string, reason: keyof typeof failures): Issue {
  return {
    file,
    path: "",
    code: `file-${reason}`,
    found: JSON.stringify(file),
    accepted: failures[reason],
    example: "",
  };
}

/** Whether a flight of a folder is the one that is debriefed: its own document, or one of the same flight of the same record. */
export function isSameFlight(
  other: FolderFlight,
  log: FlightLog,
  number: number | undefined,
  output?: string,
): boolean {
  const same = (a: string, b: string): boolean => resolve(a) === resolve(b);
  if (same(other.path, log.file) || (output !== undefined && same(other.path, output))) return true;
  const node = other.loaded.root?.children["log"];
  const source = placed(node, "log")?.document.source;
  if (node === undefined || source === undefined || log.record === null) return false;
  const flight = (other.loaded.root?.document as FlightDocument | undefined)?.logFlight;
  return same(resolve(node.file, "..", source), log.record.file) && (flight ?? number) === number;
}
