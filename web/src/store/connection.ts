import { Database, LATEST } from "./database.js";
import { type FailedSaving, reasonOf } from "./saving.js";

export interface ConnectionOptions {
  readonly name: string;
  /** How long an old tab may keep the database from being opened [ms]. */
  readonly patience: number;
  /** Called before the database is closed for another tab that upgrades or deletes it. */
  readonly leaving: () => Promise<unknown>;
  /** Called once another tab upgraded the database, and it is closed here. */
  readonly left: () => void;
  /** Called when an opening that was given up succeeds after all. */
  readonly late: () => void;
}

export type Opened =
  | { readonly ok: true; readonly database: Database; readonly fresh: boolean }
  | { readonly ok: false; readonly reason: FailedSaving | "upgraded-elsewhere" };

/** The way to the database: opened by hand, closed as soon as another tab upgrades it. */
export class Connection {
  private readonly options: ConnectionOptions;
  private database: Database | null = null;
  private opening: Promise<Database> | null = null;
  /** Opened after it was given up, and not taken yet. */
  private arrived: Promise<Database> | null = null;
  /** Another tab upgraded the database: this one never opens it again. */
  private left = false;

  constructor(options: ConnectionOptions) {
    this.options = options;
  }

  /** `fresh`: what it holds may have changed since it was open last. */
  async open(): Promise<Opened> {
    if (this.left) return { ok: false, reason: "upgraded-elsewhere" };
    if (this.database?.isOpen() === true) return { ok: true, database: this.database, fresh: false };
    try {
      const database = await this.inTime(this.arrived ?? this.opening ?? this.begin());
      this.arrived = null;
      if (database === null) return { ok: false, reason: "blocked" };
      this.left ||= isNewer(database);
      if (this.left) {
        database.close();
        return { ok: false, reason: "upgraded-elsewhere" };
      }
      this.database = database;
      return { ok: true, database, fresh: true };
    } catch (error) {
      const reason = reasonOf(error);
      return { ok: false, reason: reason === "unknown" ? "unavailable" : reason };
    }
  }

  /** The next opening is a fresh one. */
  close(): void {
    this.database?.close();
    this.database = null;
  }

  private begin(): Promise<Database> {
    const database = new Database(this.options.name);
    database.on("versionchange", (event) => {
      void this.options.leaving().finally(() => {
        // a database that is deleted may be made again; one that is upgraded is no longer ours
        this.left ||= event.newVersion !== null;
        database.close();
        if (this.left) this.options.left();
      });
      return false;
    });
    // waiting is seen to in inTime: the library shall not write to the console
    database.on("blocked", () => false);
    this.opening = database.open().then(
      () => database,
      (error: unknown) => {
        database.close();
        throw error;
      },
    );
    const over = () => {
      this.opening = null;
    };
    this.opening.then(over, over);
    return this.opening;
  }

  /** The database, or null where it takes too long: then it is told of later. */
  private inTime(opening: Promise<Database>): Promise<Database | null> {
    return new Promise((resolve, reject) => {
      let waiting = true;
      const timer = setTimeout(() => {
        waiting = false;
        resolve(null);
      }, this.options.patience);
      opening.then(
        (database) => {
          clearTimeout(timer);
          if (waiting) resolve(database);
          else if (this.database !== database) {
            this.arrived = opening;
            this.options.late();
          }
        },
        (error: unknown) => {
          clearTimeout(timer);
          reject(error);
        },
      );
    });
  }
}

/** The library opens a database that a newer app made, too; its own repairs add less than ten to the version. */
function isNewer(database: Database): boolean {
  return database.backendDB().version >= (LATEST + 1) * 10;
}
