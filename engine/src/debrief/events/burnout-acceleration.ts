import { polynomialAt, polynomialFit } from "../fit/polynomial.js";
import { firstAtLeast } from "../interpolated.js";
import type { Look, Placed } from "./look.js";

/** Part of the highest thrust at which the certification standard's burn ends. */
const BURN_THRESHOLD = 0.05;
/** An accelerometer's own filter, as far as it is not known [s]. Common practice, no source. */
const FILTER = 0.008;
/** So long after burnout the coast's own drag is read [s]; the flank is read over so long before it. */
const SETTLING = 0.1;
const FLANK = 0.06;
const LONGEST_GAP = 0.6;
/** A thrust of which the accelerometer saw the lower part only is taken for this much higher. */
const CLIPPED = 1.4;

/**
 * Burnout from the fall of the thrust: what the accelerometer reads above the coast's own drag, carried back from the
 * coast, falls through 5 % of its highest. Null without an accelerometer, or where the fall lies in a gap longer than 0.6 s.
 *
 * @source 5 %: `burnOf`
 */
export function burnoutByAcceleration(look: Look, liftOff: number): Placed | null {
  const { time, acceleration } = look.record;
  if (acceleration === null) return null;
  const first = firstAtLeast(time, liftOff + 0.1);
  let coast = -1;
  for (let i = first; i < time.length && time[i]! < liftOff + 20; i++)
    if (acceleration[i]! < -4 && staysBelow(time, acceleration, i, -2)) {
      coast = i;
      break;
    }
  if (coast < 2) return null;
  let placed: Placed | null = null;
  for (let round = 0, settled = time[coast]! + 0.25; round < 4; round++) {
    placed = fallOf(look, first, settled);
    if (placed === null || placed.time + SETTLING < settled + 0.01) break;
    settled = placed.time + SETTLING;
  }
  return placed;
}

/** The thrust's fall above a coast that has settled by a time. */
function fallOf({ record }: Look, first: number, settled: number): Placed | null {
  const { time, accelerationError, rate, flaws } = record;
  const acceleration = record.acceleration!;
  const begin = firstAtLeast(time, settled);
  const rows: number[] = [];
  for (let i = begin; i < time.length && time[i]! < settled + Math.max(1, 8 / rate); i++) rows.push(i);
  const drag = polynomialFit(time, acceleration, rows, 2, settled, accelerationError ?? 0.1);
  if (drag === null) return null;
  const excess = (i: number): number => acceleration[i]! - polynomialAt(drag, time[i]!);
  let peak = 0;
  for (let i = first; i < begin; i++) peak = Math.max(peak, excess(i));
  const clipped = flaws.some((f) => f.kind === "saturated" && f.from < settled && f.to > time[first]!);
  const burnEnd = BURN_THRESHOLD * peak * (clipped ? CLIPPED : 1);
  const threshold = Math.max(burnEnd, 3 * drag.residual);
  let last = begin;
  while (last > first && !(excess(last) > threshold)) last--;
  const [t1, t2] = [time[last]!, time[last + 1]!];
  const gap = t2 - t1;
  if (last === first || last === begin || gap > LONGEST_GAP) return null;
  // the flank's slope from the rows of its last part, at least two
  let start = last - 1;
  while (start > first && t1 - time[start - 1]! < FLANK && excess(start - 1) > excess(last)) start--;
  const fall = (excess(start) - excess(last)) / (t1 - time[start]!);
  const onward = fall > 0 ? (excess(last) - burnEnd) / fall : Number.POSITIVE_INFINITY;
  const onFlank = onward < gap || gap < FLANK / 3;
  const unsure = fall > 0 ? Math.hypot(drag.residual, clipped ? 0.6 * burnEnd : 0) / fall : gap;
  return {
    time: onFlank ? t1 + Math.min(onward, FLANK) : 0.5 * (t1 + t2),
    error: Math.hypot(onFlank ? 0.2 * gap : gap / Math.sqrt(12), FILTER, Math.min(unsure, FLANK)),
    reason: "acceleration-falls-through-zero",
  };
}

function staysBelow(time: Float64Array, values: Float64Array, from: number, level: number): boolean {
  for (let i = from; i < time.length && time[i]! < time[from]! + 0.3; i++) if (values[i]! > level) return false;
  return true;
}
