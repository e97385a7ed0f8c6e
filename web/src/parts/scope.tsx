import { type Doubt, documentDoubts, type Issue, isKind, type Raw, readValue } from "@delaywright/documents";
import { createContext, type ReactNode, useContext, useDeferredValue, useMemo } from "react";
import { useEntryPart } from "../store/index.js";
import { useSame } from "./use-same.js";

/** What there is to say about the fields of one document, beyond what each says by itself. */
export interface FieldNotes {
  readonly issues: readonly Issue[];
  readonly doubts: readonly Doubt[];
}

const nothing: FieldNotes = Object.freeze({ issues: [], doubts: [] });
const Notes = createContext<ReadonlyMap<string, FieldNotes>>(new Map());

export interface DocumentScopeProps {
  readonly path: string;
  /** Of the plan that the document is part of: what its documents say against each other. */
  readonly issues?: readonly Issue[] | undefined;
  readonly doubts?: readonly Doubt[] | undefined;
  readonly children: ReactNode;
}

/** By document as it stands: several forms of one plan ask for the same. */
const known = new WeakMap<object, FieldNotes>();

function ownNotes(raw: Raw | null | undefined, path: string): FieldNotes {
  const kind = raw?.["kind"];
  if (raw == null || !isKind(kind)) return nothing;
  const before = known.get(raw);
  if (before !== undefined) return before;
  const read = readValue(raw, { file: path });
  const notes = {
    issues: read.state === "ready" ? [] : read.issues,
    doubts: documentDoubts(kind, raw, { file: path, path: "" }),
  };
  known.set(raw, notes);
  return notes;
}

function joined<Note extends { readonly file: string; readonly path: string; readonly code: string }>(
  own: readonly Note[],
  others: readonly Note[] | undefined,
  file: string,
): readonly Note[] {
  const more = (others ?? []).filter(
    (note) => note.file === file && !own.some((each) => each.path === note.path && each.code === note.code),
  );
  return more.length === 0 ? own : [...own, ...more];
}

/** Lets the fields inside it say what is wrong or unlikely about them together. */
export function DocumentScope({ path, issues, doubts, children }: DocumentScopeProps) {
  // what fields say about each other may come a moment after the key that was pressed
  const raw = useDeferredValue(useEntryPart(path, (entry) => entry?.raw));
  const own = useMemo(() => ownNotes(raw, path), [raw, path]);
  const outer = useContext(Notes);
  const here = useSame({ issues: joined(own.issues, issues, path), doubts: joined(own.doubts, doubts, path) });
  const notes = useMemo(() => new Map([...outer, [path, here]]), [here, path, outer]);
  return <Notes value={notes}>{children}</Notes>;
}

/** What there is to say about the fields of a document. */
export function useNotes(path: string): FieldNotes {
  return useContext(Notes).get(path) ?? nothing;
}
