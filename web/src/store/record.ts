import { isKind } from "@delaywright/documents";
import { type Entry, RECORD } from "./entry.js";
import { isKeyed } from "./field.js";

/** What the database holds for an entry that this app cannot read: written back as it was, never as an entry. */
const strange = new WeakMap<Entry, unknown>();

/** What is put into the database for an entry. */
export function recordOf(entry: Entry): unknown {
  if (strange.has(entry)) return strange.get(entry);
  const { path, kind, name, raw, text, drafts, savedAt, revision, record } = entry;
  return { path, kind, name, raw, text, drafts, savedAt, revision, record };
}

/** Whether an entry stands for something that is no entry. */
export function isStrange(entry: Entry): boolean {
  return strange.has(entry);
}

/** An entry as the database holds it; what is none becomes one without kind that shows it as a text. */
export function entryOf(record: unknown): Entry {
  if (isEntry(record)) {
    const { path, kind, name, raw, text, drafts, savedAt, revision } = record;
    const unreadable = kind === null ? "not-a-document" : null;
    return { path, kind, name, raw, text, drafts, savedAt, revision, record: RECORD, unreadable };
  }
  const found = isKeyed(record) ? record : {};
  const path = typeof found["path"] === "string" ? found["path"] : textOf(found["path"]);
  const newer = typeof found["record"] === "number" && found["record"] > RECORD;
  const entry: Entry = {
    path,
    kind: null,
    name: typeof found["name"] === "string" && found["name"].trim() !== "" ? found["name"] : path,
    raw: null,
    text: textOf(record),
    drafts: {},
    savedAt: typeof found["savedAt"] === "number" ? found["savedAt"] : 0,
    revision: Number.isInteger(found["revision"]) ? (found["revision"] as number) : 0,
    record: RECORD,
    unreadable: newer ? "newer-record" : "corrupt-record",
  };
  strange.set(entry, record);
  return entry;
}

/** The key under which an entry is kept: its path, but for what is no entry. */
export function keyOf(entry: Entry): IDBValidKey {
  const record = strange.get(entry);
  return isKeyed(record) ? (record["path"] as IDBValidKey) : entry.path;
}

function isEntry(record: unknown): record is Entry {
  if (!isKeyed(record) || record["record"] !== RECORD) return false;
  const { path, kind, name, raw, text, drafts, savedAt, revision } = record;
  const readable = isKind(kind) && isKeyed(raw) && raw["kind"] === kind && (text === null || typeof text === "string");
  const unreadable = kind === null && raw === null && typeof text === "string";
  return (
    typeof path === "string" &&
    (readable || unreadable) &&
    typeof name === "string" &&
    isKeyed(drafts) &&
    Object.values(drafts).every((draft) => typeof draft === "string") &&
    Number.isFinite(savedAt) &&
    Number.isInteger(revision)
  );
}

function textOf(value: unknown): string {
  try {
    return JSON.stringify(value, null, 2) ?? String(value);
  } catch {
    return "(this cannot be shown as a text)";
  }
}
