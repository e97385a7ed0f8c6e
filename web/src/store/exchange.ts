import { type ImportedCurve, type ImportedEntry, type Issue, type Kind, Paths, type Raw } from "@delaywright/documents";
import { same } from "./difference.js";
import type { Content, Edit, Entry } from "./entry.js";
import { contentOf, makeEntry } from "./make-entry.js";
import { referencesOf, withPaths } from "./references.js";

/** A document that came in. */
export interface TakenIn {
  readonly path: string;
  readonly name: string;
  readonly kind: Kind | null;
  /** The path that it had; another than `path` where that was in use by another document. */
  readonly wanted: string;
}

/** What came of an import. */
export interface ImportReport {
  readonly added: readonly TakenIn[];
  /** Documents that are on the bench already, to the last field and all that they refer to. */
  readonly same: readonly TakenIn[];
  /** Thrust curves without a motor: nothing was made of them yet. */
  readonly curves: readonly ImportedCurve[];
  /** What is wrong in what came in, by the paths given, and what was not taken at all. */
  readonly issues: readonly Issue[];
}

/** A document to be taken in, under the path by which the others refer to it. */
export interface Arriving {
  readonly path: string;
  readonly content: Content;
}

/** Where documents go, and what has to be added for that. */
export interface Arrived {
  readonly edits: readonly Edit[];
  readonly added: readonly TakenIn[];
  readonly same: readonly TakenIn[];
}

/**
 * Where documents that arrive together go: those that are there already are not doubled, those whose path is in use get
 * another, and what refers to them follows.
 *
 * @param arriving the documents
 * @param present what is there
 */
export function arrivalOf(arriving: readonly Arriving[], present: readonly Entry[]): Arrived {
  const arrival = new Arrival(arriving, present);
  for (const { path } of arriving) arrival.place(path);
  const { edits, added, known } = arrival;
  return { edits, added, same: known };
}

class Arrival {
  readonly edits: Edit[] = [];
  readonly added: TakenIn[] = [];
  readonly known: TakenIn[] = [];
  private readonly arriving: ReadonlyMap<string, Arriving>;
  private readonly present: ReadonlyMap<string, Entry>;
  private readonly byName = new Map<string, Entry[]>();
  /** Where each went, by the path that it had. */
  private readonly went = new Map<string, string>();
  private readonly begun = new Set<string>();
  /** Each document that is there stands for one that arrives. */
  private readonly matched = new Set<string>();
  private readonly paths: Paths;

  constructor(arriving: readonly Arriving[], present: readonly Entry[]) {
    this.arriving = new Map(arriving.map((each) => [each.path, each]));
    this.present = new Map(present.map((entry) => [entry.path, entry]));
    this.paths = new Paths(this.present.keys());
    for (const entry of present) {
      const key = likeness(entry);
      const others = this.byName.get(key);
      if (others === undefined) this.byName.set(key, [entry]);
      else others.push(entry);
    }
  }

  /** Places a document, after those that it refers to. */
  place(wanted: string): void {
    const each = this.arriving.get(wanted);
    if (each === undefined || this.begun.has(wanted)) return;
    this.begun.add(wanted);
    const { raw } = each.content;
    for (const other of raw === null ? [] : referencesOf(raw)) this.place(other);
    const content = { ...each.content, raw: raw === null ? null : withPaths(raw, this.went) };
    const entry = makeEntry(wanted, content, 0, 1);
    const { name, kind } = entry;
    const there = this.find(entry);
    if (there !== undefined) {
      this.matched.add(there.path);
      this.went.set(wanted, there.path);
      this.known.push({ path: there.path, name, kind, wanted });
      return;
    }
    const path = this.paths.take(wanted);
    this.went.set(wanted, path);
    this.added.push({ path, name, kind, wanted });
    this.edits.push(editOf(path, content));
  }

  private find(entry: Entry): Entry | undefined {
    const free = (each: Entry): boolean => !this.matched.has(each.path) && same(contentOf(each), contentOf(entry));
    const first = this.present.get(entry.path);
    if (first !== undefined && free(first)) return first;
    return this.byName.get(likeness(entry))?.find((each) => free(each) && !this.arriving.has(each.path));
  }
}

function likeness({ kind, name, path }: Entry): string {
  return `${kind} ${kind === null ? path : name}`;
}

function editOf(path: string, { raw, text, drafts }: Content): Edit {
  return { path, drafts, ...(raw === null ? {} : { raw }), ...(text === null ? {} : { text }) };
}

/** What came in, as documents to be placed. */
export function arrivingOf(entries: readonly ImportedEntry[]): readonly Arriving[] {
  return entries.map(({ path, raw, text, drafts }) => {
    return { path, content: { raw: raw ?? null, text: text ?? null, drafts: drafts ?? {} } };
  });
}

/** The issues of what was taken in, by the paths given. */
export function issuesOf(entries: readonly ImportedEntry[], added: readonly TakenIn[]): Issue[] {
  const paths = new Map(added.map(({ wanted, path }) => [wanted, path]));
  return entries.flatMap(({ path, issues }) => {
    const given = paths.get(path);
    return given === undefined ? [] : issues.map((issue) => ({ ...issue, file: given }));
  });
}

/** Documents, and every one that they refer to. */
export function withReferenced(paths: readonly string[], get: (path: string) => Entry | undefined): Entry[] {
  const found = new Map<string, Entry>();
  const waiting = [...paths];
  for (let path = waiting.shift(); path !== undefined; path = waiting.shift()) {
    const entry = found.has(path) ? undefined : get(path);
    if (entry === undefined) continue;
    found.set(path, entry);
    if (entry.raw !== null) waiting.push(...referencesOf(entry.raw as Raw));
  }
  return [...found.values()];
}
