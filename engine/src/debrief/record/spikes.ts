/** Points of the fit from which the next height is foretold. */
const MOST_POINTS = 24;
/** Longest transient that is bridged [s]: gas of a charge has left the bay by then. */
const LONGEST = 1.2;
/** A row's own time errs by its rounding [s] and by a share of the spacing, one sigma: at speed that is height. */
const CLOCK = 0.003;
const JITTER = 0.07;
/** A transient fades for this share of its seen length more. */
const FADING = 0.6;
/** Foretold heights that are missed by more than this many sigma begin or end a spike. */
const SIGMAS = 5.5;
/** Largest change of acceleration that is no spike [m/s²]: about lift-off, and later at rest and by the speed [1/s]. */
const HARDEST = 250;
const HARDEST_SLOW = 30;
const HARDEST_BY_SPEED = 2;

/**
 * Stretches in which heights jump away and come back: transients of pressure, misread figures.
 *
 * Each height is foretold from those of the last 0.6 s, and, on the way back, from those after it. A spike begins where the
 * first fails and ends where the second does, within 1.2 s. A jump that does not come back is no spike.
 *
 * @param sigma one sigma of one height [m]
 * @returns first and last index of each, rising
 */
export function spikesIn(time: Float64Array, height: Float64Array, sigma: number): [number, number][] {
  const n = time.length;
  const found: [number, number][] = [];
  for (let i = 6; i < n - 1; i++) {
    if (!missed(time, height, i, -1, 0, sigma)) continue;
    const begin = i;
    let until = i;
    while (until + 1 < n && time[until + 1]! <= time[begin]! + LONGEST) until++;
    let end = -1;
    for (let j = until; j >= begin; j--)
      if (missed(time, height, j, 1, n - 1, sigma)) {
        end = j;
        break;
      }
    if (end < 0 || end === until) continue;
    // what is left of it dies away below the noise of one height
    const fades = time[end]! + FADING * (time[end]! - time[begin]!) + 0.05;
    while (end + 1 < n - 1 && time[end + 1]! <= fades) end++;
    found.push([begin, end]);
    bridge(time, height, begin, end);
    i = end;
  }
  return found;
}

/** Whether a height is far from what the heights on one side of it foretell. */
function missed(
  time: Float64Array,
  height: Float64Array,
  i: number,
  side: 1 | -1,
  last: number,
  sigma: number,
): boolean {
  const fit = sideFit(time, height, i, side, last);
  if (fit === null) return false;
  const step = Math.abs(time[i]! - time[i + side]!);
  const hardest = Math.abs(time[i]!) < 1.5 ? HARDEST : HARDEST_SLOW + HARDEST_BY_SPEED * Math.abs(fit.slope);
  const late = Math.hypot(CLOCK, JITTER * step) * fit.slope;
  return Math.abs(height[i]! - fit.value) > SIGMAS * Math.hypot(sigma, late) * fit.spread + 0.5 * hardest * step * step;
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
  const reach = Math.max(0.6, 6 * near);
  for (let k = i + side, count = 0; side < 0 ? k >= last : k <= last; k += side, count++) {
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
