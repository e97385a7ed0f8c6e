import {
  checkField,
  type ExportEntry,
  exportLibraries,
  type FileSource,
  flatPath,
  type Kind,
  Paths,
  type Raw,
  resolvePath,
} from "@delaywright/documents";
import { DATABASE } from "./database.js";
import { same } from "./difference.js";
import type { Content, Edit, Entry } from "./entry.js";
import { type Arrived, arrivalOf, arrivingOf, type ImportReport, issuesOf, withReferenced } from "./exchange.js";
import { writeField } from "./field.js";
import { type Contents, History, type UndoResult } from "./history.js";
import { browserJournal, type Journal } from "./journal.js";
import { Keeper } from "./keeper.js";
import { contentOf, editedContent, makeEntry } from "./make-entry.js";
import { Memory } from "./memory.js";
import { PersistenceBox } from "./persistence.js";
import { type Incoming, readIncoming } from "./read-incoming.js";
import { isStrange } from "./record.js";
import { RecordBox, recordsOf } from "./record-box.js";
import { browserMirror, type Mirror, SettingsBox } from "./settings.js";
import { forgetTypedTexts } from "./typed-texts.js";
import { Watched } from "./watched.js";
import { EXAMPLE_PLAN, workedExample } from "./worked-example.js";

export interface BenchStoreOptions {
  /** Of the database, and of the channel between tabs. */
  readonly name?: string;
  readonly now?: () => number;
  readonly mirror?: Mirror | null;
  readonly journal?: Journal | null;
  /** How long an old tab may keep the database from being opened [ms]. */
  readonly patience?: number;
}

/** How a change is to be remembered. */
export interface ChangeOptions {
  /** The field that is being typed in: further changes of it are the same step. */
  readonly visit?: string;
  /** It came out of files, which can be taken in again. */
  readonly imported?: boolean;
  /** By the app itself: not to be undone, and nothing is lost with it. */
  readonly given?: boolean;
  /** Signed by the flyer: undo passes it over, since a signature is taken back on its sheet, with its reason. */
  readonly signed?: boolean;
}

const NAME = "Delaywright bench";
const PATIENCE = 3000;

/** All documents of one bench: in memory, in the browser's database, and how they came to be. */
export class BenchStore {
  readonly memory = new Memory(forgetTypedTexts);
  readonly keeper: Keeper;
  readonly settings: SettingsBox;
  readonly persistence = new PersistenceBox();
  readonly records: RecordBox;
  readonly steps: Watched<History["last"]>;
  private readonly history = new History();
  private readonly now: () => number;
  /** Nothing was kept for any plan yet: a first visit need not wait for the database to say so. */
  private noBriefs = false;

  constructor(options: BenchStoreOptions = {}) {
    const { name = DATABASE, now = Date.now, mirror = browserMirror(), patience = PATIENCE } = options;
    const { journal = browserJournal(name) } = options;
    this.now = now;
    this.steps = new Watched(this.history.last);
    this.keeper = new Keeper({
      name,
      memory: this.memory,
      now,
      patience,
      journal,
      moved: (path) => {
        this.history.forget(path);
        this.steps.set(this.history.last);
      },
      settings: () => void this.settings.read(),
    });
    this.settings = new SettingsBox(this.keeper, mirror);
    this.records = new RecordBox({ keeper: this.keeper, memory: this.memory, now });
  }

  /** Reads everything. On a bench that never had the worked example and has nothing else, it is put there. */
  async open(): Promise<void> {
    void this.persistence.look();
    const database = await this.keeper.start();
    await this.settings.read();
    void this.records.start();
    const there = database !== null || this.keeper.saving.get().reason === "unavailable";
    if (!there || this.settings.watched.get().exampleGiven) return;
    if (this.memory.paths().length === 0) {
      this.noBriefs = true;
      this.change("worked example", this.exampleArrival().edits, { given: true });
    }
    void this.settings.change({ exampleGiven: true });
  }

