/** Shares of variance: of each input alone, and with everything it takes part in. */
export interface PickedShares {
  readonly mean: number;
  readonly variance: number;
  readonly first: readonly number[];
  readonly total: readonly number[];
}

/**
 * First-order and total shares by picking and freezing: two sets of draws A and B, and for each group a set that has A's
 * numbers but B's in that group.
 *
 * @param f the figure
 * @param a draws, rows of inputs
 * @param b as many, independent of `a`
 * @param groups a group number per input, 0 … groupCount − 1
 * @source first order: A. Saltelli et al., Comput. Phys. Commun. 181 (2010), table 2 (b); total: M. J. W. Jansen, Comput. Phys.
 *   Commun. 117 (1999); memory
 */
export function pickFreeze(
  f: (x: Float64Array) => number,
  a: readonly Float64Array[],
  b: readonly Float64Array[],
  groups: readonly number[],
  groupCount: number,
): PickedShares {
  const ofA = a.map(f);
  const ofB = b.map(f);
  const all = [...ofA, ...ofB];
  const mean = all.reduce((s, v) => s + v, 0) / all.length;
  const variance = all.reduce((s, v) => s + (v - mean) ** 2, 0) / all.length;
  const first: number[] = [];
  const total: number[] = [];
  for (let group = 0; group < groupCount; group++) {
    let [alone, whole] = [0, 0];
    a.forEach((row, n) => {
      const mixed = f(row.map((x, i) => (groups[i] === group ? b[n]![i]! : x)));
      alone += (ofB[n]! - mean) * (mixed - ofA[n]!);
      whole += (ofA[n]! - mixed) ** 2;
    });
    first.push(alone / a.length / variance);
    total.push(whole / (2 * a.length) / variance);
  }
  return { mean, variance, first, total };
}
