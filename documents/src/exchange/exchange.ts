import type { Issue } from "../issue.js";
import type { Kind } from "../kinds/kinds.js";
import type { Raw } from "../migrate.js";

/** A file as it was given: its name may carry folders, parted by slashes. */
export interface GivenFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What was typed into fields but cannot be read yet, by path: `{ "fins[0].root": "18o mm" }`. */
export type Drafts = Readonly<Record<string, string>>;

/** A document that came in, under the flat path by which the others refer to it. */
export interface ImportedEntry {
  readonly path: string;
  readonly kind: Kind | undefined;
  /** What it calls itself, or its path where it does not. */
  readonly name: string;
  /** As it was written, references rewritten to flat paths; undefined where it is no JSON object. */
  readonly raw: Raw | undefined;
  /** The text as it was, where not all of it could be taken over into `raw`. */
  readonly text?: string;
  /** Of the document by itself; a file that it names and that did not come is told in `issues` only. */
  readonly state: "ready" | "invalid" | "newer" | "unreadable";
  readonly issues: readonly Issue[];
  readonly drafts?: Drafts;
}

/** A thrust curve that came without a motor. */
export interface ImportedCurve {
  readonly name: string;
  /** [s], rising */
  readonly time: readonly number[];
  /** [N] */
  readonly newtons: readonly number[];
}

/** A file of figures that came with the log that was read from it. */
export interface ImportedRecord {
  /** By which its log names it. */
  readonly path: string;
  readonly bytes: Uint8Array;
  /** The bytes are compressed, as they were exported. */
  readonly gzip: boolean;
}

/** A file of figures to be exported, compressed: read stretch by stretch, as it may be large. */
export interface ExportRecord {
  readonly path: string;
  /** [bytes] */
  readonly size: number;
  /** Its bytes from one place to before another. */
  readonly read: (from: number, to: number) => Promise<Uint8Array>;
}

/** Everything that came in. */
export interface Imported {
  readonly entries: readonly ImportedEntry[];
  readonly curves: readonly ImportedCurve[];
  readonly records: readonly ImportedRecord[];
  /** What was not taken at all, and why. */
  readonly issues: readonly Issue[];
}

export interface ImportOptions {
  /** Paths that are in use already: what comes in gets other ones, and may refer to these. */
  readonly taken?: readonly string[];
}

/** A document to be exported: read, or as the text that could not be read. */
export interface ExportEntry {
  readonly path: string;
  readonly raw?: Raw | undefined;
  /** Where there is no `raw`. */
  readonly text?: string | undefined;
  readonly drafts?: Drafts | undefined;
}
