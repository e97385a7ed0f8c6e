import type { Opening } from "./season.js";

/** Openings that were given about the same odds. */
export interface ReliabilityBin {
  readonly from: number;
  readonly to: number;
  readonly openings: number;
  readonly clean: number;
  /** Mean of the odds given. */
  readonly given: number;
  /** Came clean less given, in standard deviations of independent openings that have these odds. */
  readonly off: number;
}

const edges = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.88, 0.92, 0.96, 1.0001];

/** How often openings came clean against the odds they were given. */
export function reliability(openings: readonly Opening[]): ReliabilityBin[] {
  return edges.slice(1).flatMap((to, i) => {
    const from = edges[i]!;
    const inside = openings.filter(({ odds }) => odds >= from && odds < to);
    if (inside.length === 0) return [];
    return [{ from, to: Math.min(1, to), ...offBy(inside) }];
  });
}

/** The same of any openings. */
export function offBy(openings: readonly Opening[]): Omit<ReliabilityBin, "from" | "to"> {
  const count = openings.length;
  const clean = openings.filter((opening) => opening.clean).length;
  const expected = openings.reduce((sum, { odds }) => sum + odds, 0);
  const variance = openings.reduce((sum, { odds }) => sum + odds * (1 - odds), 0);
  return {
    openings: count,
    clean,
    given: expected / count,
    off: (clean - expected) / Math.sqrt(Math.max(variance, 1e-12)),
  };
}
