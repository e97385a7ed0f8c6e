import type { CsvThrust } from "./csv/thrust.js";
import { readThrustFile } from "./csv/thrust.js";
import { LARGEST_FILE } from "./decode.js";
import type { FileSource } from "./file-source.js";
import type { Fault, Issue } from "./issue.js";
import { type Document, isKind, type Kind, kinds, pathIn } from "./kinds/kinds.js";
import { libraryFiles } from "./library-files.js";
import type { Raw } from "./migrate.js";
import { type Read, readBytes, readValue } from "./read.js";
import { failureWords } from "./words/accepted.en.js";

/** A document with those it refers to. */
export interface LoadedNode {
  readonly kind: Kind | undefined;
  /** The file it stands in. */
  readonly file: string;
  /** Where in that file: empty but for a document inside another. */
  readonly path: string;
  readonly raw: Raw;
  /** Left out where its file has issues. */
  readonly document?: Document;
  /** By the field that refers to it. */
  readonly children: Readonly<Record<string, LoadedNode>>;
  /** Of a motor whose thrust stands in a file of its own. */
  readonly thrust?: CsvThrust;
}

/** A file and all that it refers to. */
export interface Loaded {
  /** As of `readDocument`; `missing` where there is no such file. */
  readonly state: "ready" | "invalid" | "newer" | "unreadable" | "missing";
  readonly kind: Kind | undefined;
  readonly root: LoadedNode | undefined;
  /** Of all files together. */
  readonly issues: readonly Issue[];
  /** Every file that was looked at, in order. */
  readonly files: readonly string[];
  /** Of a library: its documents one by one, so that a broken one stops no other. */
  readonly entries: readonly Loaded[];
}

/**
 * Loads a document of any kind with every file that it refers to, and collects the issues of all of them.
 *
 * A broken or missing file does not stop the others from being looked at.
 *
 * @param path the file to begin with
 * @param files where files come from
 * @param fitting the kinds that fit; left out: any
 * @example
 * await loadAny("demo.rocket.json", memoryFiles({ "demo.rocket.json": text }));
 */
export async function loadAny(path: string, files: FileSource, fitting?: readonly Kind[]): Promise<Loaded> {
  const loader = new Loader(files);
  const origin = { file: path, path: "", chain: [] };
  const root = await loader.file(path, fitting, origin);
  const first = loader.first;
  if (first?.kind === "library" && root !== undefined) return loadLibrary(path, root, loader, files);
  const state = first === undefined ? "missing" : first.state;
  const settled = state === "ready" && loader.issues.length > 0 ? "invalid" : state;
  return { state: settled, kind: first?.kind, root, issues: loader.issues, files: loader.files, entries: [] };
}

async function loadLibrary(path: string, root: LoadedNode, loader: Loader, files: FileSource): Promise<Loaded> {
  const documents = Array.isArray(root.raw["documents"]) ? (root.raw["documents"] as unknown[]) : [];
  const names = Array.isArray(root.raw["files"]) ? (root.raw["files"] as unknown[]) : [];
  const own = libraryFiles(files, path, names, documents);
  const entries: Loaded[] = [];
  for (const [index, value] of documents.entries()) {
    const each = new Loader(own);
    const node = await each.value(value, `documents[${index}]`, path);
    const state = each.first?.state ?? "unreadable";
    const settled = state === "ready" && each.issues.length > 0 ? "invalid" : state;
    entries.push({ state: settled, kind: node?.kind, root: node, issues: each.issues, files: each.files, entries: [] });
  }
  const issues = [...loader.issues, ...entries.flatMap((entry) => entry.issues)];
  return { state: loader.first?.state ?? "unreadable", kind: "library", root, issues, files: loader.files, entries };
}

/** Who refers to a file. */
interface Origin {
  readonly file: string;
  readonly path: string;
  /** Files that led here. */
  readonly chain: readonly string[];
}

class Loader {
  readonly issues: Issue[] = [];
  readonly files: string[] = [];
  /** How the first document was read. */
  first: Read | undefined;
  private readonly source: FileSource;
  private readonly reported = new Set<string>();

  constructor(source: FileSource) {
    this.source = source;
  }

