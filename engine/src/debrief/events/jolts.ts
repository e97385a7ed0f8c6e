import { median } from "../record/rows.js";
import type { Look } from "./look.js";

/** Least jump of acceleration that counts [m/s²], and how many sigma. */
const LEAST = 15;
const SIGMAS = 8;

/** Moments at which the acceleration jumps, after the boost: a charge, lines that stretch, the ground. Rising [s]. */
export function joltsAfter({ record }: Look, from: number): number[] {
  const { time, acceleration, accelerationError } = record;
  if (acceleration === null) return [];
  const least = Math.max(LEAST, SIGMAS * (accelerationError ?? 0));
  const found: number[] = [];
  const window: number[] = [];
  for (let i = 1; i < time.length; i++) {
    if (time[i]! < from - 0.5) continue;
    if (time[i]! >= from && window.length >= 5 && Math.abs(acceleration[i]! - acceleration[i - 1]!) > least / 3) {
      const jump = Math.abs(acceleration[i]! - median(window));
      if (jump > least && (found.length === 0 || time[i]! > found[found.length - 1]! + 0.3))
        found.push(0.5 * (time[i]! + time[i - 1]!));
    }
    window.push(acceleration[i]!);
    if (window.length > 9) window.shift();
  }
  return found;
}
