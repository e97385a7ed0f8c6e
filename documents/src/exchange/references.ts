import { isKind, type Kind, kinds, pathIn } from "../kinds/kinds.js";
import type { Raw } from "../migrate.js";

/** A path that a document names: another document, or a table of figures. */
export interface Named {
  /** Where it stands, for example `motor.type`. */
  readonly path: string;
  readonly text: string;
  readonly what: "document" | "thrust" | "record";
}

/**
 * A document with every path that it names replaced, in the documents inside it too. The document itself is not touched.
 *
 * @param raw the document
 * @param kind its kind
 * @param replace what stands there instead; undefined: the path as it was
 */
export function withReferences(raw: Raw, kind: Kind, replace: (named: Named) => unknown): Raw {
  return rewritten(raw, kind, "", replace);
}

function rewritten(raw: Raw, kind: Kind, base: string, replace: (named: Named) => unknown): Raw {
  const changed = new Map<string, unknown>();
  const place = (field: string): string => (base === "" ? field : `${base}.${field}`);
  const ask = (field: string, what: Named["what"]): void => {
    const value = valueAt(raw, field);
    const text = pathIn(kind, field, value);
    if (text === undefined) return;
    const other = replace({ path: place(field), text, what });
    if (other !== undefined) changed.set(field, other);
  };
  for (const [field, fitting] of Object.entries(kinds[kind].references)) {
    const value = valueAt(raw, field);
    ask(field, "document");
    if (!isRaw(value)) continue;
    const inner = valueAt(value, "kind");
    if (isKind(inner) && fitting.includes(inner)) changed.set(field, rewritten(value, inner, place(field), replace));
  }
  if (kind === "motor") ask("thrust", "thrust");
  if (kind === "log") ask("source", "record");
  if (changed.size === 0) return raw;
  return Object.fromEntries(
    Object.entries(raw).map(([key, value]) => [key, changed.has(key) ? changed.get(key) : value]),
  );
}

function valueAt(raw: Raw, field: string): unknown {
  return Object.hasOwn(raw, field) ? raw[field] : undefined;
}

/** Whether a value is an object that may be a document. */
export function isRaw(value: unknown): value is Raw {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