  /** Changes documents: one step of undo. What a newer version of the app keeps stays as it is. */
  change(label: string, edits: readonly Edit[], options: ChangeOptions = {}): void {
    const at = this.now();
    const before = new Map<string, Entry | undefined>();
    const contents = new Map<string, Content | undefined>();
    for (const edit of edits) {
      const entry = this.memory.get(edit.path);
      if (entry?.unreadable === "newer-record" && edit.remove !== true) continue;
      before.set(edit.path, entry);
      const known = contents.get(edit.path);
      const now = contents.has(edit.path) ? known && this.entryFrom(edit.path, known, entry, at) : entry;
      contents.set(edit.path, edit.remove === true ? undefined : editedContent(now, edit));
    }
    this.apply(contents, options.given === true);
    if (options.signed === true) void this.persistence.ask();
    if (options.given === true || options.signed === true) return;
    const changes = new Map([...before].map(([path, each]) => [path, { before: each, after: this.memory.get(path) }]));
    const { visit, imported } = options;
    this.history.record({
      label,
      at,
      changes,
      ...(visit === undefined ? {} : { visit }),
      ...(imported === undefined ? {} : { imported }),
    });
    this.steps.set(this.history.last);
    void this.persistence.ask();
  }

  /** Sets a field: a text or number that is wrong becomes a draft, anything else goes into the document. */
  setField(path: string, field: string, value: unknown, label: string): void {
    const entry = this.memory.get(path);
    if (entry === undefined || entry.kind === null || entry.raw === null) return;
    const drafts = Object.fromEntries(Object.entries(entry.drafts).filter(([each]) => !isWithin(each, field)));
    const typed = typeof value === "string" || typeof value === "number";
    const wrong = typed && checkField(entry.kind, field, value) !== undefined;
    const edit: Edit = wrong
      ? { path, raw: entry.raw, drafts: { ...drafts, [field]: String(value) } }
      : { path, raw: writeField(entry.raw, field, value), drafts };
    this.change(label, [edit], { visit: `${path} ${field}` });
  }

  /** Adds a document under a path like its name, and returns the path. */
  add(kind: Kind, raw: Raw, wantedName?: string): string {
    const named = typeof raw["name"] === "string" ? raw["name"] : "";
    const name = wantedName ?? this.freeName(kind, named === "" ? kind : named);
    const path = new Paths(this.memory.paths()).take(flatPath("", name, kind));
    this.change(`New ${kind.replaceAll("-", " ")}: ${name}`, [{ path, raw: { ...raw, kind, name } }]);
    return path;
  }

  private freeName(kind: Kind, name: string): string {
    const taken = new Set(this.memory.list(kind).map((entry) => entry.name));
    let free = name;
    for (let count = 2; taken.has(free); count += 1) free = `${name} ${count}`;
    return free;
  }

  endMerge(): void {
    this.history.endMerge();
  }

  undo(options: { readonly confirmed?: boolean } = {}): UndoResult {
    const result = this.history.undo(
      (path) => this.memory.get(path),
      this.now(),
      options.confirmed === true,
      (contents) => this.apply(contents),
    );
    this.steps.set(this.history.last);
    return result;
  }

  redo(): UndoResult {
    const result = this.history.redo(
      (path) => this.memory.get(path),
      (contents) => this.apply(contents),
    );
    this.steps.set(this.history.last);
    return result;
  }

  private apply(contents: Contents, given = false): void {
    const at = this.now();
    const set = new Map<string, Entry | undefined>();
    for (const [path, content] of contents) {
      const before = this.memory.get(path);
      const now = content && this.entryFrom(path, content, before, at);
      if (before === undefined ? now !== undefined : now === undefined || !same(contentOf(before), contentOf(now))) {
        set.set(path, now);
      }
    }
    if (set.size === 0) return;
    this.memory.set(set);
    void this.keeper.touch(set.keys(), given);
  }

  private entryFrom(path: string, content: Content, before: Entry | undefined, at: number): Entry {
    if ("record" in content && isStrange(content as Entry)) return content as Entry;
    return makeEntry(path, content, at, (before?.revision ?? 0) + 1);
  }

