import { Known } from "./known.js";

/** Steps into a document: keys, and indices of lists. */
export type FieldPath = readonly (string | number)[];

/** Longest path that is looked at, in steps: no document is deeper. */
const DEEPEST = 64;

const known = new Known<FieldPath | undefined>();

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
  return known.of(path, () => parted(path));
}

function parted(path: string): FieldPath | undefined {
  const steps: (string | number)[] = [];
  const pattern = /(?:^|\.)([^.[\]]+)|\[(\d{1,6})\]/y;
  while (pattern.lastIndex < path.length && steps.length < DEEPEST) {
    const match = pattern.exec(path);
    if (match === null) return undefined;
    steps.push(match[2] === undefined ? (match[1] ?? "") : Number(match[2]));
  }
  return Object.freeze(steps);
}
