import { mostFiresFirst } from "../rules/delay-rules.js";
import type { Setting, ToCut } from "./decision.js";
import type { Limits } from "./inputs.js";

/**
 * Does a setting reach the plan's least odds? A back-up charge is asked other questions than a primary one: that it seldom
 * fires before the electronics has opened the rocket, and that it holds if the electronics fails. It cannot do both and open
 * gently.
 */
export function reachesLeast({ odds, firesFirst }: Pick<Setting, "odds" | "firesFirst">, limits: Limits): boolean {
  return firesFirst === null ? odds.clean >= limits.leastClean : firesFirst <= mostFiresFirst;
}

export interface Chosen {
  readonly index: number;
  readonly why: ToCut["why"];
}

/** Which way a tie goes once the odds and the low openings are equal. */
export type TieBreak = "shorter" | "longer";

/**
 * The best of the settings.
 *
 * Among those whose `holds` reaches its least, the highest odds of a clean opening; ties within sampling error go to fewer
 * grounded and low openings, then to the shorter delay (the home cut: to the longer, since it can still be cut). If none
 * holds, the highest `holds`. A back-up charge must first be unlikely to fire before the electronics has opened the rocket.
 *
 * @param settings at least one, longest delay first
 */
export function choose(settings: readonly Setting[], limits: Limits, tie: TieBreak = "shorter"): Chosen {
  const all = settings.map((setting, index) => ({
    ...setting.odds,
    firesFirst: setting.firesFirst,
    delay: setting.delay,
    index,
  }));
  const best = <T>(list: readonly T[], value: (item: T) => number): T =>
    list.reduce((a, b) => (value(b) > value(a) ? b : a));
  const holding = all.filter((s) => s.holds >= limits.leastHolds);
  if (holding.length === 0)
    return { index: best(all, (s) => s.holds).index, why: all.length === 1 ? "only-setting" : "none-holds" };
  const backup = holding.some((s) => s.firesFirst !== null);
  const late = holding.filter((s) => s.firesFirst === null || s.firesFirst <= mostFiresFirst);
  const pool = late.length > 0 ? late : [best(holding, (s) => -(s.firesFirst ?? 0))];
  const winner = best(pool, (s) => s.clean);
  const tied = pool.filter((s) => winner.clean - s.clean <= Math.max(winner.error, s.error));
  if (all.length === 1) return { index: winner.index, why: "only-setting" };
  const reason = backup && pool.length < all.length ? "after-electronics" : "best-odds";
  if (tied.length === 1) return { index: winner.index, why: reason };
  const fewest = Math.min(...tied.map((s) => s.low + s.grounded));
  const few = tied.filter((s) => s.low + s.grounded - fewest <= Math.max(s.error, winner.error) * 0.1);
  const last = best(few, (s) => (tie === "shorter" ? -s.delay : s.delay));
  return {
    index: last.index,
    why:
      few.length < tied.length && few.length === 1
        ? "tie-fewer-low"
        : last.index === winner.index
          ? reason
          : "tie-shorter",
  };
}
