/** Steps into a document: keys, and indices of lists. */
export type FieldPath = readonly (string | number)[];

/** Longest path that is looked at, in steps: no document is deeper. */
const DEEPEST = 64;

/** Paths that were asked for before: forms ask for the same ones with every key that is typed. */
const known = new Map<string, FieldPath | undefined>();
const MOST_KNOWN = 5000;

/**
 * A path as steps.
 *
 * @param path steps, or as it stands in an issue
 * @returns undefined where it is no path
 * @example
 * stepsOf("fins[0].root"); // ["fins", 0, "root"]
 */
export function stepsOf(path: string | FieldPath): FieldPath | undefined {
  if (typeof path !== "string") return path;
  if (known.has(path)) return known.get(path);
  if (known.size >= MOST_KNOWN) known.clear();
  const steps = parted(path);
  known.set(path, steps && Object.freeze(steps));
  return steps;
}

function parted(path: string): (string | number)[] | undefined {
  const steps: (string | number)[] = [];
  const pattern = /(?:^|\.)([^.[\]]+)|\[(\d{1,6})\]/y;
  while (pattern.lastIndex < path.length && steps.length < DEEPEST) {
    const match = pattern.exec(path);
    if (match === null) return undefined;
    steps.push(match[2] === undefined ? (match[1] ?? "") : Number(match[2]));
  }
  return steps;
}
