import { rowTimeError, usualLag } from "../events/look.js";

/** Points of the fit from which the next height is foretold. */
const MOST_POINTS = 24;
/** Longest transient that is bridged [s]: gas of a charge has left the bay by then; where lines stretch just then, a shorter look. */
const LONGEST = [1.2, 0.85, 0.5];
/**
 * Highest that a bay of the usual lag shows of gas that fades in some 0.17 s, as a share of where it starts.
 *
 * @source r^(−1/(r − 1)) at r = 0.17/0.06, closed form of a first-order lag
 */
const SHOWN = 0.57;
/** A transient is left out until it has faded to this share of what stands out: 5 % of one height's noise. Longest, over its seen length. */
const FADED = 0.01;
const LONGEST_FADING = 4;
/** It fades no faster than by this logarithm over its seen length. */
const LEAST_FADING = 0.5;
/** Foretold heights that are missed by more than this many sigma begin or end a spike. */
const SIGMAS = 5.5;
/** Largest change of acceleration that is no spike [m/s²]: about lift-off, and later at rest and by the speed [1/s]. */
const HARDEST = 250;
const HARDEST_SLOW = 30;
const HARDEST_BY_SPEED = 2;

/** First and last index of a stretch that is spoiled. */
export interface Spike {
  readonly begin: number;
  readonly end: number;
  /** A bay that lags as usual takes so long until its gas shows above what is no spike, at the rate by which it reaches its highest [s]. */
  readonly rise: number;
}

/**
 * Stretches in which heights jump away and come back: transients of pressure, misread figures.
 *
 * Each height is foretold from those of the last 0.6 s, and, on the way back, from those after it. A spike begins where the
 * first fails and ends where the second does, within 1.2 s. A jump that does not come back is no spike.
 *
 * @param sigma one sigma of one height [m]
 * @returns rising
 */
export function spikesIn(time: Float64Array, height: Float64Array, sigma: number): Spike[] {
  const n = time.length;
  const found: Spike[] = [];
  for (let i = 6; i < n - 1; i++) {
    const first = foretold(time, height, i, -1, 0, sigma);
    if (first === null || !missed(first)) continue;
    const begin = i;
    let end = -1;
    for (const longest of LONGEST) {
      end = endOf(time, height, begin, longest, sigma);
      if (end >= 0) break;
    }
    if (end < 0) continue;
    // what is left of it dies away as it did from its highest to where it no longer stood out
    const seen = Math.log(highestIn(time, height, begin, end, first.off) / first.most);
    const more = Math.min(LONGEST_FADING, -Math.log(FADED) / Math.max(LEAST_FADING, seen));
    const fades = time[end]! + more * (time[end]! - time[begin]!) + 0.05;
    while (end + 1 < n - 1 && time[end + 1]! <= fades) end++;
    const highest = highestIn(time, height, begin, end, first.off);
    bridge(time, height, begin, end);
    found.push({ begin, end, rise: usualLag.time * ((SHOWN * first.most) / highest) });
    i = end;
  }
  return found;
}

/** How far a spike leads away from the bridge over it, at least what its first row shows [m]. */
function highestIn(time: Float64Array, height: Float64Array, begin: number, end: number, least: number): number {
  const raw = height.slice(begin, end + 1);
  bridge(time, height, begin, end);
  const most = raw.reduce((far, h, k) => Math.max(far, Math.abs(h - height[begin + k]!)), least);
  height.set(raw, begin);
  return most;
}

/** Last row that those after it do not foretell; −1 where none is, or where none before the longest is. */
function endOf(time: Float64Array, height: Float64Array, begin: number, longest: number, sigma: number): number {
  const n = time.length;
  let until = begin;
  while (until + 1 < n && time[until + 1]! <= time[begin]! + longest) until++;
  for (let j = until; j >= begin; j--)
    if (missed(foretold(time, height, j, 1, n - 1, sigma))) return j === until ? -1 : j;
  return -1;
}

/** How far a height is from what the heights on one side of it foretell, and may be without a spike [m]. */
interface Foretold {
  readonly off: number;
  readonly most: number;
}

const missed = (foretold: Foretold | null): boolean => foretold !== null && foretold.off > foretold.most;

