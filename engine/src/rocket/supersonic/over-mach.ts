/** Mach numbers at which costly supersonic results are worked out. */
export const MACH_NODES = [1.2, 1.27, 1.38, 1.55, 1.8, 2.15, 2.6, 3.1, 3.7] as const;

/**
 * A smooth function of Mach number through results that are worked out only when asked for, each once.
 *
 * A cubic between nodes, with slopes that keep monotone runs monotone, none at the last; first derivative continuous. Held beyond the nodes.
 *
 * @param at result at a node, costly
 * @param nodes rising, at least 3
 * @returns the function
 * @source F. N. Fritsch, J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984): harmonic mean of the secants; memory
 * @example
 * overMach((mach) => mach * mach)(1.25); // 1.5624
 */
export function overMach(
  at: (mach: number) => number,
  nodes: readonly number[] = MACH_NODES,
): (mach: number) => number {
  const values: number[] = [];
  const slopes: number[] = [];
  const last = nodes.length - 1;
  const value = (k: number) => (values[k] ??= at(nodes[k]!));
  const width = (k: number) => nodes[k + 1]! - nodes[k]!;
  const secant = (k: number) => (value(k + 1) - value(k)) / width(k);
  /** At the first node: the parabola's slope through three, held to three times the secant and to its sign. */
  const firstSlope = () => {
    const near = secant(0);
    const wanted = near + ((near - secant(1)) * width(0)) / (width(0) + width(1));
    if (wanted * near <= 0) return 0;
    return Math.abs(wanted) > 3 * Math.abs(near) ? 3 * near : wanted;
  };
  const slopeOf = (k: number) => {
    if (k === 0) return firstSlope();
    if (k === last) return 0;
    const [a, b] = [secant(k - 1), secant(k)];
    if (a * b <= 0) return 0;
    const [before, after] = [width(k - 1), width(k)];
    return (3 * (before + after)) / ((2 * after + before) / a + (after + 2 * before) / b);
  };
  const slope = (k: number) => (slopes[k] ??= slopeOf(k));
  return (mach) => {
    if (mach <= nodes[0]!) return value(0);
    if (mach >= nodes[last]!) return value(last);
    let k = 0;
    while (mach > nodes[k + 1]!) k++;
    const h = width(k);
    const t = (mach - nodes[k]!) / h;
    const [y0, y1, d0, d1] = [value(k), value(k + 1), slope(k) * h, slope(k + 1) * h];
    return y0 + t * (d0 + t * (3 * (y1 - y0) - 2 * d0 - d1 + t * (d0 + d1 - 2 * (y1 - y0))));
  };
}
