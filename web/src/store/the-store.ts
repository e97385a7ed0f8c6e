import type { Kind, Raw } from "@delaywright/documents";
import { BenchStore, type ChangeOptions } from "./bench-store.js";
import type { Edit, Entry } from "./entry.js";
import type { ImportReport } from "./exchange.js";
import type { UndoResult } from "./history.js";
import type { Incoming, ReadFiles } from "./read-incoming.js";

/** The bench of this page. */
export const store = new BenchStore();

let opening: Promise<void> | null = null;

/**
 * Opens the database, reads everything and keeps it in step from now on.
 *
 * Resolves where there is no database too: the bench then works in memory, and `useSaving` says that nothing is kept.
 */
export function openStore(): Promise<void> {
  opening ??= store.open().finally(listen);
  return opening;
}

function listen(): void {
  if (typeof window === "undefined") return;
  window.addEventListener("beforeunload", (event) => {
    const { state, unsaved } = store.keeper.saving.get();
    if (state !== "saved" && unsaved.length > 0) event.preventDefault();
  });
  document.addEventListener("focusout", () => store.endMerge());
  // a page that slept may not have heard of changes
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") void store.keeper.lookAgain();
  });
}

/**
 * Changes one field: one step of undo for as long as it is typed in.
 *
 * A text or number that is wrong by `checkField` becomes a draft, and the last right value stays; anything else goes into
 * the document.
 *
 * @param path of the document
 * @param field as an issue names it: `fins[0].root`
 * @param value undefined takes the field away, and a row out of its list
 * @param label by which undo names the step
 */
export function setField(path: string, field: string, value: unknown, label: string): void {
  store.setField(path, field, value, label);
}

/** Changes documents, one step of undo. Changes of one turn, as of one press of a button, are one step in any case. */
export function changeDocuments(
  label: string,
  edits: readonly Edit[],
  options?: Pick<ChangeOptions, "visit" | "signed">,
): void {
  store.change(label, edits, options);
}

/**
 * Adds a document.
 *
 * @param wantedName what it calls itself, kept as it is; left out: the name in `raw`, numbered where another has it
 * @returns its path
 */
export function addDocument(kind: Kind, raw: Raw, wantedName?: string): string {
  return store.add(kind, raw, wantedName);
}

/** One document as it is now, for what is done on a press; undefined where there is none. */
export function entryNow(path: string): Entry | undefined {
  return store.memory.get(path);
}

/** Takes the last step back. `confirmed`: the flyer was asked where the step asks. */
export function undo(options?: { readonly confirmed?: boolean }): UndoResult {
  return store.undo(options);
}

/** Makes the step again that was last undone. */
export function redo(): UndoResult {
  return store.redo();
}

/** Tries again to write what is not kept. */
export function retrySaving(): Promise<void> {
  return store.keeper.write();
}

/** Everything as texts of libraries, drafts and unreadable texts too, documents from memory so that it works whatever else fails: in as many texts as it takes for each to be small enough to be imported: one, but for very large benches. */
export function exportInParts(): Promise<readonly string[]> {
  return store.exportInParts();
}

/** Documents, with all that they refer to, as the text of one library, or of several to be imported together. */
export function exportDocuments(paths: readonly string[]): Promise<readonly string[]> {
  return store.exportDocuments(paths);
}

/** Keeps a compressed file that a log is read from under the path by which the log names it. False: it is gone with this page. */
export function keepRecord(path: string, gzip: Blob): Promise<boolean> {
  return store.records.put(path, gzip);
}

/** A file that a log was read from, compressed; null where it is not on this device. */
export function readRecord(path: string): Promise<Blob | null> {
  return store.records.read(path);
}

/** One document as the text of a file of its own. */
export function rawFile(path: string): string | undefined {
  return store.rawFile(path);
}

/**
 * Takes files in, in one step of undo. Documents that are there already are not doubled; nothing that is there is changed.
 *
 * @param read reads them; left out: here, on the page
 */
export function importInto(
  files: readonly Incoming[],
  read?: (files: readonly Incoming[]) => Promise<ReadFiles>,
): Promise<ImportReport> {
  return store.importInto(files, read);
}

/** Deletes every document, in one step of undo. */
export function wipe(): Promise<void> {
  return store.wipe();
}

/** Puts the worked example on the bench and returns the path of its plan. What is there of it is not doubled. */
export function installWorkedExample(): string {
  return store.installExample();
}

/** The documents outside of what is drawn: as they are now, and a call after each change. */
export const documentSource: {
  readonly entries: () => readonly Entry[];
  readonly subscribe: (listener: () => void) => () => void;
} = { entries: () => store.memory.list(), subscribe: store.memory.subscribe };

/** An answer that was kept for a plan; null: none. */
export function readBrief(plan: string): Promise<unknown> {
  return store.readBrief(plan);
}

/** Keeps an answer for a plan. */
export function keepBrief(plan: string, brief: unknown): Promise<void> {
  return store.keepBrief(plan, brief);
}
