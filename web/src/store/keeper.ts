import { type Committed, commit, type Pending } from "./commit.js";
import { Connection, type Opened } from "./connection.js";
import type { Database } from "./database.js";
import type { Entry } from "./entry.js";
import type { Journal, Unwritten } from "./journal.js";
import { makeEntry } from "./make-entry.js";
import type { Memory } from "./memory.js";
import { rebased, unchanged } from "./merge.js";
import { entryOf } from "./record.js";
import { pathInstead, withReferencesTo } from "./references.js";
import { reasonOf, type Saving } from "./saving.js";
import { type News, Tabs } from "./tabs.js";
import { Watched } from "./watched.js";

export interface KeeperOptions {
  readonly name: string;
  readonly memory: Memory;
  readonly now: () => number;
  readonly patience: number;
  /** Null: none can be kept. */
  readonly journal: Journal | null;
  /** A document had to get another path, since another tab made one under the same. */
  readonly moved: (from: string) => void;
  /** Another tab changed the settings. */
  readonly settings: () => void;
}

type Looked = ReadonlyMap<string, Entry>;

/**
 * Keeps the memory in the database, and the memory in step with other tabs.
 *
 * Jobs run one after the other. What changes while one is under way is written by the next, all of it in one transaction.
 */
export class Keeper {
  readonly saving = new Watched<Saving>({ state: "saved", at: null, unsaved: [] });
  private readonly options: KeeperOptions;
  private readonly connection: Connection;
  private readonly tabs: Tabs;
  /** What the database held when it was last seen. */
  private readonly seen = new Map<string, Entry>();
  /** Paths that are not kept as they are here. */
  private readonly unsaved = new Set<string>();
  /** What the database was given and has not answered yet. */
  private readonly sent = new Map<string, Entry | undefined>();
  /** What the app gave by itself: nothing is lost with it. */
  private readonly given = new Set<Entry>();
  private jobs: Promise<unknown> = Promise.resolve();
  private writeWaits = false;

  constructor(options: KeeperOptions) {
    this.options = options;
    this.tabs = new Tabs(options.name, (news) => this.hear(news));
    this.connection = new Connection({
      name: options.name,
      patience: options.patience,
      leaving: () => this.write(),
      left: () => this.failed("upgraded-elsewhere"),
      late: () => void this.write(),
    });
  }

  /** Opens the database and reads everything. Resolves to null where it cannot be opened. */
  start(): Promise<Database | null> {
    return this.job(async () => {
      const database = await this.connect();
      if (database !== null) await this.recover();
      return database;
    });
  }

  /** Something at these paths was changed here. */
  touch(paths: Iterable<string>, given = false): Promise<void> {
    for (const path of paths) {
      this.unsaved.add(path);
      const entry = this.options.memory.get(path);
      if (given && entry !== undefined) this.given.add(entry);
    }
    this.note();
    return this.write();
  }

  /** Writes what is not kept yet. */
  write(): Promise<void> {
    if (this.unsaved.size > 0)
      this.say({ state: this.saving.get().state === "upgraded-elsewhere" ? "upgraded-elsewhere" : "saving" });
    if (this.writeWaits) return this.jobs as Promise<void>;
    this.writeWaits = true;
    return this.job(() => this.writeNow());
  }

  /** Runs a job of another's on the database, after what waits; undefined where it cannot be opened. */
  with<Value>(use: (database: Database) => Promise<Value>): Promise<Value | undefined> {
    return this.job(async () => {
      const database = await this.connect();
      return database === null ? undefined : use(database);
    });
  }

  /** Looks at everything again: what another tab said may not have been heard. */
  lookAgain(): Promise<unknown> {
    return this.job(() => this.connect(true));
  }

  tellSettings(): void {
    this.tabs.tell({ documents: [], settings: true });
  }

  /** Resolves when nothing waits. */
  async idle(): Promise<void> {
    for (let last: unknown = null; last !== this.jobs; ) {
      last = this.jobs;
      await last;
    }
  }

