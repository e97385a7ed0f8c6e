import { isKind, type Raw, readDocument } from "@delaywright/documents";
import { type Content, type Edit, type Entry, RECORD } from "./entry.js";
import { keptDrafts } from "./kept-drafts.js";

/** What a document calls itself; its path where it does not. */
export function nameOf(raw: Raw | null, path: string): string {
  const name = raw !== null && Object.hasOwn(raw, "name") ? raw["name"] : undefined;
  return typeof name === "string" && name.trim() !== "" ? name.trim().slice(0, 200) : path;
}

/** An entry from its content. A document of no known kind is kept as its text. */
export function makeEntry(path: string, { raw, text, drafts }: Content, savedAt: number, revision: number): Entry {
  const kind = raw !== null && isKind(raw["kind"]) ? raw["kind"] : null;
  const name = nameOf(raw, path);
  const base = { path, name, drafts, savedAt, revision, record: RECORD } as const;
  if (kind !== null) return { ...base, kind, raw, text, unreadable: null };
  const kept = text ?? (raw === null ? "" : JSON.stringify(raw, null, 2));
  return { ...base, kind, raw: null, text: kept, unreadable: "not-a-document" };
}

const nothing: Content = Object.freeze({ raw: null, text: null, drafts: Object.freeze({}) });

/** What an edit makes of a document. */
export function editedContent(before: Entry | undefined, edit: Edit): Content {
  const now = before ?? nothing;
  if (edit.raw !== undefined) {
    const mended = now.raw === null ? null : now.text;
    return {
      raw: edit.raw,
      text: edit.text ?? mended,
      drafts: edit.drafts ?? keptDrafts(now.drafts, now.raw, edit.raw),
    };
  }
  if (edit.text === undefined) return { ...now, drafts: edit.drafts ?? now.drafts };
  const read = readDocument(edit.text, { file: edit.path });
  const duplicate = read.issues.some((issue) => issue.code === "duplicate-key");
  const raw = read.raw !== undefined && isKind(read.raw["kind"]) ? read.raw : null;
  return {
    raw,
    text: raw === null || duplicate ? edit.text : null,
    drafts: edit.drafts ?? (raw === null ? now.drafts : keptDrafts(now.drafts, now.raw, raw)),
  };
}

/** What of an entry the flyer can change, by itself. */
export function contentOf({ raw, text, drafts }: Content): Content {
  return { raw, text, drafts };
}
