import type { Kind } from "../kinds/kinds.js";

const LONGEST = 80;

/** The last part of a path, whichever way its slashes lean. */
export function baseName(path: string): string {
  return path.replaceAll("\\", "/").split("/").at(-1) ?? "";
}

/** Whether a name can be kept as a flat path just as it is. */
export function isFlat(name: string): boolean {
  return name.length <= 200 && name.trim() === name && !/^\.{0,2}$|[/\\\p{Cc}\p{Cf}]/u.test(name);
}

/** A text as part of a path: small letters, digits, dots and hyphens; other letters stay. */
export function slug(text: string): string {
  return text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}.]+/gu, "-")
    .slice(0, LONGEST)
    .replace(/^[-.]+|[-.]+$/g, "");
}

/**
 * A readable flat path for a document: its file's name, or its own name where the file's says nothing but the kind.
 *
 * @param file the file's name, folders included
 * @param name what the document calls itself; empty where it does not
 * @example
 * flatPath("flights/plan.json", "Demo rocket, third flight", "plan"); // "demo-rocket-third-flight.plan.json"
 */
export function flatPath(file: string, name: string, kind: Kind | undefined): string {
  const stem = slug(baseName(file).replace(/\.json$/i, ""));
  const own = slug(name);
  const telling = stem !== "" && stem !== kind && stem !== "document";
  if (telling && (kind === undefined || stem.endsWith(`.${kind}`))) return `${stem}.json`;
  const first = telling ? stem : own === "" ? "document" : own;
  return kind === undefined ? `${first}.json` : `${first}.${kind}.json`;
}

/**
 * Paths that are given away one by one, never the same twice.
 *
 * @example
 * new Paths(["demo-76.rocket.json"]).take("demo-76.rocket.json"); // "demo-76-2.rocket.json"
 */
export class Paths {
  private readonly taken: Set<string>;
  /** The last number tried, by the wish: many of one name must not be counted through each time. */
  private readonly last = new Map<string, number>();

  constructor(taken: Iterable<string> = []) {
    this.taken = new Set(taken);
  }

  /** The path that was wished for, or the next like it that is free. */
  take(wish: string): string {
    let path = wish;
    let count = this.last.get(wish) ?? 1;
    while (this.taken.has(path)) {
      count += 1;
      path = numbered(wish, count);
    }
    this.last.set(wish, count);
    this.taken.add(path);
    return path;
  }
}

function numbered(path: string, count: number): string {
  const dot = path.search(/(\.[a-z-]+)?\.json$/);
  return dot <= 0 ? `${path}-${count}` : `${path.slice(0, dot)}-${count}${path.slice(dot)}`;
}
