import { ticksOf } from "./scale.js";
import type { Room } from "./use-width.js";

/** A line of a plot: seconds after lift-off, rising, and figures in SI units. */
export interface FlownSeries {
  readonly time: ArrayLike<number>;
  readonly value: ArrayLike<number>;
}

/** As recorded, and as the plan said before. */
export interface FlownPair {
  readonly flown: FlownSeries | null;
  readonly predicted: FlownSeries | null;
}

/** What lies between two lines: seconds after lift-off, rising, and figures in SI units. */
export interface FlownBand {
  readonly time: ArrayLike<number>;
  readonly low: ArrayLike<number>;
  readonly high: ArrayLike<number>;
}

/** An event on the plot, seconds after lift-off. */
export interface FlownMark {
  readonly name: string;
  readonly word: string;
  /** Null: not found. */
  readonly time: number | null;
  readonly predicted: number | null;
}

/** The stretch of time that is shown, seconds after lift-off. */
export interface FlownWindow {
  readonly from: number;
  readonly to: number;
}

/** Shortest stretch that is shown [s]. */
const SHORTEST = 0.5;

/** Room that the plot leaves left and right of its axes [px]. */
export function flownMargins({ grow }: Pick<Room, "grow">): { readonly left: number; readonly right: number } {
  return { left: Math.round(46 * grow), right: 8 };
}

/**
 * A window moved into the whole; one that is too long becomes the whole, one that is too short is widened about its middle.
 *
 * @example
 * clampedWindow({ from: -8, to: 2 }, { from: -1, to: 60 }); // { from: -1, to: 9 }
 */
export function clampedWindow({ from, to }: FlownWindow, whole: FlownWindow): FlownWindow {
  const all = whole.to - whole.from;
  const length = Math.min(all, Math.max(SHORTEST, to - from));
  if (!(length < all)) return whole;
  const middle = (from + to) / 2;
  const start = Math.min(whole.to - length, Math.max(whole.from, middle - length / 2));
  return { from: start, to: start + length };
}

/**
 * A window closer in or farther out, about a time where one is given, else about its middle.
 *
 * @param by what the window's length is multiplied by
 */
export function zoomedWindow(window: FlownWindow, by: number, whole: FlownWindow, about?: number): FlownWindow {
  const { from, to } = window;
  const inside = about !== undefined && about >= from && about <= to;
  const middle = inside ? about : (from + to) / 2;
  const length = Math.max(SHORTEST, (to - from) * by);
  const share = (middle - from) / (to - from);
  const wished = inside ? middle - share * length : middle - length / 2;
  return clampedWindow({ from: wished, to: wished + length }, whole);
}

/** A window farther along by a part of its own length. */
export function movedWindow({ from, to }: FlownWindow, by: number, whole: FlownWindow): FlownWindow {
  const step = by * (to - from);
  return clampedWindow({ from: from + step, to: to + step }, whole);
}

/** First place in rising times that is not before a time. */
function firstFrom(time: ArrayLike<number>, at: number): number {
  let [low, high] = [0, time.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((time[middle] ?? Number.NaN) < at) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Which of a line's rising times lie within a window: from `start`, before `end`. */
export function shownPart(
  time: ArrayLike<number>,
  { from, to }: FlownWindow,
): { readonly start: number; readonly end: number } {
  let end = firstFrom(time, to);
  while (end < time.length && time[end] === to) end += 1;
  return { start: firstFrom(time, from), end };
}

/** Lowest and highest figure of lines within a window; null where none is there. */
export function rangeOf(lines: readonly (FlownSeries | null)[], window: FlownWindow): [number, number] | null {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const line of lines) {
    if (line === null) continue;
    const { start, end } = shownPart(line.time, window);
    for (let i = start; i < end; i++) {
      const figure = line.value[i] ?? Number.NaN;
      if (!Number.isFinite(figure)) continue;
      if (figure < low) low = figure;
      if (figure > high) high = figure;
    }
  }
  return low <= high ? [low, high] : null;
}

/** As many round times as have room beside each other. */
export function timeTicks({ from, to }: FlownWindow, room: number, grow: number): readonly number[] {
  for (const count of [12, 10, 8, 6, 5, 4, 3, 2]) {
    const times = ticksOf(from, to, count);
    if (times.length * 38 * grow <= room) return times;
  }
  return ticksOf(from, to, 1);
}

/**
 * Where a key moves an event; null for a key that moves nothing.
 *
 * @param time where it stands
 * @param step of one press [s]; ten of them with Shift, or by Page Up and Page Down
 * @param range where it may stand
 */
export function keyedTime(
  { key, shiftKey }: { readonly key: string; readonly shiftKey: boolean },
  time: number,
  step: number,
  range: FlownWindow,
): number | null {
  const one = shiftKey ? 10 * step : step;
  switch (key) {
    case "ArrowLeft":
    case "ArrowDown":
      return time - one;
    case "ArrowRight":
    case "ArrowUp":
      return time + one;
    case "PageDown":
      return time - 10 * step;
    case "PageUp":
      return time + 10 * step;
    case "Home":
      return range.from;
    case "End":
      return range.to;
    default:
      return null;
  }
}
