import type { Issue } from "../issue.js";
import { fromBase64, toBase64 } from "./base64.js";
import type { ExportRecord, ImportedRecord } from "./exchange.js";
import { baseName, slug } from "./flat-path.js";
import { isRaw } from "./references.js";

/** Most bytes of a record in one piece: as text a third more, which leaves room in a library for its documents. */
const MOST_BYTES = 3_000_000;

/** Most pieces of one record. */
const MOST_PIECES = 1000;

/** Part of a record as a library holds it. */
export interface RecordPiece {
  readonly file: string;
  /** From 1 */
  readonly part: number;
  readonly of: number;
  readonly gzip: string;
}

/**
 * The path under which a record is kept: its file's name and a mark of what is in it, so that a file that comes twice is kept
 * once, and no other can take its place.
 *
 * @param file the name it came with
 * @param bytes the whole file
 * @example
 * recordPath("Third flight.CSV", new Uint8Array([49])); // "third-flight-340ca71c978b3eb7.csv"
 */
export function recordPath(file: string, bytes: Uint8Array): string {
  const stem = slug(baseName(file).replace(/\.[a-z0-9]{1,5}$/i, "")).slice(0, 40);
  return `${stem === "" ? "log" : stem}-${markOf(bytes)}.csv`;
}

/** Two runs of a multiplying hash over the bytes: 64 bits, against chance and not against malice. */
function markOf(bytes: Uint8Array): string {
  let a = 0x811c9dc5;
  let b = 0x1b873593;
  for (const byte of bytes) {
    a = Math.imul(a ^ byte, 0x01000193);
    b = Math.imul(b ^ byte, 0x85ebca6b) + 1;
  }
  return [a, b].map((half) => (half >>> 0).toString(16).padStart(8, "0")).join("");
}

/** Bytes that are turned into text at once: a multiple of three, so that stretches join without padding. */
const STRETCH = 150_000;

/** Part of a record that is to be exported. */
interface WantedPiece extends Omit<RecordPiece, "gzip"> {
  readonly record: ExportRecord;
  readonly from: number;
  readonly to: number;
}

/** A record in pieces that are each small enough for one library. */
export function piecesOfRecord(record: ExportRecord): WantedPiece[] {
  const { path, size } = record;
  const of = Math.max(1, Math.ceil(size / MOST_BYTES));
  return Array.from({ length: of }, (_, i) => {
    const from = i * MOST_BYTES;
    return { file: path, part: i + 1, of, record, from, to: Math.min(size, from + MOST_BYTES) };
  });
}

/** About what a piece takes in a library, and no less [bytes]. */
export function sizeOfPiece({ file, from, to }: WantedPiece): number {
  return 4 * Math.ceil((to - from) / 3) + 6 * file.length + 200;
}

/** A piece as JSON. Between its stretches others get their turn. */
export async function pieceText({ file, part, of, record, from, to }: WantedPiece): Promise<string> {
  const head: Omit<RecordPiece, "gzip"> = { file, part, of };
  let text = `${JSON.stringify(head).slice(0, -1)},"gzip":"`;
  for (let at = from; at < to; at += STRETCH) text += toBase64(await record.read(at, Math.min(to, at + STRETCH)));
  return `${text}"}`;
}

/** The pieces that a library holds; what is none is told by the library's own schema. */
export function recordPiecesIn(records: unknown): RecordPiece[] {
  if (!Array.isArray(records)) return [];
  return records.filter(isRaw).flatMap(({ file, part = 1, of = 1, gzip }) => {
    const whole = typeof file === "string" && typeof gzip === "string" && isCount(part) && isCount(of);
    return whole ? [{ file, part, of, gzip }] : [];
  });
}

function isCount(value: unknown): value is number {
  return typeof value === "number" && Number.isInteger(value) && value >= 1 && value <= MOST_PIECES;
}

/** Records from their pieces, whichever library each came in. */
export function joinedRecords(pieces: readonly RecordPiece[]): {
  readonly records: readonly ImportedRecord[];
  readonly issues: readonly Issue[];
} {
  const records: ImportedRecord[] = [];
  const issues: Issue[] = [];
  for (const file of new Set(pieces.map((piece) => piece.file))) {
    const own = pieces.filter((piece) => piece.file === file);
    const of = own[0]?.of ?? 1;
    const parts = Array.from({ length: of }, (_, i) => own.find(({ part }) => part === i + 1));
    const there = parts.filter((part) => part !== undefined);
    const bytes = there.map(({ gzip }) => fromBase64(gzip));
    const broken = bytes.some((each) => each === undefined);
    if (there.length === of && !broken)
      records.push({ path: file, bytes: joined(bytes.filter((each) => each !== undefined)), gzip: true });
    else
      issues.push({
        file,
        path: "",
        code: broken ? "record-broken" : "record-incomplete",
        found: broken ? "a text that holds no bytes" : `${there.length} of ${of} parts`,
        accepted: "the record as it was exported, all files of the export taken in together",
        example: "",
      });
  }
  return { records, issues };
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
