import { checkField, type Doubt, type FieldShape, fieldAt, type Issue, type Kind } from "@delaywright/documents";
import { type Entry, entryNow, setField, useEntryPart } from "../store/index.js";
import { isKeyed, joinField, parentOf, valueAt } from "./field-path.js";
import { useNotes } from "./scope.js";

/** A field of a document in the store, and how to change it. */
export interface Field {
  readonly kind: Kind | null;
  readonly shape: FieldShape | undefined;
  /** The last right value. */
  readonly value: unknown;
  /** What is typed and cannot be read yet. */
  readonly draft: string | undefined;
  /** What is wrong: with the draft, or between this field and others. */
  readonly issue: Issue | undefined;
  /** What is unlikely, in words. */
  readonly doubts: readonly string[];
  /** Nothing stands here, and the document is wrong without it. */
  readonly needed: boolean;
  readonly send: (value: unknown) => void;
  readonly clear: () => void;
}

/** What is unlikely, or not given, as it stands under its field. */
export function doubtWords({ code, expected }: Doubt): string {
  return code.endsWith("not-given") ? `Not given: ${expected}` : `Unlikely; expected: ${expected}`;
}

/** Whether the document is wrong without a field, seen from what stands around it. */
function isNeeded(kind: Kind, raw: unknown, field: string): boolean {
  if (valueAt(raw, field) !== undefined || fieldAt(kind, field)?.required !== true) return false;
  const parent = parentOf(field);
  return parent === "" || valueAt(raw, parent) !== undefined || isNeeded(kind, raw, parent);
}

/** The keys of an object, or the two places of a pair of quantities. */
function siblingsOf(around: unknown, quantity: boolean): readonly string[] {
  if (isKeyed(around)) return Object.keys(around);
  return Array.isArray(around) && around.length <= 2 && quantity ? around.map((_, index) => `[${index}]`) : [];
}

/**
 * What to take away so that a field is empty: the field, or what would be left empty around it; undefined where the
 * document needs it.
 */
export function emptied(entry: Pick<Entry, "raw" | "drafts">, kind: Kind, field: string): string | undefined {
  const shape = fieldAt(kind, field);
  if (shape === undefined) return field;
  const parent = parentOf(field);
  const around = parent === "" ? undefined : valueAt(entry.raw, parent);
  const others = siblingsOf(around, shape.holds === "quantity").map((key) => joinField(parent, key));
  const alone = others.every((each) => each === field || entry.drafts[each] === "");
  if (around !== undefined && alone && others.includes(field) && fieldAt(kind, parent)?.required === false)
    return emptied(entry, kind, parent);
  return shape.required && valueAt(entry.raw, field) !== undefined ? undefined : field;
}

/**
 * A field of a document in the store.
 *
 * @param path of the document
 * @param field where in it
 * @param label by which undo names the change
 * @param along what its object must have beside it, set where it is missing
 */
export function useField(path: string, field: string, label: string, along?: Readonly<Record<string, unknown>>): Field {
  const notes = useNotes(path);
  const kind = useEntryPart(path, (entry) => entry?.kind ?? null);
  const value = useEntryPart(path, (entry) => valueAt(entry?.raw, field));
  const draft = useEntryPart(path, (entry) => entry?.drafts[field]);
  const lacking = useEntryPart(path, (entry) => kind !== null && isNeeded(kind, entry?.raw, field));
  const shape = kind === null ? undefined : fieldAt(kind, field);
  const own = kind === null || draft === undefined ? undefined : (checkField(kind, field, draft) ?? undefined);
  const joint = notes.issues.filter((issue) => issue.path === field);
  const needed = value === undefined && (lacking || joint.some((issue) => issue.code === "missing"));
  const send = (next: unknown) => {
    const parent = parentOf(field);
    const entry = entryNow(path);
    for (const [key, beside] of Object.entries(along ?? {})) {
      const at = joinField(parent, key);
      if (valueAt(entry?.raw, at) === undefined) setField(path, at, beside, label);
    }
    setField(path, field, next, label);
  };
  const clear = () => {
    const entry = entryNow(path);
    if (entry === undefined || kind === null) return;
    const away = emptied(entry, kind, field);
    if (away === undefined) setField(path, field, "", label);
    else setField(path, away, undefined, label);
  };
  return {
    kind,
    shape,
    value,
    draft,
    issue: own ?? joint.find((issue) => issue.code !== "missing"),
    doubts: notes.doubts.filter((doubt) => doubt.path === field).map(doubtWords),
    needed: needed && draft === undefined,
    send,
    clear,
  };
}
