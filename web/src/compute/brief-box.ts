import type { DocumentSource } from "./desk-copy.js";
import { digestOf } from "./digest.js";
import type { Told } from "./told.js";

/** An answer as it is kept: what it was computed from, and by which build of the app. */
export interface SavedBrief {
  readonly version: string;
  /** Every document that was looked at; an empty digest: it was missing. */
  readonly files: readonly { readonly path: string; readonly digest: string }[];
  readonly told: Told;
}

/** Where answers are kept between visits. Both may fail: an answer can be computed again. */
export interface BriefMemory {
  read(plan: string): Promise<unknown>;
  save(plan: string, brief: SavedBrief): Promise<void>;
}

/** An answer found in memory. */
export interface FoundBrief {
  readonly told: Told;
  /** Documents that it rests on where they are still the same; null where any changed. */
  readonly files: ReadonlySet<string> | null;
}

/** Keeps settled answers by what they were computed from. */
export class BriefBox {
  private readonly memory: BriefMemory;
  private readonly documents: DocumentSource;
  /** Null: nothing is found again, since a build cannot be told from the one before. */
  private readonly version: string | null;

  constructor(memory: BriefMemory, documents: DocumentSource, version: string | null) {
    this.memory = memory;
    this.documents = documents;
    this.version = version;
  }

  /** Another build of the app may compute or tell otherwise: its answers are none. */
  async read(plan: string): Promise<FoundBrief | null> {
    if (this.version === null) return null;
    const saved = await this.memory.read(plan).catch(() => null);
    if (!isSaved(saved) || saved.version !== this.version) return null;
    const now = this.digests();
    const same = saved.files.every(({ path, digest }) => (now.get(path) ?? "") === digest);
    return { told: saved.told, files: same ? new Set(saved.files.map(({ path }) => path)) : null };
  }

  save(plan: string, files: ReadonlySet<string>, told: Told): void {
    if (this.version === null) return;
    const now = this.digests();
    const saved = {
      version: this.version,
      files: [...files].map((path) => ({ path, digest: now.get(path) ?? "" })),
      told,
    };
    this.memory.save(plan, saved).catch(() => undefined);
  }

  private digests(): Map<string, string> {
    return new Map(this.documents.entries().map((entry) => [entry.path, digestOf(entry)]));
  }
}

/** What stands under another version may have any shape; what stands under this one was kept by this build. */
function isSaved(value: unknown): value is SavedBrief {
  return typeof value === "object" && value !== null && "version" in value && "files" in value && "told" in value;
}