function foretold(
  time: Float64Array,
  height: Float64Array,
  i: number,
  side: 1 | -1,
  last: number,
  sigma: number,
): Foretold | null {
  const fit = sideFit(time, height, i, side, last);
  if (fit === null) return null;
  const step = Math.abs(time[i]! - time[i + side]!);
  const hardest = Math.abs(time[i]!) < 1.5 ? HARDEST : HARDEST_SLOW + HARDEST_BY_SPEED * Math.abs(fit.slope);
  // at speed a row's own time is height
  const late = rowTimeError(step) * fit.slope;
  return {
    off: Math.abs(height[i]! - fit.value),
    most: SIGMAS * Math.hypot(sigma, late) * fit.spread + 0.5 * hardest * step * step,
  };
}

/** Quadratic (with few points: line) through the neighbours on one side, carried to the row itself. */
function sideFit(
  time: Float64Array,
  height: Float64Array,
  i: number,
  side: 1 | -1,
  last: number,
): { value: number; slope: number; spread: number } | null {
  let [s0, s1, s2, s3, s4, y0, y1, y2] = [0, 0, 0, 0, 0, 0, 0, 0];
  const near = Math.abs(time[i]! - time[i + side]!);
  // six rows at least, also where some are missing
  const sixth = time[i + 6 * side];
  const reach = sixth === undefined ? Math.max(0.6, 6 * near) : Math.max(0.6, Math.abs(sixth - time[i]!) + 1e-9);
  // on the way back, out of what swings and dies away, a short look would follow it: as many points, but of the whole reach
  const stride = side < 0 ? 1 : Math.max(1, Math.ceil(reach / near / MOST_POINTS));
  for (let k = i + side, count = 0; side < 0 ? k >= last : k <= last; k += side * stride, count++) {
    const u = (time[k]! - time[i]!) / reach;
    if (Math.abs(u) > 1 || count >= MOST_POINTS) break;
    const y = height[k]! - height[i + side]!;
    s0 += 1;
    s1 += u;
    s2 += u * u;
    s3 += u * u * u;
    s4 += u * u * u * u;
    y0 += y;
    y1 += u * y;
    y2 += u * u * y;
  }
  if (s0 < 5) return null;
  const c00 = s2 * s4 - s3 * s3;
  const det = s0 * c00 - s1 * (s1 * s4 - s2 * s3) + s2 * (s1 * s3 - s2 * s2);
  if (!(det > 1e-9 * s0 * s2 * s4)) return null;
  const value = (c00 * y0 - (s1 * s4 - s2 * s3) * y1 + (s1 * s3 - s2 * s2) * y2) / det;
  const slope = (s0 * (y1 * s4 - y2 * s3) - y0 * (s1 * s4 - s2 * s3) + s2 * (s1 * y2 - s2 * y1)) / det / reach;
  return { value: value + height[i + side]!, slope, spread: Math.sqrt(1 + c00 / det) };
}

/** Lays a smooth bridge over the rows from `begin` to `end`: cubic by the value and slope on both sides. */
function bridge(time: Float64Array, height: Float64Array, begin: number, end: number): void {
  const before = begin - 1;
  const after = Math.min(end + 1, time.length - 1);
  const slope = (a: number, b: number): number => (height[b]! - height[a]!) / (time[b]! - time[a]!);
  const reach = (i: number, side: 1 | -1): number => {
    let k = i;
    while (k + side > 0 && k + side < time.length - 1 && Math.abs(time[k]! - time[i]!) < 0.3) k += side;
    return k;
  };
  const span = time[after]! - time[before]!;
  const back = reach(before, -1);
  const on = reach(after, 1);
  const m0 = (back === before ? 0 : slope(back, before)) * span;
  const m1 = (on === after ? 0 : slope(after, on)) * span;
  for (let i = begin; i <= end; i++) {
    const u = (time[i]! - time[before]!) / span;
    height[i] =
      (1 + 2 * u) * (1 - u) ** 2 * height[before]! +
      u * (1 - u) ** 2 * m0 +
      u * u * (3 - 2 * u) * height[after]! +
      u * u * (u - 1) * m1;
  }
}
