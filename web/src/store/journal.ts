import type { Entry } from "./entry.js";
import { isKeyed } from "./field.js";
import { entryOf, isStrange, recordOf } from "./record.js";

/** A change that the database may not hold yet. */
export interface Unwritten {
  readonly path: string;
  /** As the database was last seen; undefined: without it. */
  readonly base: Entry | undefined;
  /** As it was here; undefined: deleted. */
  readonly ours: Entry | undefined;
  /** As the database was given it before, without an answer yet. */
  readonly sent: Entry | undefined;
}

/** What of the browser's small storage a journal takes: it is written before a key press is over, which a database is not. */
export type JournalStorage = Pick<Storage, "getItem" | "setItem" | "removeItem" | "key" | "length">;

/** Which tabs are open, by the locks that they hold. */
export interface OpenTabs {
  /** Holds a name until the signal. */
  hold(name: string, until: AbortSignal): void;
  /** Names that are held; null: that cannot be told. */
  held(): Promise<ReadonlySet<string> | null>;
}

/** What is larger is no typing, and would take longer to write than the database does [characters]. */
const MOST = 250_000;

/**
 * What one tab has changed and not yet written, beside the database: a page that is ended while somebody types loses at most
 * the last key.
 */
export class Journal {
  private readonly storage: JournalStorage;
  private readonly tabs: OpenTabs;
  private readonly prefix: string;
  private readonly own: string;
  private readonly ending = new AbortController();
  private filled = false;

  /** @param bench name of the bench's database */
  constructor(bench: string, storage: JournalStorage, tabs: OpenTabs) {
    this.storage = storage;
    this.tabs = tabs;
    this.prefix = `${bench}-unwritten-`;
    this.own = `${this.prefix}${crypto.randomUUID()}`;
    tabs.hold(this.own, this.ending.signal);
  }

  /** Keeps what is not written; nothing: it is all written. */
  keep(unwritten: readonly Unwritten[]): void {
    const rows = unwritten.filter((row) => !statesOf(row).some((entry) => entry && isStrange(entry)));
    if (rows.length === 0 && !this.filled) return;
    try {
      const text = JSON.stringify(rows.map(rowOf));
      this.filled = rows.length > 0 && text.length <= MOST;
      if (this.filled) this.storage.setItem(this.own, text);
      else this.storage.removeItem(this.own);
    } catch {
      // without room the database alone keeps it, as it did before
    }
  }

  /** What tabs that are gone left unwritten. It stays until `forget`, so that nothing is lost if this page ends now, too. */
  async left(): Promise<{ readonly unwritten: readonly Unwritten[]; readonly forget: () => void }> {
    const held = await this.tabs.held();
    const names = this.names().filter((name) => name !== this.own && held?.has(name) !== true);
    return {
      unwritten: names.flatMap((name) => rowsOf(this.storage.getItem(name))),
      forget: () => {
        for (const name of names) this.storage.removeItem(name);
      },
    };
  }

  close(): void {
    this.ending.abort();
  }

  private names(): string[] {
    const names = Array.from({ length: this.storage.length }, (_, i) => this.storage.key(i) ?? "");
    return names.filter((name) => name.startsWith(this.prefix));
  }
}

const statesOf = ({ base, ours, sent }: Unwritten) => [base, ours, sent] as const;

function rowOf(unwritten: Unwritten) {
  const [base, ours, sent] = statesOf(unwritten).map((entry) => (entry === undefined ? null : recordOf(entry)));
  return { path: unwritten.path, base, ours, ...(sent === null ? {} : { sent }) };
}

/** What cannot be read is nothing. */
function rowsOf(text: string | null): Unwritten[] {
  try {
    const rows: unknown = JSON.parse(text ?? "[]");
    return Array.isArray(rows) ? rows.flatMap(unwrittenOf) : [];
  } catch {
    return [];
  }
}

function unwrittenOf(row: unknown): Unwritten[] {
  if (!isKeyed(row) || typeof row["path"] !== "string") return [];
  const [base, ours, sent] = [row["base"], row["ours"], row["sent"] ?? null].map((record) =>
    record === null ? undefined : entryOf(record),
  );
  const unwritten = { path: row["path"], base, ours, sent };
  const whole = statesOf(unwritten).every(
    (entry) => entry === undefined || (!isStrange(entry) && entry.path === row["path"]),
  );
  return whole ? [unwritten] : [];
}

/** The journal's place in this browser; null where it gives none. */
export function browserJournal(bench: string): Journal | null {
  try {
    return globalThis.localStorage === undefined ? null : new Journal(bench, globalThis.localStorage, lockedTabs);
  } catch {
    return null;
  }
}

const locks = (): LockManager | undefined => globalThis.navigator?.locks;

const lockedTabs: OpenTabs = {
  hold(name, until) {
    const ended = () => new Promise<void>((resolve) => until.addEventListener("abort", () => resolve()));
    void locks()
      ?.request(name, ended)
      .catch(() => undefined);
  },
  async held() {
    const found = await locks()?.query();
    return found === undefined ? null : new Set(found.held?.map(({ name }) => name ?? ""));
  },
};
