import type { Database } from "./database.js";
import type { Entry } from "./entry.js";
import { type Outcome, outcomeOf } from "./merge.js";
import { entryOf, keyOf, recordOf } from "./record.js";

/** An entry to be written. */
export interface Pending {
  readonly path: string;
  /** As the database was last seen; undefined: without it. */
  readonly base: Entry | undefined;
  /** As it is here; undefined: deleted. */
  readonly ours: Entry | undefined;
}

export interface Committed extends Pending {
  readonly outcome: Outcome;
}

/**
 * Writes entries in one transaction: all or none. What another tab wrote since is looked at first.
 *
 * @returns what came of each, once the database has said that it is kept
 */
export async function commit(database: Database, batch: readonly Pending[]): Promise<readonly Committed[]> {
  const { documents } = database;
  const one = async (pending: Pending): Promise<Committed> => {
    const { path, base, ours } = pending;
    const key = base === undefined ? path : keyOf(base);
    const record = await documents.get(key);
    const outcome = outcomeOf(base, ours, record === undefined ? undefined : entryOf(record));
    if (outcome.kind === "put") {
      await documents.put(recordOf(outcome.entry));
      if (key !== keyOf(outcome.entry)) await documents.delete(key);
    }
    if (outcome.kind === "delete") await documents.delete(key);
    return { ...pending, outcome };
  };
  // asked for all at once: thousands in a row, each waiting for the one before, take minutes
  return database.transaction("rw", documents, () => Promise.all(batch.map(one)));
}
