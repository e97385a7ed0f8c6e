import { decodeText, LARGEST_FILE } from "../decode.js";
import { resolvePath } from "../file-source.js";
import type { Fault, Issue } from "../issue.js";
import { type ParsedJson, parseJson } from "../json/parse.js";
import type { Raw } from "../migrate.js";
import { readValue } from "../read.js";
import { failureWords, tableWords } from "../words/accepted.en.js";
import type { Drafts, GivenFile } from "./exchange.js";
import { baseName } from "./flat-path.js";
import { leniently } from "./leniently.js";
import { type RecordPiece, recordPiecesIn } from "./records.js";
import { isRaw } from "./references.js";

/** Most documents and curves that one import takes. */
export const MOST_DOCUMENTS = 20_000;

/** One document, curve or text found in a file. */
export interface Piece {
  /** Path of its file; within a library the path that its name leads to. */
  readonly file: string;
  /** The name that it should keep as it is; undefined where any will do. */
  readonly keep: string | undefined;
  readonly is: "document" | "table" | "text";
  readonly value: unknown;
  /** What it was read from, where that was a file of its own. */
  readonly text: string;
  readonly faults: readonly Fault[];
  readonly drafts?: Drafts;
}

/** What is in the files, and what was not taken. */
export interface Unpacked {
  readonly pieces: readonly Piece[];
  /** Parts of records, as libraries hold them. */
  readonly records: readonly RecordPiece[];
  readonly issues: readonly Issue[];
}

/** Takes files apart: documents, the documents of libraries, and tables. */
export function unpack(files: readonly GivenFile[]): Unpacked {
  const pieces: Piece[] = [];
  const records: RecordPiece[] = [];
  const issues: Issue[] = [];
  for (const { name, bytes } of files) {
    const file = resolvePath("", name.replaceAll("\\", "/"));
    if (bytes.length > LARGEST_FILE)
      issues.push(refused(file, "file-too-large", `${bytes.length} bytes`, failureWords["too-large"]));
    else pieces.push(...piecesOf(file, bytes, issues, records));
  }
  if (pieces.length <= MOST_DOCUMENTS) return { pieces, records, issues };
  const code = "too-many-documents";
  issues.push(
    refused("", code, `${pieces.length} documents`, `at most ${MOST_DOCUMENTS} at once; the rest was left out`),
  );
  return { pieces: pieces.slice(0, MOST_DOCUMENTS), records, issues };
}

function refused(file: string, code: string, found: string, accepted: string): Issue {
  return { file, path: "", code, found, accepted, example: "" };
}

function piecesOf(file: string, bytes: Uint8Array, issues: Issue[], records: RecordPiece[]): Piece[] {
  const decoded = decodeText(bytes);
  const base = { file, keep: undefined };
  if (!decoded.ok) {
    const text = leniently(bytes);
    const broken = text === undefined ? undefined : brokenBackUp(file, text, parseJson(text));
    if (broken !== undefined) {
      issues.push(broken);
      return [];
    }
    if (text !== undefined && looksLikeDocument(file, text))
      return [{ ...base, is: "text", value: undefined, text, faults: [decoded.fault] }];
    issues.push({ file, ...decoded.fault, ...(decoded.fault.code === "empty-file" ? neededIn(file) : {}) });
    return [];
  }
  const { text } = decoded;
  if (!looksLikeDocument(file, text)) return [{ ...base, is: "table", value: undefined, text, faults: [] }];
  return fromText(base, text, issues, records);
}

/** A document from its text; of a library its documents. */
function fromText(
  base: Pick<Piece, "file" | "keep" | "drafts">,
  text: string,
  issues: Issue[],
  /** Null: it stands inside a library already. */
  records: RecordPiece[] | null,
): Piece[] {
  const parsed = parseJson(text);
  const broken = records === null ? undefined : brokenBackUp(base.file, text, parsed);
  if (broken !== undefined) {
    issues.push(broken);
    return [];
  }
  if (!parsed.ok) return [{ ...base, is: "text", value: undefined, text, faults: parsed.faults }];
  if (!isRaw(parsed.value)) {
    const { issues: found } = readValue(parsed.value, { file: base.file });
    return [{ ...base, is: "text", value: undefined, text, faults: found }];
  }
  if (parsed.value["kind"] === "library" && records !== null) {
    records.push(...recordPiecesIn(parsed.value["records"]));
    return fromLibrary(base.file, parsed.value, parsed.faults, issues);
  }
  return [{ ...base, is: "document", value: parsed.value, text, faults: parsed.faults }];
}

