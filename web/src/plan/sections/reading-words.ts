import {
  amountIn,
  type CutData,
  decimals,
  delayWords,
  GLUE,
  type Issue,
  kindOfCut,
  piecesWords,
  type Reading,
  type ReadingMeans,
  type UnitSystem,
} from "@delaywright/documents";
import type { ElementFacts } from "../../compute/index.js";
import { dayOf, timeOfDay } from "../../standing/day.js";

/** One line of the aid beside the reading. */
export interface AidLine {
  readonly grows: string;
  /** What the gauge then reads; null while the depth before is not known. */
  readonly reads: string | null;
  readonly delay: string;
  readonly word: "keep cutting" | "stop here" | "over-cut";
}

/**
 * Depths to expect around the cut that is meant: one second short, right, one second beyond.
 *
 * @param element of the motor
 * @param target the setting to be cut
 * @param before from the rim to the grain before the first cut [m]; null: not read
 * @returns none where the depth of a second is not known
 */
export function aidLines(
  { depthPerSecond }: Pick<ElementFacts, "depthPerSecond">,
  target: Pick<CutData, "delay" | "depth">,
  before: number | null,
  units: UnitSystem,
): readonly AidLine[] {
  const { depth, delay } = target;
  if (depthPerSecond === null || depth === null) return [];
  const line = (seconds: number, word: AidLine["word"]): AidLine => {
    const grows = depth + seconds * depthPerSecond;
    return {
      grows: amountIn(grows, "depth", units),
      reads: before === null ? null : amountIn(before + grows, "depth", units),
      delay: delayWords(delay - seconds),
      word,
    };
  };
  const short = depth - depthPerSecond >= 0 ? [line(-1, "keep cutting")] : [];
  return [...short, line(0, "stop here"), line(1, "over-cut")];
}

export function depthUnit(units: UnitSystem): string {
  return units === "metric" ? "mm" : "in";
}

/** A length without its unit is refused by documents; a bare number here is in the unit that stands in the empty field. */
export function withUnit(text: string, units: UnitSystem): string {
  const trimmed = text.trim();
  return /^[\d.,]+$/.test(trimmed) ? `${trimmed} ${depthUnit(units)}` : trimmed;
}

/**
 * What is typed of a reading, as it would be written down now.
 *
 * @param typed depths with their units
 */
export function readingOf(
  typed: { readonly before: string; readonly after: string; readonly note: string },
  target: CutData | null,
  removedDepth: number | null,
  now: Date,
): Reading {
  const pieces = target !== null && kindOfCut(target, removedDepth) === "cut" && target.end !== null ? target : null;
  const cut = typed.after.trim() !== "";
  return {
    when: `${dayOf(now)}T${timeOfDay(now)}`,
    ...(typed.before.trim() === "" ? {} : { before: typed.before.trim() }),
    ...(cut ? { after: typed.after.trim() } : {}),
    ...(cut && pieces?.end != null ? { end: pieces.end, spacers: [...pieces.spacers] } : {}),
    ...(typed.note.trim() === "" ? {} : { note: typed.note.trim() }),
  };
}

/** What a reading means, in words; null before the first cut. */
export function meaningWords(means: ReadingMeans, units: UnitSystem): string | null {
  const { removed, delay, sd, beyondPlan } = means;
  if (removed === null) return null;
  const out = `${amountIn(removed, "depth", units)} ${units === "metric" ? "are" : "is"} out`;
  const left =
    delay === null || sd === null
      ? ""
      : `: ${decimals(delay, 1)}${GLUE}s left, give or take ${decimals(sd, 1)}${GLUE}s (one sigma)`;
  return `${out}${left}.${planWords(beyondPlan, means.deeperThanPlanned, units)}`;
}

function planWords(beyond: number | null, deeper: boolean, units: UnitSystem): string {
  if (beyond === null) return "";
  const off = amountIn(Math.abs(beyond), "depth", units);
  if (deeper) return ` That is ${off} deeper than planned: more than two readings can be off.`;
  if (Math.abs(beyond) < 5e-5) return " That is the plan.";
  return beyond > 0
    ? ` That is ${off} deeper than planned, within what readings can be off.`
    : ` ${off} short of the plan.`;
}

/** The issue of one field of the reading; null where it is right. */
export function issueOf(issues: readonly Issue[], field: "before" | "after" | "note"): Issue | null {
  return issues.find(({ path }) => path.endsWith(`.${field}`)) ?? null;
}

/** Can the reading be taken once a reason is given? */
export function isCorrection({ code }: Issue): boolean {
  return code === "cut-shallower" || code === "after-above-before";
}

/** An issue of a reading for a person who stands there with a gauge. */
export function issueWords({ code, accepted, example }: Issue): string {
  if (code === "cut-shallower")
    return "Shallower than the last depth. What is cut stays cut, so this is a correction: say why below.";
  if (code === "after-above-before")
    return "Shallower than before the cut. If the first reading was off, say why below.";
  if (code === "cut-beyond-longest") return `That would be more than the whole delay. Accepted: ${accepted}.`;
  return `Accepted: ${accepted}${example === "" ? "" : `, for example ${example}`}.`;
}

/** The pieces of a reading, for the list. */
export function readingPieces({ end, spacers = [] }: Reading): string {
  return end === undefined ? "" : piecesWords({ delay: 0, removed: 0, end, spacers, depth: null });
}
