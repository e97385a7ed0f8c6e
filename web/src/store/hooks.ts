import type { Kind } from "@delaywright/documents";
import { useCallback, useSyncExternalStore } from "react";
import type { Entry } from "./entry.js";
import type { Step } from "./history.js";
import type { Listed } from "./memory.js";
import type { Persistence } from "./persistence.js";
import type { Saving } from "./saving.js";
import type { Settings } from "./settings.js";
import { store } from "./the-store.js";
import type { Watched } from "./watched.js";

function useWatched<Value>({ subscribe, get }: Watched<Value>): Value {
  return useSyncExternalStore(subscribe, get);
}

/** All documents, or those of a kind, sorted by name; the same list until one of them changes. */
export function useEntries(kind?: Kind): readonly Entry[] {
  return useSyncExternalStore(store.memory.subscribe, () => store.memory.list(kind));
}

const none: readonly Entry[] = Object.freeze([]);

/** All documents, sorted by name, where they are wanted; else none, and no change of them is heard. */
export function useEntriesIf(wanted: boolean): readonly Entry[] {
  return useSyncExternalStore(store.memory.subscribe, () => (wanted ? store.memory.list() : none));
}

/** One document; undefined where there is none of that path. */
export function useEntry(path: string): Entry | undefined {
  return useSyncExternalStore(store.memory.subscribe, () => store.memory.get(path));
}

/**
 * Something of one document: drawn again only where that something changes, not with every key typed elsewhere in it.
 *
 * @param select gives the same value for the same document: a word, a number, or a part of the document itself
 */
export function useEntryPart<Part>(path: string, select: (entry: Entry | undefined) => Part): Part {
  return useSyncExternalStore(store.memory.subscribe, () => select(store.memory.get(path)));
}

/** What documents are called and what they are, without what stands in them; the same list until one of that changes. */
export function useListing(): readonly Listed[] {
  return useSyncExternalStore(store.memory.subscribe, store.memory.listing);
}

/** What undo and redo would do next. */
export function historyNow(): { readonly undo: Step | null; readonly redo: Step | null } {
  return store.steps.get();
}

/** What undo or redo would take back or bring again, in words; undefined: nothing. More of the same is no change. */
export function useStepLabel(which: "undo" | "redo"): string | undefined {
  return useSyncExternalStore(store.steps.subscribe, () => historyNow()[which]?.label);
}

/** Whether everything is kept. */
export function useSaving(): Saving {
  return useWatched(store.keeper.saving);
}

/** Whether the browser promised to keep what is stored. */
export function usePersistence(): Persistence {
  return useWatched(store.persistence.watched);
}

/** What the flyer chose for the app, and how to choose otherwise. */
export function useSettings(): readonly [Settings, (patch: Partial<Settings>) => void] {
  const settings = useWatched(store.settings.watched);
  const change = useCallback((patch: Partial<Settings>) => void store.settings.change(patch), []);
  return [settings, change];
}
