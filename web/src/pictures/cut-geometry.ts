import { type CutData, fractionOfInch, type UnitSystem } from "@delaywright/documents";
import type { ElementFacts, ToolFacts } from "../compute/told.js";
import { amount, secondsFigure } from "./figures.js";
import { isFigure, within } from "./scale.js";

/** The delay element, the cut and what a reading tells of it. */
export interface CutPictureData {
  readonly element: Pick<ElementFacts, "longest" | "depthPerSecond" | "removedDepth">;
  /** The cut to make; null: leave it whole. */
  readonly target: CutData | null;
  readonly tool: ToolFacts | null;
  /** From the rim to the grain before and after [m]; null: not read. */
  readonly reading: { readonly before: number; readonly after: number } | null;
  readonly state: "not cut" | "cut" | "over-cut";
  readonly units: UnitSystem;
}

/** Depths from the grain's first face, as shares of its whole length. */
export interface CutGeometry {
  /** What the plan takes out in all. */
  readonly planned: number;
  /** What is out, or what the plan takes out while nothing is. */
  readonly at: number;
  /** What is out by now. */
  readonly out: number;
  /** Taken out beyond the plan. */
  readonly over: boolean;
  /** Something of the plan is still to be taken. */
  readonly short: boolean;
  /** Thickness of the spacers. */
  readonly spacer: number;
  /** Depth of the whole grain [m]; null: no depth per second is known. */
  readonly length: number | null;
  /** Delay of the whole grain [s]. */
  readonly longest: number;
  /** Delay that is left at `at` [s]. */
  readonly left: number;
}

/** Depths closer than this are the same, unless the tool is coarser [m]. */
const FINE = 1.5e-4;

/**
 * The cut as shares of the grain. Whatever the figures are, all shares lie between 0 and 1.
 *
 * @example
 * cutGeometry(data).at; // 0.29, where 4 s of 14 s go
 */
export function cutGeometry({ element, target, tool, reading, state }: CutPictureData): CutGeometry {
  const longest = isFigure(element.longest) && element.longest > 0 ? element.longest : 1;
  const perSecond = isFigure(element.depthPerSecond) && element.depthPerSecond > 0 ? element.depthPerSecond : null;
  const length = perSecond === null ? null : longest * perSecond;
  const ofDepth = (depth: number): number => (length === null ? 0 : within(depth / length, 0, 1));
  const planned =
    target === null
      ? 0
      : isFigure(target.depth) && length !== null
        ? ofDepth(target.depth)
        : within(target.removed / longest, 0, 1);
  const read = reading && isFigure(reading.after) && isFigure(reading.before) ? reading.after - reading.before : null;
  const out = ofDepth(read ?? element.removedDepth);
  const at = state === "not cut" ? Math.max(planned, out) : out;
  const coarse = length === null ? 0 : Math.max(FINE, tool?.depthError ?? 0) / length;
  return {
    planned,
    at,
    out,
    over: state === "over-cut" && out > planned,
    short: state === "cut" && out < planned - coarse,
    spacer: spacerShare(target, tool, length),
    length,
    longest,
    left: longest * (1 - at),
  };
}

function spacerShare(target: CutData | null, tool: ToolFacts | null, length: number | null): number {
  if (!target || tool?.kind !== "ends" || length === null) return 0;
  const thick = target.spacers.reduce(
    (sum, name) => sum + (tool.spacers.find((spacer) => spacer.name === name)?.keepsBack ?? 0),
    0,
  );
  return within(thick / length, 0, 0.6);
}

/** A depth in both units, the flyer's own first: a tool is often made in the other. */
export function bothUnits(depth: number, units: UnitSystem): string {
  const other: UnitSystem = units === "metric" ? "imperial" : "metric";
  return `${amount(depth, "depth", units)}, ${amount(depth, "depth", other)}`;
}

/** How deep a second is: as a fraction of an inch where it is one. */
export function secondWords(perSecond: number, small: boolean): string {
  const parts = (perSecond / 0.0254) * 64;
  const whole = Math.abs(parts - Math.round(parts)) < 0.01 && Math.round(parts) > 0;
  const depth = whole
    ? fractionOfInch(perSecond).replace(" in", "\u202fin")
    : `${(perSecond * 1000).toFixed(2)}\u202fmm`;
  return small ? `${depth} each` : `a second is ${depth}`;
}

/** A mark on a ruler: where, as a share of the grain, how long, and its figure. */
export interface RulerMark {
  readonly at: number;
  readonly long: boolean;
  readonly words: string | null;
}

/** Seconds that are left, from the whole delay down to none. */
export function secondsRuler({ longest }: CutGeometry): readonly RulerMark[] {
  const step = [1, 2, 5, 10].find((each) => longest / each <= 24) ?? 20;
  const marks: RulerMark[] = [];
  for (let left = Math.floor(longest / step) * step; left >= 0; left -= step) {
    const long = left % (2 * step) === 0;
    marks.push({ at: 1 - left / longest, long, words: long ? `${left}` : null });
  }
  const whole = { at: 0, long: true, words: secondsFigure(longest) };
  return [whole, ...marks.filter(({ at }) => at > 1e-6)];
}

/** Depths from none to the whole length: millimetres, or eighths of an inch by thirty-seconds. */
export function depthRuler({ length }: CutGeometry, units: UnitSystem): readonly RulerMark[] {
  if (length === null) return [];
  const unit = units === "metric" ? 0.5e-3 : 0.0254 / 32;
  const each = units === "metric" ? 2 : 4;
  const coarse = Math.max(1, Math.ceil(length / unit / 60));
  const step = unit * coarse;
  return Array.from({ length: Math.min(200, Math.floor(length / step + 1e-6) + 1) }, (_, i) => {
    const long = i % each === 0;
    const depth = i * step;
    const words = units === "metric" ? `${Math.round(depth * 1e4) / 10}` : fractionOfInch(depth).replace(" in", "");
    return { at: depth / length, long, words: long ? words : null };
  });
}
