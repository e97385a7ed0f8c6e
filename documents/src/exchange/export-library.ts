import { LARGEST_FILE } from "../decode.js";
import { utf8 } from "../file-source.js";
import { isKind } from "../kinds/kinds.js";
import type { Raw } from "../migrate.js";
import type { ExportEntry, ExportRecord } from "./exchange.js";
import { piecesOfRecord, pieceText, sizeOfPiece } from "./records.js";

/** Deepest document that stands in a library as itself: the library around it adds two. */
const DEEPEST_INSIDE = 60;

/**
 * All documents as the text of one library, one document a line, for back-up and for moving between devices.
 *
 * Importing it again gives the same paths, documents, texts and drafts. What cannot stand among the documents, as it has no
 * kind or could not be read, goes beside them as its text.
 *
 * @param entries paths and documents; the paths as the documents name each other by them, each once
 * @param name what the library is called
 * @returns JSON text of a library document, ending with a line break
 * @example
 * exportLibrary([{ path: "larkmoor.field.json", raw: field }], "My bench");
 */
export function exportLibrary(entries: readonly ExportEntry[], name: string): string {
  return libraryText(entries, name, []);
}

/** `records`: pieces of the files that logs were read from, as JSON. */
function libraryText(entries: readonly ExportEntry[], name: string, records: readonly string[]): string {
  const documents = entries.filter((entry): entry is ExportEntry & { raw: Raw } => fits(entry.raw));
  const others = entries.filter((entry) => !fits(entry.raw));
  const unreadable = others.map(({ path, raw, text }) => ({
    file: path,
    text: raw === undefined ? (text ?? "") : JSON.stringify(raw),
  }));
  const drafts = entries.flatMap(({ path, drafts: fields }) =>
    fields === undefined || Object.keys(fields).length === 0 ? [] : [{ file: path, fields }],
  );
  const parts = [
    `"kind": "library"`,
    `"version": 1`,
    `"name": ${JSON.stringify(name)}`,
    `"files": ${listed(documents.map((entry) => entry.path))}`,
    `"documents": ${listed(documents.map((entry) => entry.raw))}`,
    ...(unreadable.length === 0 ? [] : [`"unreadable": ${listed(unreadable)}`]),
    ...(drafts.length === 0 ? [] : [`"drafts": ${listed(drafts)}`]),
    ...(records.length === 0 ? [] : [`"records": ${lines(records)}`]),
  ];
  return `{\n  ${parts.join(",\n  ")}\n}\n`;
}

/** What a library has around its documents, names of any length included [bytes]. */
const AROUND = 10_000;

/** What one library is made of. */
interface Part {
  readonly entries: ExportEntry[];
  readonly records: ReturnType<typeof piecesOfRecord>;
}

/**
 * As `exportLibrary`, in as many libraries as it takes for each to be small enough to be read again: one, but for very large
 * benches. Importing them together gives the same entries and records. Records are read as they are written out: others get
 * their turn in between.
 *
 * @param entries paths and documents
 * @param name what each library is called
 * @param records files that logs were read from, compressed
 * @example
 * (await exportLibraries(entries, "My bench")).length; // 1
 */
export async function exportLibraries(
  entries: readonly ExportEntry[],
  name: string,
  records: readonly ExportRecord[] = [],
): Promise<string[]> {
  const parts: Part[] = [{ entries: [], records: [] }];
  let size = AROUND;
  const roomFor = (own: number): Part => {
    const last = parts.at(-1);
    if (last !== undefined && (size === AROUND || size + own <= LARGEST_FILE)) {
      size += own;
      return last;
    }
    size = AROUND + own;
    const next: Part = { entries: [], records: [] };
    parts.push(next);
    return next;
  };
  for (const entry of entries) roomFor(sizeOf(entry)).entries.push(entry);
  for (const piece of records.flatMap(piecesOfRecord)) roomFor(sizeOfPiece(piece)).records.push(piece);
  const texts: string[] = [];
  for (const part of parts) {
    const pieces: string[] = [];
    for (const piece of part.records) pieces.push(await pieceText(piece));
    texts.push(libraryText(part.entries, name, pieces));
  }
  return texts;
}

/** About what an entry takes in a library, and no less [bytes]. */
function sizeOf({ path, raw, text, drafts }: ExportEntry): number {
  const quoted = raw !== undefined && !fits(raw) ? JSON.stringify(JSON.stringify(raw)) : "";
  return utf8(JSON.stringify([path, path, raw, text, drafts]) + quoted).length + 100;
}

/** Whether a document can stand among the others and come back as it was. */
function fits(raw: Raw | undefined): boolean {
  return raw !== undefined && isKind(raw["kind"]) && raw["kind"] !== "library" && isShallow(raw, DEEPEST_INSIDE);
}

function isShallow(value: unknown, levels: number): boolean {
  if (typeof value !== "object" || value === null) return true;
  return levels > 0 && Object.values(value).every((each) => isShallow(each, levels - 1));
}

function listed(values: readonly unknown[]): string {
  return lines(values.map((value) => JSON.stringify(value)));
}

function lines(values: readonly string[]): string {
  return values.length === 0 ? "[]" : `[\n    ${values.join(",\n    ")}\n  ]`;
}
