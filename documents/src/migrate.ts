/** A document as JSON gives it, before its schema has looked at it. */
export type Raw = Readonly<Record<string, unknown>>;

/** The versions of one kind: step n turns a document of version n into one of version n + 1. */
export interface VersionChain {
  readonly current: number;
  readonly steps: readonly ((document: Raw) => Raw)[];
}

/** Kinds that are still at their first version. */
export const firstVersion: VersionChain = Object.freeze({ current: 1, steps: [] });

export type Migrated =
  | { readonly kind: "current"; readonly document: Raw; readonly from: number }
  | { readonly kind: "newer"; readonly version: number; readonly current: number }
  | { readonly kind: "no-version" };

/**
 * Brings a document up to the version that this program reads.
 *
 * A document made by a newer program is a normal answer, and is left as it is.
 *
 * @param document the parsed document
 * @param chain the versions of its kind
 * @example
 * migrate({ version: 1 }, firstVersion); // { kind: "current", document: { version: 1 }, from: 1 }
 */
export function migrate(document: Raw, chain: VersionChain): Migrated {
  const version = Object.hasOwn(document, "version") ? document["version"] : undefined;
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) return { kind: "no-version" };
  if (version > chain.current) return { kind: "newer", version, current: chain.current };
  let migrated = document;
  for (let from = version; from < chain.current; from += 1) {
    const step = chain.steps[from - 1];
    if (step === undefined) throw new Error(`no step from version ${from}`);
    migrated = { ...step(migrated), version: from + 1 };
  }
  return { kind: "current", document: migrated, from: version };
}