  /** Files as the documents name each other. */
  files(): FileSource {
    return {
      resolve: resolvePath,
      read: (path) => {
        const text = this.rawFile(path);
        return Promise.resolve(
          text === undefined
            ? { ok: false as const, reason: "missing" as const }
            : { ok: true as const, bytes: new TextEncoder().encode(text) },
        );
      },
    };
  }

  /** A document as a file of its own. */
  rawFile(path: string): string | undefined {
    const entry = this.memory.get(path);
    if (entry === undefined) return undefined;
    return entry.raw === null ? (entry.text ?? "") : `${JSON.stringify(entry.raw, null, 2)}\n`;
  }

  /** Everything as texts of libraries, with the files that logs were read from. */
  exportInParts(): Promise<readonly string[]> {
    return this.exported(this.memory.list(), NAME);
  }

  /** Documents, with all that they refer to, likewise. */
  exportDocuments(paths: readonly string[]): Promise<readonly string[]> {
    const entries = withReferenced(paths, (path) => this.memory.get(path));
    return this.exported(entries, entries[0]?.name ?? NAME);
  }

  private async exported(entries: readonly Entry[], name: string): Promise<readonly string[]> {
    const records = await this.records.compressed(recordsOf(entries));
    return exportLibraries(entries.map(exported), name, records);
  }

  async importInto(files: readonly Incoming[], read = readIncoming): Promise<ImportReport> {
    const { entries, curves, records, issues } = await read(files);
    const { edits, added, same: known } = arrivalOf(arrivingOf(entries), this.memory.list());
    const label = added.length === 1 ? `import of ${added[0]?.name}` : `import of ${added.length} documents`;
    for (const { path, gzip } of records) await this.records.put(path, gzip);
    if (edits.length > 0) this.change(label, edits, { imported: true });
    const found = issuesOf(entries, added).filter((issue) => !this.isThere(issue.code, issue.found));
    return { added, same: known, curves, issues: [...issues, ...found] };
  }

  /** What did not come along may be on the bench. */
  private isThere(code: string, found: string): boolean {
    if (code !== "file-missing") return false;
    return [...this.memory.paths(), ...recordsOf(this.memory.list())].some((path) => JSON.stringify(path) === found);
  }

  /** Takes every document away: one step of undo. Resolves once that is kept. */
  async wipe(): Promise<void> {
    const edits = this.memory.paths().map((path): Edit => ({ path, remove: true }));
    if (edits.length > 0) this.change("everything deleted", edits);
    await this.keeper.idle();
    await this.keeper.with((database) => database.briefs.clear()).catch(() => undefined);
  }

  /** Puts the worked example on the bench, where it is not, and returns the path of its plan. */
  installExample(): string {
    const { edits, added, same: known } = this.exampleArrival();
    if (edits.length > 0) this.change("worked example", edits, { imported: true });
    void this.settings.change({ exampleGiven: true });
    return [...added, ...known].find(({ wanted }) => wanted === EXAMPLE_PLAN)?.path ?? EXAMPLE_PLAN;
  }

  private exampleArrival(): Arrived {
    return arrivalOf(workedExample(), this.memory.list());
  }

  /** An answer that was kept for a plan. */
  async readBrief(plan: string): Promise<unknown> {
    if (this.noBriefs) return null;
    const row = await this.keeper.with((database) => database.briefs.get(plan));
    return row?.brief ?? null;
  }

  /** Keeps an answer for a plan, and drops those of plans that are gone. */
  async keepBrief(plan: string, brief: unknown): Promise<void> {
    this.noBriefs = false;
    await this.keeper.with(async ({ briefs }) => {
      await briefs.put({ plan, brief });
      const gone = (await briefs.toCollection().primaryKeys()).filter((path) => this.memory.get(path) === undefined);
      if (gone.length > 0) await briefs.bulkDelete(gone);
    });
  }

  close(): void {
    this.keeper.close();
  }
}

function exported({ path, raw, text, drafts }: Entry): ExportEntry {
  return { path, drafts, ...(raw === null ? { text: text ?? "" } : { raw }) };
}

/** Whether a field is another, or inside it. */
function isWithin(field: string, other: string): boolean {
  return field === other || (field.startsWith(other) && /^[.[]/.test(field.slice(other.length)));
}
