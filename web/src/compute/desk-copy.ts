import { isMotorFile } from "./motor-file.js";
import type { DeskDocument, ToDesk } from "./protocol.js";

/** A document of the store as far as computing is concerned; its parts are other objects once anything in them changed. */
export interface SourceDocument extends DeskDocument {
  readonly kind: string | null;
}

/** Where documents come from. */
export interface DocumentSource {
  entries(): readonly SourceDocument[];
  /** Calls the listener after any change. Returns a function that ends it. */
  subscribe(listener: () => void): () => void;
}

/** What changed. */
export interface Changes {
  readonly message: Extract<ToDesk, { kind: "documents" }>;
  readonly paths: ReadonlySet<string>;
  /** A rocket is among them. */
  readonly rockets: boolean;
  /** A motor is among them. */
  readonly motors: boolean;
}

/** Keeps track of what the desk knows, so that only what changed is sent. */
export class DeskCopy {
  private known = new Map<string, SourceDocument>();

  /** The desk is new: it knows nothing. */
  forget(): void {
    this.known = new Map();
  }

  has(path: string): boolean {
    return this.known.has(path);
  }

  /** What changed since it was last asked; null: nothing. */
  changes(entries: readonly SourceDocument[]): Changes | null {
    const now = new Map(entries.map((entry) => [entry.path, entry]));
    const put = entries.filter((entry) => !same(this.known.get(entry.path), entry));
    const gone = [...this.known.values()].filter(({ path }) => !now.has(path));
    this.known = now;
    if (put.length === 0 && gone.length === 0) return null;
    const changed = [...put, ...gone];
    return {
      message: {
        kind: "documents",
        put: put.map(({ path, raw, text, drafts }) => ({ path, raw, text, drafts })),
        remove: gone.map(({ path }) => path),
      },
      paths: new Set(changed.map(({ path }) => path)),
      rockets: changed.some(({ kind }) => kind === "rocket"),
      motors: changed.some(({ kind, path }) => kind === "motor" || isMotorFile(path)),
    };
  }
}

function same(before: SourceDocument | undefined, { raw, text, drafts }: SourceDocument): boolean {
  return before !== undefined && before.raw === raw && before.text === text && before.drafts === drafts;
}
