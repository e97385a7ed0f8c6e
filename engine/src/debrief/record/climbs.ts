import type { Buckets } from "./buckets.js";

/** A flight on the buckets of one clock run: indices of buckets. */
export interface Climb {
  readonly liftOff: number;
  /** First bucket at rest again, or the count of buckets. */
  readonly end: number;
  /** Above where it started [m]. */
  readonly top: number;
}

/** A rise within `RISE_TIME` that begins a flight [m], [s]. */
const RISE = 10;
const RISE_TIME = 2;
/** Least height of a flight [m]. */
const LEAST_TOP = 20;
/** Rest: heights stay within `REST` for `REST_TIME` [m], [s]. */
const REST = 2.5;
const REST_TIME = 6;

/** Flights in a column of heights: a quick rise from rest, up to the next rest. A slow drift of the weather is no rise. */
export function climbsIn({ time, value }: Buckets): Climb[] {
  const climbs: Climb[] = [];
  const n = value.length;
  let free = 0;
  for (let i = 0; i < n; i++) {
    let before = i;
    let lowest = value[i]!;
    while (before > free && time[before - 1]! >= time[i]! - RISE_TIME) {
      before--;
      lowest = Math.min(lowest, value[before]!);
    }
    if (value[i]! - lowest < RISE || highestFrom(time, value, i, 6) - lowest < LEAST_TOP) continue;
    let liftOff = i;
    while (liftOff > before && value[liftOff]! > lowest + 1.5) liftOff--;
    const { end, top } = wayDown(time, value, liftOff);
    climbs.push({ liftOff, end, top: top - value[liftOff]! });
    free = end;
    i = end;
  }
  return climbs;
}

function highestFrom(time: readonly number[], value: readonly number[], i: number, seconds: number): number {
  let highest = value[i]!;
  for (let k = i; k < value.length && time[k]! <= time[i]! + seconds; k++) highest = Math.max(highest, value[k]!);
  return highest;
}

/** Highest figure, and the first bucket of the rest after it. */
function wayDown(time: readonly number[], value: readonly number[], liftOff: number): { end: number; top: number } {
  const start = value[liftOff]!;
  let top = start;
  let calm = liftOff;
  for (let i = liftOff; i < value.length; i++) {
    top = Math.max(top, value[i]!);
    if (Math.abs(value[i]! - value[calm]!) > REST) calm = i;
    const down = value[i]! < start + Math.max(15, 0.6 * (top - start));
    if (down && top - start > LEAST_TOP && time[i]! - time[calm]! >= REST_TIME) return { end: calm, top };
  }
  return { end: value.length, top };
}
