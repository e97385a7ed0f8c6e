import { encode } from "uqr";

/** Largest version whose dots a label printer draws apart on `SIDE` [mm] of label. */
const LARGEST = 13;

/** Most that a label's code holds [bytes of UTF-8]: a code of version 13, of which 15 % may be lost. */
export const MOST_BYTES = 331;

/** White border that readers need [dots]. */
const BORDER = 4;

/** A code as one path in a square of `size` dots, border included. */
export interface CodePath {
  readonly size: number;
  readonly path: string;
}

/** The size of a text in a code [bytes]. */
export function bytesOf(text: string): number {
  return new TextEncoder().encode(text).length;
}

/**
 * A text as a code to be read by a camera.
 *
 * @returns null where the text is too long
 * @example
 * codePath("Bag 3")?.size; // 29
 */
export function codePath(text: string): CodePath | null {
  const bytes = [...new TextEncoder().encode(text)];
  if (bytes.length > MOST_BYTES) return null;
  const { data, size } = encode(bytes, { ecc: "M", maxVersion: LARGEST, border: BORDER });
  const rows = data.flatMap((row, y) => runsOf(row).map(([x, length]) => `M${x} ${y}h${length}v1h-${length}z`));
  return { size, path: rows.join("") };
}

/** The dark runs of a row: where each begins and how long it is. */
function runsOf(row: readonly boolean[]): [number, number][] {
  const runs: [number, number][] = [];
  for (const [x, dark] of row.entries()) {
    const last = runs.at(-1);
    if (!dark) continue;
    if (last !== undefined && last[0] + last[1] === x) last[1] += 1;
    else runs.push([x, 1]);
  }
  return runs;
}
