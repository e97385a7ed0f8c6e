import type { Kind, Raw } from "@delaywright/documents";

/** Version of the shape in which an entry is kept. */
export const RECORD = 1;

/**
 * Why an entry has no kind.
 *
 * `newer-record`: kept by a newer version of the app, which alone may change it; `corrupt-record`: the database holds
 * something else than an entry; `not-a-document`: a text that is no document of a known kind.
 */
export type Unreadable = "newer-record" | "corrupt-record" | "not-a-document";

/** A document in the store. Another object once anything in it changed. */
export interface Entry {
  /** The file name by which other documents refer to it: `demo-76.rocket.json`. */
  readonly path: string;
  /** Null: unreadable. */
  readonly kind: Kind | null;
  readonly name: string;
  /** The document as typed, every field at its last right value; null where it has no kind. */
  readonly raw: Raw | null;
  /** The text that could not be read, or not all of it. */
  readonly text: string | null;
  /** By field path (`fins[0].root`): what was typed and cannot be read yet. */
  readonly drafts: Readonly<Record<string, string>>;
  /** When it was last changed [ms]. */
  readonly savedAt: number;
  readonly revision: number;
  readonly record: typeof RECORD;
  readonly unreadable: Unreadable | null;
}

/** What of an entry the flyer can change. */
export type Content = Pick<Entry, "raw" | "text" | "drafts">;

/** One change of one document. */
export interface Edit {
  readonly path: string;
  /** The whole document from now on. */
  readonly raw?: Raw;
  /** Takes the document away. */
  readonly remove?: true;
  /** The document as a text, which is read if it can be; beside `raw`: the text that it came from. */
  readonly text?: string;
  /** All drafts from now on; left out: those whose fields are still there and unchanged. */
  readonly drafts?: Readonly<Record<string, string>>;
}
