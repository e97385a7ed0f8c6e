import type { CutData } from "../answer/decision-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { delayWords, depthWords, glued } from "./numbers.en.js";

/** Removals and depths closer than this are the same [s, m]. */
const SAME = 1e-6;

/** What a setting asks for. */
export type CutKind = "uncut" | "as-it-is" | "cut" | "not-shown";

/**
 * Whether a setting asks for a cut.
 *
 * @param removedDepth what has been cut out of the motor in hand already [m]; null or left out: nothing
 */
export function kindOfCut(cut: CutData, removedDepth?: number | null): CutKind {
  if (
    typeof removedDepth === "number" &&
    cut.end === null &&
    cut.depth !== null &&
    Math.abs(cut.depth - removedDepth) < SAME
  )
    return "as-it-is";
  if (cut.removed < SAME) return "uncut";
  return cut.end === null && cut.depth === null ? "not-shown" : "cut";
}

/** The pieces on the tool: `end A with the ring`, `end B, no spacer`, `depth stop`. */
export function piecesWords({ end, spacers }: CutData): string {
  if (end === null) return "depth stop";
  const counts = new Map<string, number>();
  for (const name of spacers) counts.set(name, (counts.get(name) ?? 0) + 1);
  const names = [...counts].map(([name, count]) => (count === 1 ? `the ${name}` : `${count} of the ${name}`));
  return names.length === 0 ? `${glued("end", end)}, no spacer` : `${glued("end", end)} with ${names.join(" and ")}`;
}

/** How a setting is made, for a narrow column. */
export function howCell(cut: CutData, removedDepth?: number | null): string {
  const kind = kindOfCut(cut, removedDepth);
  if (kind === "uncut") return "no cut";
  if (kind === "as-it-is") return "as it is now";
  return kind === "cut" ? piecesWords(cut) : "";
}

/** The cut itself: `take 4 s out, end B, no spacer, 3.2 mm (1/8 in)`. */
export function takeOutWords(cut: CutData, removedDepth?: number | null, units: UnitSystem = "metric"): string {
  const inAll = typeof removedDepth === "number" && removedDepth > 0 ? " in all" : "";
  const depth = cut.depth === null ? "" : `, ${depthWords(cut.depth, units)}`;
  return `take ${delayWords(cut.removed)} out${inAll}, ${piecesWords(cut)}${depth}`;
}
