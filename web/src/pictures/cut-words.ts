import type { CutData, UnitSystem } from "@delaywright/documents";
import { amount } from "./figures.js";

/**
 * The pieces of the tool that make a cut, short enough for a picture.
 *
 * @example
 * cutPieces({ removed: 6, end: "A", spacers: ["ring"], … }, "metric"); // "end A + ring"
 */
export function cutPieces(cut: CutData, units: UnitSystem): string {
  if (!(cut.removed > 0)) return "no cut";
  if (cut.end === null) return cut.depth === null ? "cut" : amount(cut.depth, "depth", units);
  const end = /^end\b/i.test(cut.end) ? cut.end : `end ${cut.end}`;
  return [end, ...counted(cut.spacers)].join(" + ");
}

/** Pieces of one name counted: "2 rings" is written "2 ring". */
function counted(names: readonly string[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].map(([name, count]) => (count > 1 ? `${count} ${name}` : name));
}
