import { firstAtLeast } from "../interpolated.js";
import type { Look, Placed } from "./look.js";

/** A push that begins a boost [m/s²]: it must last until this speed [m/s]. */
const PUSH = 8;
const LEAST_SPEED = 4;
/** An accelerometer's own filter, as far as it is not known [s]. Common practice, no source. */
const FILTER = 0.006;
/** Thrust rises from the weight to where it stands out in some 0.01 s: half of that. Common practice, no source. */
const RISE = 0.005;

/**
 * Lift-off between the last row at rest and the first that is pushed; null without an accelerometer.
 *
 * The rise is carried back to nothing where two rows lie on it; else the thrust rose within one spacing, and the middle is
 * taken with the spacing's own error.
 */
export function liftOffByAcceleration({ record }: Look): Placed | null {
  const { time, acceleration, accelerationError } = record;
  if (acceleration === null) return null;
  const least = Math.max(1, 5 * (accelerationError ?? 0));
  const from = firstAtLeast(time, -5);
  for (let i = Math.max(1, from); i < time.length && time[i]! < 5; i++) {
    if (!(acceleration[i]! > PUSH) || !boosts(time, acceleration, i)) continue;
    let risen = i;
    while (risen > 1 && acceleration[risen - 1]! > least) risen--;
    return riseFrom(time, acceleration, risen);
  }
  return null;
}

/** The rise's foot: a line through the rows on it, else the middle of the spacing in which it lies. */
function riseFrom(time: Float64Array, acceleration: Float64Array, risen: number): Placed {
  const [t0, t1] = [time[risen - 1]!, time[risen]!];
  const spacing = t1 - t0;
  let level = 0;
  for (let i = risen; i < time.length && time[i]! < t1 + 0.3; i++) level = Math.max(level, acceleration[i]!);
  let on = risen;
  while (on + 1 < time.length && acceleration[on + 1]! > acceleration[on]! && acceleration[on + 1]! < 0.7 * level) on++;
  const slope = (acceleration[on]! - acceleration[risen]!) / (time[on]! - t1);
  const back = on > risen ? t1 - acceleration[risen]! / slope : Number.NaN;
  if (back > t0 - spacing && back <= t1)
    return { time: back, error: Math.hypot(0.15 * spacing, FILTER), reason: "acceleration-rises" };
  return {
    time: 0.5 * (t0 + t1) - RISE,
    error: Math.hypot(spacing / Math.sqrt(12), FILTER),
    reason: "acceleration-rises",
  };
}

function boosts(time: Float64Array, acceleration: Float64Array, from: number): boolean {
  let speed = 0;
  for (let i = from; i + 1 < time.length && time[i]! < time[from]! + 1; i++) {
    if (acceleration[i]! < 0) return false;
    speed += acceleration[i]! * (time[i + 1]! - time[i]!);
    if (speed > LEAST_SPEED) return true;
  }
  return false;
}
