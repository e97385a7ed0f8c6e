import { robustScale } from "../fit/residuals.js";
import { interpolated } from "../interpolated.js";
import { median } from "./rows.js";

const GRAVITY = 9.80665;

/** An accelerometer's figures over ground: 0 at rest, positive forwards. */
export interface Axial {
  readonly acceleration: Float64Array;
  /** One sigma of one figure [m/s²]. */
  readonly error: number;
  /** Stretches at the end of its range, first and last index. */
  readonly saturated: readonly [number, number][];
}

/**
 * Makes an accelerometer's column comparable: what it reads at rest is taken off (0 or 1 g, with either sign, and its own
 * offset), and it is turned so that the boost is forwards. Null where it shows no boost that fits the climb: another axis.
 *
 * @param height above the pad [m]; null for a record of acceleration alone
 * @param rest the quiet stretch ends here [s]
 */
export function axialOf(
  time: Float64Array,
  raw: Float64Array,
  height: Float64Array | null,
  rest: number,
): Axial | null {
  const n = time.length;
  let quiet = 0;
  while (quiet < n && time[quiet]! < rest) quiet++;
  const still = raw.slice(Math.max(0, quiet - 400), quiet);
  const level = still.length >= 5 ? median(still) : nearestRest(raw[0]!);
  const left = still.map((x) => x - level);
  const rms = Math.sqrt(left.reduce((sum, x) => sum + x * x, 0) / Math.max(1, left.length - 1));
  const error = Math.max(0.05, still.length >= 5 ? Math.max(robustScale(left), 0.7 * rms) : 0.5);
  let along = 0;
  let risen = 0;
  for (let i = Math.max(1, quiet); i < n; i++) {
    if (time[i]! > 12) break;
    along += (raw[i]! - level) * (time[i]! - time[i - 1]!);
    if (Math.abs(along) > Math.abs(risen)) risen = along;
    else if (Math.abs(risen) > 3 && Math.abs(along) < 0.5 * Math.abs(risen)) break;
  }
  const sign = Math.sign(risen);
  const fastest = height === null ? Math.abs(risen) : fastestClimb(time, height);
  if (sign === 0 || Math.abs(risen) < 3 || Math.abs(risen) < 0.4 * fastest || Math.abs(risen) > 3 * fastest + 20)
    return null;
  const acceleration = raw.map((x) => sign * (x - level));
  return { acceleration, error, saturated: saturatedIn(acceleration) };
}

const nearestRest = (first: number): number => (Math.abs(first) < GRAVITY / 2 ? 0 : Math.sign(first) * GRAVITY);

/** Highest climb over half a second [m/s]. */
function fastestClimb(time: Float64Array, height: Float64Array): number {
  let fastest = 0;
  for (let i = 0; i < time.length && time[i]! < 15; i++) {
    if (time[i]! < 0) continue;
    const on = interpolated(time, height, time[i]! + 0.5);
    fastest = Math.max(fastest, (on - height[i]!) / 0.5);
  }
  return fastest;
}

/** Three or more equal figures in a row at the very top or bottom of what was read. */
function saturatedIn(values: Float64Array): [number, number][] {
  let [top, bottom] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const x of values) {
    top = Math.max(top, x);
    bottom = Math.min(bottom, x);
  }
  const found: [number, number][] = [];
  for (let i = 0; i < values.length; i++) {
    const edge = values[i] === top ? top : values[i] === bottom ? bottom : null;
    if (edge === null || Math.abs(edge) < 10) continue;
    let j = i;
    while (j + 1 < values.length && values[j + 1] === edge) j++;
    if (j - i >= 2) found.push([i, j]);
    i = j;
  }
  return found;
}
