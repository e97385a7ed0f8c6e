import { encode } from "uqr";

/** White border that readers need [dots]. */
const BORDER = 4;

/** A code as one path in a square of `size` dots, border included. */
export interface CodePath {
  readonly size: number;
  readonly path: string;
}

/**
 * A QR code to be read by a camera, of which 15 % may be lost.
 *
 * @param content a text, or bytes as they are
 * @param largest the largest version that may be drawn, 1 … 40
 * @throws {RangeError} where it does not fit into that version
 * @source ISO/IEC 18004, level M
 * @example
 * codePath("BAG 3", 13).size; // 29
 */
export function codePath(content: string | readonly number[], largest: number): CodePath {
  const { data, size } = encode(typeof content === "string" ? content : [...content], {
    ecc: "M",
    maxVersion: largest,
    border: BORDER,
  });
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
