import { isKind, kinds, Paths, pathIn, type Raw } from "@delaywright/documents";
import type { Entry } from "./entry.js";
import { isKeyed } from "./field.js";
import { makeEntry } from "./make-entry.js";

/** A path like another that is free. */
export function pathInstead(path: string, taken: Iterable<string>): string {
  return new Paths(taken).take(path);
}

/** Every path that a document names, in the documents inside it too. */
export function referencesOf(raw: Raw): string[] {
  const { kind } = raw;
  if (!isKind(kind)) return [];
  return Object.keys(kinds[kind].references)
    .flatMap((field) => {
      const value = Object.hasOwn(raw, field) ? raw[field] : undefined;
      const path = pathIn(kind, field, value);
      return path !== undefined ? [path] : isKeyed(value) ? referencesOf(value) : [];
    })
    .concat(planFileOf(raw) ?? []);
}

/** The file of the plan that a flight was flown by, where the plan as flown stands inside the flight. */
function planFileOf({ kind, planFile }: Raw & { readonly planFile?: unknown }): string | undefined {
  return kind === "flight" && typeof planFile === "string" ? planFile : undefined;
}

/** A document with the paths that it names replaced by others; the same object where it names none of them. */
export function withPaths(raw: Raw, paths: ReadonlyMap<string, string>): Raw {
  const { kind } = raw;
  if (!isKind(kind)) return raw;
  const changed = Object.keys(kinds[kind].references).flatMap((field): [string, unknown][] => {
    const value = Object.hasOwn(raw, field) ? raw[field] : undefined;
    if (typeof value === "string") {
      const other = pathIn(kind, field, value) === undefined ? undefined : paths.get(value);
      return other === undefined || other === value ? [] : [[field, other]];
    }
    const inner = isKeyed(value) ? withPaths(value, paths) : value;
    return inner === value ? [] : [[field, inner]];
  });
  const plan = paths.get(planFileOf(raw) ?? "");
  if (plan !== undefined) changed.push(["planFile", plan]);
  if (changed.length === 0) return raw;
  const others = new Map(changed);
  return Object.fromEntries(
    Object.entries(raw).map(([key, value]) => [key, others.has(key) ? others.get(key) : value]),
  );
}

/** An entry with the paths that it names replaced; undefined where it names none of them. */
export function withReferencesTo(entry: Entry, paths: ReadonlyMap<string, string>): Entry | undefined {
  const raw = entry.raw === null ? null : withPaths(entry.raw, paths);
  return raw === entry.raw ? undefined : makeEntry(entry.path, { ...entry, raw }, entry.savedAt, entry.revision + 1);
}