  close(): void {
    this.options.journal?.close();
    this.tabs.close();
    this.connection.close();
  }

  private job<Value>(work: () => Promise<Value>): Promise<Value> {
    const job = this.jobs.then(work);
    this.jobs = job.catch(() => undefined);
    return job;
  }

  /** The open database; where it was opened just now, with everything in it read. */
  private async connect(again = false): Promise<Database | null> {
    const opened: Opened = await this.connection.open();
    if (!opened.ok) {
      this.failed(opened.reason);
      return null;
    }
    if (!opened.fresh && !again) return opened.database;
    try {
      const rows = await opened.database.documents.toArray();
      const found = new Map(rows.map(entryOf).map((entry) => [entry.path, entry]));
      // a database that was taken away is made again from here
      const lost = found.size === 0 && this.seen.size > 0 && opened.fresh;
      if (lost) for (const path of this.seen.keys()) this.unsaved.add(path);
      this.take(found, lost ? [] : [...this.seen.keys()]);
      if (lost) this.seen.clear();
      return opened.database;
    } catch (error) {
      this.connection.close();
      this.failed(reasonOf(error));
      return null;
    }
  }

  private pending(): Pending[] {
    return [...this.unsaved].map((path) => ({
      path,
      base: this.seen.get(path),
      ours: this.options.memory.get(path),
    }));
  }

  /** Notes what is not written, in case the page is ended before it is. */
  private note(): void {
    const lost = this.pending().filter(({ ours }) => ours === undefined || !this.given.has(ours));
    this.options.journal?.keep(lost.map((each) => ({ ...each, sent: this.sent.get(each.path) })));
  }

  /** Makes again what a page that was ended had changed and not written. */
  private async recover(): Promise<void> {
    const { journal, memory } = this.options;
    if (journal === null) return;
    const { unwritten, forget } = await journal.left();
    const changes = unwritten.filter((each) => !this.holds(each));
    memory.set(new Map(changes.map((each) => [each.path, this.again(each)])));
    if (changes.length > 0) void this.touch(changes.map(({ path }) => path));
    forget();
  }

  /** Does the database hold a change, or something that came after it? */
  private holds({ path, base, ours }: Unwritten): boolean {
    const now = this.seen.get(path);
    if (now?.unreadable === "newer-record") return true;
    if (ours === undefined) return !unchanged(base, now);
    if (now === undefined) return false;
    return unchanged(now, ours) || (base === undefined && now.revision >= ours.revision);
  }

  private again({ path, base, ours, sent }: Unwritten): Entry | undefined {
    const now = this.seen.get(path);
    // what was typed before the end was being written: the rest goes on from there
    const from = unchanged(sent, now) ? sent : base;
    return now === undefined || from === undefined || ours === undefined ? ours : rebased(from, ours, now);
  }

  private async writeNow(): Promise<void> {
    this.writeWaits = false;
    const database = await this.connect();
    if (database === null) return;
    if (this.unsaved.size === 0) {
      this.say({ state: "saved" });
      return;
    }
    const batch = this.pending();
    for (const { path, ours } of batch) this.sent.set(path, ours);
    try {
      this.settle(await commit(database, batch));
    } catch (error) {
      await this.oneByOne(database, batch, error);
    }
  }

  /** One document that cannot be written must not keep the others from it. */
  private async oneByOne(database: Database, batch: readonly Pending[], first: unknown): Promise<void> {
    let failure: unknown = batch.length === 1 ? first : null;
    for (const pending of batch.length === 1 ? [] : batch) {
      try {
        this.settle(await commit(database, [pending]));
      } catch (error) {
        failure = error;
      }
    }
    if (failure !== null) this.failed(reasonOf(failure));
  }

