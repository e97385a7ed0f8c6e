import { useSyncExternalStore } from "react";
import { debriefClient } from "../compute/debrief-client.js";
import { type ImportReport, importInto } from "../store/index.js";

/** How far an import has come. */
export type ImportState =
  | { readonly state: "idle" }
  | { readonly state: "reading"; readonly count: number }
  | { readonly state: "done"; readonly report: ImportReport; readonly count: number }
  | { readonly state: "failed"; readonly why: string };

let state: ImportState = { state: "idle" };
const listeners = new Set<() => void>();

function tell(next: ImportState): void {
  state = next;
  for (const listener of listeners) listener();
}

function subscribe(changed: () => void): () => void {
  listeners.add(changed);
  return () => listeners.delete(changed);
}

/** Large libraries are much to read: away from the page. */
const readAway = (files: Parameters<typeof importInto>[0]) => debriefClient.incoming(files);

/** Takes files in; what came of it stays until the next import. */
export async function importFilesIn(files: Parameters<typeof importInto>[0]): Promise<void> {
  tell({ state: "reading", count: files.length });
  try {
    tell({ state: "done", report: await importInto(files, readAway), count: files.length });
  } catch (error) {
    tell({
      state: "failed",
      why: error instanceof Error ? error.message.slice(0, 200) : "the files could not be read",
    });
  }
}

/**
 * Takes a pasted text in, as a document's or a library's, or as a thrust curve.
 *
 * @returns whether anything of it is on the bench or in the report: else nobody but its field has it
 */
export async function importText(text: string): Promise<boolean> {
  const name = /^\s*[[{]/.test(text) ? "document.json" : "pasted.csv";
  await importFilesIn([{ name, bytes: new TextEncoder().encode(text) }]);
  if (state.state !== "done") return false;
  const { added, same, curves } = state.report;
  return added.length + same.length + curves.length > 0;
}

/** What came of the last import. */
export function useImport(): ImportState {
  return useSyncExternalStore(subscribe, () => state);
}
