import Dexie, { type Table, type Transaction } from "dexie";
import { isKeyed } from "./field.js";

export const DATABASE = "delaywright";

/** The version that this app writes. */
export const LATEST = 4;

/** The browser's own database of one bench. Opened by hand only: an old tab must not open it again after an upgrade. */
export class Database extends Dexie {
  /** By path. Rows are looked at before they are trusted, so they have no type here. */
  declare readonly documents: Table<unknown, IDBValidKey>;
  declare readonly settings: Table<unknown, string>;
  /** Answers that were computed, by plan: they can be computed again. */
  declare readonly briefs: Table<{ readonly plan: string; readonly brief: unknown }, string>;
  /** Files that logs were read from, by path. */
  declare readonly records: Table<unknown, string>;

  constructor(name: string = DATABASE) {
    super(name, { autoOpen: false });
    this.version(1).stores({ documents: "path" });
    this.version(2).stores({ documents: "path" }).upgrade(addWhatIsTyped);
    this.version(3).stores({ documents: "path", settings: "key", briefs: "plan" });
    this.version(LATEST).stores({ documents: "path", settings: "key", briefs: "plan", records: "path" });
  }
}

/** Version 1 kept documents only. A row that is no such document is left as it is. */
async function addWhatIsTyped(transaction: Transaction): Promise<void> {
  await transaction
    .table<unknown, IDBValidKey>("documents")
    .toCollection()
    .modify((row, holder) => {
      if (!isKeyed(row) || !isKeyed(row["raw"])) return;
      holder.value = { text: null, drafts: {}, revision: 1, record: 1, ...row };
    });
}
