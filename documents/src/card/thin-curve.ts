import { burnOf, prepareImpulse, type ThrustCurve } from "@delaywright/engine";

/** Thrusts of a thinned curve keep so many digits after the point [N]; one of them keeps all, so that the impulse is exact. */
const DECIMALS = 2;

/**
 * A thrust curve of fewer points with the same total impulse, burn time, peak and average thrust.
 *
 * First, last and highest point stay, and those between which the burn starts and ends by the 5 % of the certification
 * standard. Of the others those stay that bend the curve most; what impulse the rest costs is shared among them.
 *
 * @param curve without issues
 * @param most how many points may be left
 * @returns undefined where so few points cannot keep these figures
 * @source points by their distance from the line between those kept already; burn time and average as `burnOf`
 * @example
 * thinCurve(curve, 16)?.times.length; // 16
 */
export function thinCurve(curve: ThrustCurve, most: number): ThrustCurve | undefined {
  const kept = keptPoints(curve, most);
  if (kept.length > most) return undefined;
  const pinned = pinnedPoints(curve);
  const times = kept.map((point) => curve.times[point] ?? 0);
  const thrusts = kept.map((point) => {
    const thrust = curve.thrusts[point] ?? 0;
    return pinned.has(point) ? thrust : Number(thrust.toFixed(DECIMALS));
  });
  const { peak, start, end } = burnOf(curve);
  const free = kept.flatMap((point, index) => {
    const time = times[index] ?? 0;
    return pinned.has(point) || time <= start || time >= end ? [] : [index];
  });
  return withImpulse({ times, thrusts }, free, prepareImpulse(curve).total, peak);
}

/** Points that burn time, peak and average rest on. */
function pinnedPoints({ thrusts, times }: ThrustCurve): ReadonlySet<number> {
  const peak = Math.max(...thrusts);
  const above = (thrust: number): boolean => thrust >= 0.05 * peak;
  const [first, last] = [thrusts.findIndex(above), thrusts.findLastIndex(above)];
  const points = [0, first - 1, first, thrusts.indexOf(peak), last, last + 1, times.length - 1];
  return new Set(points.filter((point) => point >= 0 && point < times.length));
}

/** The pinned points, and of the others one after the other that from which the lines between those kept stray most. */
function keptPoints(curve: ThrustCurve, most: number): number[] {
  const kept = [...pinnedPoints(curve)].sort((a, b) => a - b);
  const gaps = kept.slice(1).map((to, index) => farthest(curve, kept[index] ?? 0, to));
  while (kept.length < most) {
    const widest = gaps.reduce((best, gap, index) => (gap.off > (gaps[best]?.off ?? 0) ? index : best), 0);
    const gap = gaps[widest];
    if (gap === undefined || gap.off <= 0) break;
    const [from = 0, to = 0] = [kept[widest], kept[widest + 1]];
    kept.splice(widest + 1, 0, gap.point);
    gaps.splice(widest, 1, farthest(curve, from, gap.point), farthest(curve, gap.point, to));
  }
  return kept;
}

/** Between two points, the one farthest above or below the line that joins them [N]. */
function farthest({ times, thrusts }: ThrustCurve, from: number, to: number): { point: number; off: number } {
  const [t0 = 0, t1 = 0, f0 = 0, f1 = 0] = [times[from], times[to], thrusts[from], thrusts[to]];
  let best = { point: from, off: 0 };
  for (let point = from + 1; point < to; point++) {
    const line = f0 + ((f1 - f0) * ((times[point] ?? 0) - t0)) / (t1 - t0);
    const off = Math.abs((thrusts[point] ?? 0) - line);
    if (off > best.off) best = { point, off };
  }
  return best;
}

/** Moves the free points up or down together until the impulse is right, and one of them by the last of it. */
function withImpulse(
  { times, thrusts }: ThrustCurve,
  free: readonly number[],
  total: number,
  peak: number,
): ThrustCurve | undefined {
  const share = (index: number): number => ((times[index + 1] ?? 0) - (times[index - 1] ?? 0)) / 2;
  const width = free.reduce((sum, index) => sum + share(index), 0);
  const heaviest = [...free].sort((a, b) => share(b) - share(a))[0];
  if (heaviest === undefined) return undefined;
  const missing = (list: readonly number[]): number => total - prepareImpulse({ times, thrusts: list }).total;
  const step = missing(thrusts) / width;
  const moved = thrusts.map((thrust, index) =>
    free.includes(index) ? Number((thrust + step).toFixed(DECIMALS)) : thrust,
  );
  moved[heaviest] = (moved[heaviest] ?? 0) + missing(moved) / share(heaviest);
  return moved.every((thrust) => thrust >= 0 && thrust <= peak) ? { times, thrusts: moved } : undefined;
}
