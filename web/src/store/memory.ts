import type { Kind } from "@delaywright/documents";
import type { Entry } from "./entry.js";
import { Watched } from "./watched.js";

const byName = new Intl.Collator("en", { numeric: true, sensitivity: "base" });

function order(one: Entry, other: Entry): number {
  return byName.compare(one.name, other.name) || (one.path < other.path ? -1 : 1);
}

/** A document as it stands in a list. */
export type Listed = Pick<Entry, "path" | "kind" | "name">;

/** All entries as they are now, changed at once and written later. */
export class Memory {
  private readonly watched = new Watched<ReadonlyMap<string, Entry>>(new Map());
  private readonly lists = new Map<Kind | undefined, readonly Entry[]>();
  private listed: ReadonlyMap<string, Entry> | null = null;
  private names: readonly Listed[] = [];

  private readonly gone: (path: string) => void;

  /** @param gone hears of each entry that is taken away */
  constructor(gone: (path: string) => void = () => undefined) {
    this.gone = gone;
  }

  readonly subscribe = this.watched.subscribe;

  get(path: string): Entry | undefined {
    return this.watched.get().get(path);
  }

  paths(): string[] {
    return [...this.watched.get().keys()];
  }

  /** Sets entries, undefined takes one away; heard once. */
  set(changes: ReadonlyMap<string, Entry | undefined>): void {
    const entries = new Map(this.watched.get());
    let changed = false;
    for (const [path, entry] of changes) {
      if (entries.get(path) === entry) continue;
      changed = true;
      if (entry === undefined) {
        entries.delete(path);
        this.gone(path);
      } else entries.set(path, entry);
    }
    if (changed) this.watched.set(entries);
  }

  /** Sorted by name; the same list as before where none of its entries changed. */
  list(kind?: Kind): readonly Entry[] {
    const entries = this.watched.get();
    if (this.listed !== entries) {
      this.listed = entries;
      for (const [each, before] of this.lists) this.lists.set(each, this.followed(each, before));
    }
    const known = this.lists.get(kind);
    if (known !== undefined) return known;
    const list = this.sorted(kind);
    this.lists.set(kind, list);
    return list;
  }

  /** Every document by its name, sorted; the same list as before where no name and no kind changed. */
  readonly listing = (): readonly Listed[] => {
    const now = this.list();
    const { names } = this;
    const same = ({ path, kind, name }: Entry, i: number): boolean =>
      names[i]?.path === path && names[i].kind === kind && names[i].name === name;
    if (now.length !== names.length || !now.every(same))
      this.names = now.map(({ path, kind, name }) => ({ path, kind, name }));
    return this.names;
  };

  /** A list as it is now: put in order anew only where an entry came, went, or is called otherwise. */
  private followed(kind: Kind | undefined, before: readonly Entry[]): readonly Entry[] {
    const entries = this.watched.get();
    const now = before.map(({ path }) => entries.get(path));
    const stays = (entry: Entry | undefined, i: number): entry is Entry =>
      entry !== undefined && entry.name === before[i]?.name && entry.kind === before[i]?.kind;
    let count = 0;
    for (const entry of entries.values()) if (kind === undefined || entry.kind === kind) count += 1;
    return kept(before, count === now.length && now.every(stays) ? now : this.sorted(kind));
  }

  private sorted(kind: Kind | undefined): readonly Entry[] {
    const all = [...this.watched.get().values()];
    return (kind === undefined ? all : all.filter((entry) => entry.kind === kind)).sort(order);
  }
}

function kept(before: readonly Entry[], now: readonly Entry[]): readonly Entry[] {
  return before.length === now.length && before.every((entry, index) => entry === now[index]) ? before : now;
}