/** What is told of a text that begins as an export does and breaks off: it is no document that anyone would mend on the bench. */
function brokenBackUp(file: string, text: string, parsed: ParsedJson): Issue | undefined {
  if (!/^\s*\{\s*"kind"\s*:\s*"library"/.test(text)) return undefined;
  const fault = parsed.ok ? undefined : parsed.faults.at(-1);
  if (parsed.ok || fault?.code !== "json-syntax") return undefined;
  return {
    file,
    path: `line ${parsed.line}`,
    code: "back-up-broken",
    found: fault.found,
    accepted: "the whole back-up, as it was exported,",
    example: "",
  };
}

/** What a file that is empty should hold, by its name. */
function neededIn(file: string): Partial<Issue> {
  return /\.json$/i.test(file) ? {} : tableWords;
}

/** A file whose name or first sign says that it is a document; anything else is looked at as a table. */
function looksLikeDocument(file: string, text: string): boolean {
  return /\.json$/i.test(file) || /^\s*[{[]/.test(text);
}

function fromLibrary(library: string, raw: Raw, faults: readonly Fault[], issues: Issue[]): Piece[] {
  const read = readValue(raw, { file: library });
  const documents = listOf(raw["documents"]);
  const names = listOf(raw["files"]);
  const drafts = draftsOf(raw);
  const own = (path: string): boolean => !/^documents\[\d+\]/.test(path);
  issues.push(...read.issues.filter((issue) => own(issue.path)));
  issues.push(...faults.filter((fault) => own(fault.path)).map((fault) => ({ file: library, ...fault })));
  if (read.state === "newer") return [{ file: library, keep: undefined, is: "document", value: raw, text: "", faults }];
  const base = (name: unknown, index: number) => {
    const known = typeof name === "string" && name.trim() !== "";
    const file = known ? resolvePath(library, name.trim()) : `${library}/${index + 1}`;
    const typed = known ? drafts.get(name) : undefined;
    return { file, keep: known ? name : undefined, ...(typed === undefined ? {} : { drafts: typed }) };
  };
  const pieces = documents.map((value, index): Piece => {
    const prefix = `documents[${index}]`;
    const inside = faults
      .filter((fault) => fault.path === prefix || fault.path.startsWith(`${prefix}.`))
      .map((fault) => ({ ...fault, path: fault.path.slice(prefix.length + 1) }));
    const is = isRaw(value) ? "document" : "text";
    const text = is === "text" || inside.length > 0 ? JSON.stringify(value) : "";
    return { ...base(names[index], index), is, value, text, faults: inside };
  });
  const texts = listOf(raw["unreadable"]).flatMap((each, index): Piece[] => {
    if (!isRaw(each) || typeof each["text"] !== "string") return [];
    return fromText(base(each["file"], documents.length + index), each["text"], issues, null);
  });
  return [...pieces, ...texts];
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

/** Drafts by the name of their document. */
function draftsOf(raw: Raw): ReadonlyMap<unknown, Drafts> {
  const drafts = new Map<unknown, Drafts>();
  for (const each of listOf(raw["drafts"])) {
    if (!isRaw(each) || !isRaw(each["fields"])) continue;
    const fields = Object.entries(each["fields"]).filter(
      (field): field is [string, string] => typeof field[1] === "string",
    );
    drafts.set(each["file"], Object.fromEntries(fields));
  }
  return drafts;
}

/** Name of a piece for a person, without folders. */
export function shortName(piece: Piece): string {
  return baseName(piece.file).replace(/\.[a-z]{1,5}$/i, "");
}