  async file(path: string, fitting: readonly Kind[] | undefined, origin: Origin): Promise<LoadedNode | undefined> {
    const bytes = await this.bytes(path, origin);
    if (bytes === undefined) return undefined;
    const options = { file: path, ...(fitting === undefined ? {} : { kinds: fitting }) };
    const read = this.source.before?.read(bytes, options) ?? readBytes(bytes, options);
    return this.node(read, { ...origin, file: path, path: "" }, path);
  }

  /** A document that stands inside a library. */
  value(value: unknown, path: string, file: string): Promise<LoadedNode | undefined> {
    const read = readValue(value, { file });
    const issues = read.issues.map((issue) => ({ ...issue, path: issue.path === "" ? path : `${path}.${issue.path}` }));
    return this.node({ ...read, issues } as Read, { file, path, chain: [] }, file);
  }

  private async node(read: Read, at: Origin, file: string): Promise<LoadedNode | undefined> {
    this.first ??= read;
    if (!this.reported.has(`${file} ${at.path}`)) this.issues.push(...read.issues);
    this.reported.add(`${file} ${at.path}`);
    if (read.raw === undefined) return undefined;
    const document = read.state === "ready" ? read.document : undefined;
    return this.follow(read.raw, read.kind, document, { ...at, chain: [...at.chain, file] });
  }

  /** Loads what a document refers to, whether or not the document itself is right. */
  private async follow(
    raw: Raw,
    kind: Kind | undefined,
    document: Document | undefined,
    at: Origin,
  ): Promise<LoadedNode> {
    const children: Record<string, LoadedNode> = {};
    for (const [field, fitting] of Object.entries(kind === undefined ? {} : kinds[kind].references)) {
      const value = Object.hasOwn(raw, field) ? raw[field] : undefined;
      const path = at.path === "" ? field : `${at.path}.${field}`;
      const named = typeof value !== "string" || kind === undefined ? value : pathIn(kind, field, value);
      const child = await this.child(named, fitting, document, field, { ...at, path });
      if (child !== undefined) children[field] = child;
    }
    const thrust = kind === "motor" ? await this.thrust(raw["thrust"], at) : undefined;
    return {
      kind,
      file: at.file,
      path: at.path,
      raw,
      children,
      ...(document === undefined ? {} : { document }),
      ...(thrust === undefined ? {} : { thrust }),
    };
  }

  private async child(
    value: unknown,
    fitting: readonly Kind[],
    parent: Document | undefined,
    field: string,
    at: Origin,
  ): Promise<LoadedNode | undefined> {
    if (typeof value === "string") return this.file(this.source.resolve(at.file, value), fitting, at);
    if (typeof value !== "object" || value === null || Array.isArray(value)) return undefined;
    const raw = value as Raw;
    const kind = isKind(raw["kind"]) ? raw["kind"] : undefined;
    const document = parent === undefined ? undefined : ((parent as unknown as Raw)[field] as Document);
    return this.follow(raw, kind, document, at);
  }

  private async thrust(value: unknown, at: Origin): Promise<CsvThrust | undefined> {
    if (typeof value !== "string" || value.trim() === "") return undefined;
    const path = this.source.resolve(at.file, value.trim());
    const again = this.files.includes(path);
    const place = at.path === "" ? "thrust" : `${at.path}.thrust`;
    const bytes = await this.bytes(path, { ...at, path: place });
    if (bytes === undefined) return undefined;
    const read = readThrustFile(bytes);
    if (read.ok) return read.curve;
    if (!again) this.issues.push(...read.faults.map((fault) => ({ file: path, ...fault })));
    return undefined;
  }

  private async bytes(path: string, origin: Origin): Promise<Uint8Array | undefined> {
    const place = { file: origin.file, path: origin.path, found: JSON.stringify(path) };
    if (origin.chain.includes(path)) {
      this.report(place, "reference-cycle", "a file that does not lead back here");
      return undefined;
    }
    if (!this.files.includes(path)) this.files.push(path);
    const result = await this.source.read(path);
    if (!result.ok) {
      this.report(place, `file-${result.reason}`, failureWords[result.reason]);
      return undefined;
    }
    if (result.bytes.length > LARGEST_FILE) {
      this.report(place, "file-too-large", failureWords["too-large"]);
      return undefined;
    }
    return result.bytes;
  }

  private report(place: Pick<Issue, "file" | "path" | "found">, code: string, accepted: Fault["accepted"]): void {
    this.issues.push({ ...place, code, accepted, example: "" });
  }
}
