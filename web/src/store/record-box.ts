import type { ExportRecord } from "@delaywright/documents";
import type { Database } from "./database.js";
import { isKeyed } from "./field.js";
import type { Keeper } from "./keeper.js";
import type { Memory } from "./memory.js";
import { entryOf } from "./record.js";

/** A file that a log was read from. */
export interface KeptRecord {
  readonly path: string;
  /** Compressed. Its bytes stay outside of the page until they are asked for, piece by piece. */
  readonly gzip: Blob;
  /** When it came [ms]. */
  readonly savedAt: number;
}

export interface RecordBoxOptions {
  readonly keeper: Keeper;
  readonly memory: Memory;
  readonly now: () => number;
}

/** How long a record may lie without a log that names it: another tab may be about to make one [ms]. */
const ORPHAN_AFTER = 86_400_000;

/**
 * The files that logs were read from, each under a path that says what is in it, so that none ever changes.
 *
 * A record goes with the last log that names it, and comes back when that is undone.
 */
export class RecordBox {
  private readonly options: RecordBoxOptions;
  /** What the database does not hold: it has no room, or its log was taken away. */
  private readonly held = new Map<string, KeptRecord>();
  /** By log or flight: the files that it names. One that can no longer be read goes on naming those that it named. */
  private naming: ReadonlyMap<string, ReadonlySet<string>> = new Map();
  private named: ReadonlySet<string> = new Set();
  private seen: readonly unknown[] = [];

  constructor(options: RecordBoxOptions) {
    this.options = options;
    options.memory.subscribe(() => this.follow());
  }

  /**
   * Takes away what no log names any more, and what another tab cannot be about to name. Nothing as long as there is an entry that
   * cannot be read: it may name any of them.
   */
  async start(): Promise<void> {
    this.follow();
    if (this.options.memory.list().some(({ kind }) => kind === null)) return;
    const latest = this.options.now() - ORPHAN_AFTER;
    await this.quietly(async ({ records }) => {
      const paths = await records.toCollection().primaryKeys();
      for (const path of paths.filter((each) => !this.named.has(each))) {
        const record = recordIn(await records.get(path));
        if (record === null || record.savedAt < latest) await records.delete(path);
      }
    });
  }

  /**
   * Keeps a compressed file under the path that its log names; what is there already is not written again.
   *
   * @returns whether the database holds it; where it does not, this page does until it is closed
   */
  async put(path: string, gzip: Blob): Promise<boolean> {
    const record: KeptRecord = { path, gzip, savedAt: this.options.now() };
    const there = await this.quietly(async ({ records }) => recordIn(await records.get(path)) !== null);
    const written = there === true || (await this.write(record));
    if (written) this.held.delete(path);
    else if (!this.held.has(path)) this.held.set(path, record);
    return written === true;
  }

  /** Some browsers keep bytes but, in a private window, no blobs. */
  private async write(record: KeptRecord): Promise<boolean> {
    const put = (row: unknown) => this.quietly(async ({ records }) => records.put(row));
    if ((await put(record)) !== undefined) return true;
    return (await put({ ...record, gzip: new Uint8Array(await record.gzip.arrayBuffer()) })) !== undefined;
  }

  /** A file, compressed; null where it is not here. */
  async read(path: string): Promise<Blob | null> {
    return (await this.find(path))?.gzip ?? null;
  }

  /** Records as they are exported; those that are not here are left out. */
  async compressed(paths: Iterable<string>): Promise<ExportRecord[]> {
    const found: ExportRecord[] = [];
    for (const path of paths) {
      const record = await this.find(path);
      if (record !== null) found.push(exportedRecord(record));
    }
    return found;
  }

  has(path: string): boolean {
    return this.named.has(path) || this.held.has(path);
  }

  private async find(path: string): Promise<KeptRecord | null> {
    const held = this.held.get(path);
    if (held !== undefined) return held;
    return recordIn(await this.quietly(({ records }) => records.get(path)));
  }

  /** Keeps step with the logs: what the last of them let go leaves the database, what one names again comes back. */
  private follow(): void {
    const { memory } = this.options;
    const readable = [memory.list("log"), memory.list("flight")];
    const unreadable = [...this.naming].filter(([path]) => memory.get(path)?.kind === null);
    const seen = [...readable, unreadable.length];
    if (seen.every((each, i) => each === this.seen[i])) return;
    this.seen = seen;
    const before = this.named;
    this.naming = new Map([
      ...unreadable,
      ...readable.flat().map((entry) => [entry.path, recordsOf([entry])] as const),
    ]);
    this.named = new Set([...this.naming.values()].flatMap((names) => [...names]));
    for (const path of before) if (!this.named.has(path)) void this.lay(path);
    for (const path of this.named) {
      const held = this.held.get(path);
      if (held !== undefined && !before.has(path)) void this.put(path, held.gzip);
    }
  }

  /** Takes a record out of the database and holds it here, once the log itself is gone from there. */
  private async lay(path: string): Promise<void> {
    await Promise.resolve();
    await this.quietly(async ({ documents, records }) => {
      const record = recordIn(await records.get(path));
      if (this.named.has(path) || record === null) return;
      this.held.set(path, record);
      const entries = (await documents.toArray()).map(entryOf);
      // another tab may have made a log of the same file, and what cannot be read may be one
      const mayBeNamed = entries.some(({ kind }) => kind === null) || recordsOf(entries).has(path);
      if (!mayBeNamed) await records.delete(path);
    });
  }

  private quietly<Value>(use: (database: Database) => Promise<Value>): Promise<Value | undefined> {
    return this.options.keeper.with(use).catch(() => undefined);
  }
}

/** A row of the database; earlier apps kept the bytes themselves. Null: it is no record. */
function recordIn(row: unknown): KeptRecord | null {
  if (!isKeyed(row) || typeof row["path"] !== "string" || typeof row["savedAt"] !== "number") return null;
  const { path, gzip, savedAt } = row;
  if (gzip instanceof Blob) return { path, gzip, savedAt };
  return gzip instanceof Uint8Array ? { path, gzip: new Blob([new Uint8Array(gzip)]), savedAt } : null;
}

function exportedRecord({ path, gzip }: KeptRecord): ExportRecord {
  const read = async (from: number, to: number) => new Uint8Array(await gzip.slice(from, to).arrayBuffer());
  return { path, size: gzip.size, read };
}

/** Paths of the files that logs name, those inside flights too. */
export function recordsOf(
  entries: readonly { readonly kind?: unknown; readonly raw?: unknown }[],
): ReadonlySet<string> {
  const named = entries.flatMap(({ raw }) => {
    if (!isKeyed(raw)) return [];
    const log = raw["kind"] === "flight" ? raw["log"] : raw["kind"] === "log" ? raw : null;
    return isKeyed(log) && typeof log["source"] === "string" ? [log["source"]] : [];
  });
  return new Set(named);
}