  private settle(all: readonly Committed[]): void {
    const { memory } = this.options;
    const set = new Map<string, Entry | undefined>();
    for (const { path } of all) this.sent.delete(path);
    // before anything else of the batch counts as written: it may refer to what has another path now
    for (const { path, outcome } of all) if (outcome.kind === "clash") this.moveAside(path, outcome.entry);
    for (const { path, ours, outcome } of all) {
      if (outcome.kind === "newer" || outcome.kind === "clash") continue;
      const now = memory.get(path);
      const kept = outcome.kind === "delete" ? undefined : outcome.entry;
      if (kept === undefined) this.seen.delete(path);
      else this.seen.set(path, kept);
      if (now === ours) {
        set.set(path, kept);
        this.unsaved.delete(path);
      } else if (kept !== undefined && now !== undefined && ours !== undefined && kept !== ours) {
        set.set(path, rebased(ours, now, kept));
      }
    }
    memory.set(set);
    this.note();
    const written = all.filter(({ outcome }) => outcome.kind === "put" || outcome.kind === "delete");
    if (written.length > 0) this.tabs.tell({ documents: written.map(({ path }) => path), settings: false });
    if (all.some(({ outcome }) => outcome.kind === "newer")) {
      this.failed("upgraded-elsewhere");
      return;
    }
    this.say({ state: this.unsaved.size === 0 ? "saved" : "saving", at: this.options.now() });
    if (this.unsaved.size > 0) void this.write();
  }

  /** Ours gets another path, and what was not written yet refers to it there. */
  private moveAside(path: string, theirs: Entry): void {
    const { memory, moved, now } = this.options;
    const ours = memory.get(path);
    this.seen.set(path, theirs);
    this.unsaved.delete(path);
    const set = new Map<string, Entry | undefined>([[path, theirs]]);
    if (ours !== undefined) {
      const other = pathInstead(path, memory.paths());
      set.set(other, makeEntry(other, ours, now(), ours.revision));
      this.unsaved.add(other);
      for (const each of this.unsaved) {
        const entry = each === other ? undefined : memory.get(each);
        const changed = entry && withReferencesTo(entry, new Map([[path, other]]));
        if (changed !== undefined) set.set(each, changed);
      }
    }
    memory.set(set);
    moved(path);
  }

  private hear(news: News): void {
    if (news.settings) this.options.settings();
    if (news.documents.length === 0) return;
    void this.job(async () => {
      const database = await this.connect();
      if (database === null) return;
      const rows = await database.documents.bulkGet([...news.documents]);
      const found = rows.filter((row) => row !== undefined).map(entryOf);
      this.take(new Map(found.map((entry) => [entry.path, entry])), news.documents);
    });
  }

  /** Takes over what the database holds. What was changed here and is not kept yet is made again on it. */
  private take(found: Looked, gone: readonly string[]): void {
    const { memory } = this.options;
    const set = new Map<string, Entry | undefined>();
    for (const path of new Set([...found.keys(), ...gone])) {
      const theirs = found.get(path);
      const base = this.seen.get(path);
      const ours = memory.get(path);
      if (unchanged(base, theirs)) continue;
      if (!this.unsaved.has(path)) set.set(path, theirs);
      else if (ours === undefined || (base === undefined && theirs !== undefined)) continue;
      else if (base !== undefined && theirs !== undefined) {
        if (theirs.unreadable !== null) continue;
        set.set(path, rebased(base, ours, theirs));
      }
      if (theirs === undefined) this.seen.delete(path);
      else this.seen.set(path, theirs);
    }
    memory.set(set);
  }

  private failed(reason: Extract<Opened, { ok: false }>["reason"]): void {
    if (reason === "upgraded-elsewhere") this.say({ state: reason });
    else this.say({ state: "failed", reason });
  }

  private say(saving: Pick<Saving, "state"> & Partial<Saving>): void {
    const { memory } = this.options;
    const { at } = this.saving.get();
    const unsaved = [...this.unsaved].filter((path) => !this.given.has(memory.get(path) as Entry));
    this.saving.set({ at, ...saving, unsaved });
  }
}
