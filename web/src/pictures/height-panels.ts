import { type Scale, scaleOf } from "./scale.js";

/** Quantiles of the height over time, columns of one length: seconds from ignition, metres above the pad. */
export interface FanColumns {
  readonly times: ArrayLike<number>;
  readonly p05: ArrayLike<number>;
  readonly p25: ArrayLike<number>;
  readonly p50: ArrayLike<number>;
  readonly p75: ArrayLike<number>;
  readonly p95: ArrayLike<number>;
}

/** A flight by columns of one length. */
export interface FlownColumns {
  readonly time: ArrayLike<number>;
  readonly height: ArrayLike<number>;
}

/** A flight with the row of its opening; null where nothing opens. */
export interface OpenedColumns extends FlownColumns {
  readonly opening: number | null;
}

/** Openings by columns of one length; `outcome` counts in the order of the six outcomes. */
export interface OpeningColumns extends FlownColumns {
  readonly outcome: ArrayLike<number>;
}

/** One of the two stretches of time side by side, each with its own axis. */
export interface Panel {
  readonly from: number;
  readonly to: number;
  readonly x: Scale;
}

const last = (column: ArrayLike<number> | undefined): number => {
  const value = column?.[column.length - 1] ?? 0;
  return Number.isFinite(value) ? value : 0;
};

/** The largest figure of a column that can be drawn; 0 where there is none. */
export function largest(column: ArrayLike<number>): number {
  let most = 0;
  for (let i = 0; i < column.length; i++) {
    const value = column[i];
    if (value !== undefined && Number.isFinite(value) && value > most) most = value;
  }
  return most;
}

/** When nearly all are down: the last time at which the upper band is above the ground. */
function downAt({ times, p95 }: FanColumns): number {
  const least = largest(p95) * 0.002;
  for (let i = times.length - 1; i >= 0; i--)
    if ((p95[i] ?? 0) > least) return times[Math.min(i + 1, times.length - 1)] ?? 0;
  return 0;
}

/**
 * When the climb's panel ends, and when the way down is over [s].
 *
 * Both are above 0; `end` is `split` where the flight is over soon after, so that one panel is enough.
 */
export function splitOf(
  climb: FanColumns | null,
  descent: FanColumns | null,
  openings: OpeningColumns,
  flights: readonly FlownColumns[],
  topTime: number,
): { readonly split: number; readonly end: number } {
  const opened = Math.max(last(climb?.times), largest(openings.time), 1.25 * topTime);
  const down = Math.max(descent === null ? 0 : downAt(descent), ...flights.map(({ time }) => last(time)));
  const end = Math.max(down, opened, 1) * 1.02;
  const split = Math.max(opened > 0 ? opened * 1.06 : end, 0.5);
  return end < split * 1.25 ? { split: end, end } : { split, end };
}

/** The panels, left to right: the climb has two thirds of the width. */
export function panelsOf(split: number, end: number, left: number, right: number, gap: number): readonly Panel[] {
  if (end <= split) return [{ from: 0, to: end, x: scaleOf(0, end, left, right) }];
  const middle = left + (right - left - gap) * 0.66;
  return [
    { from: 0, to: split, x: scaleOf(0, split, left, middle) },
    { from: split, to: end, x: scaleOf(split, end, middle + gap, right) },
  ];
}

/** The height of a flight at a time, between its rows; null outside them. */
export function heightAt({ time, height }: FlownColumns, at: number): number | null {
  const count = Math.min(time.length, height.length);
  for (let i = 1; i < count; i++) {
    const [t0, t1] = [time[i - 1] ?? Number.NaN, time[i] ?? Number.NaN];
    if (!(t0 <= at && at <= t1)) continue;
    const share = t1 > t0 ? (at - t0) / (t1 - t0) : 0;
    return (height[i - 1] ?? 0) + share * ((height[i] ?? 0) - (height[i - 1] ?? 0));
  }
  return null;
}

/** The part of a flight within a stretch of time, cut at its ends. */
export function stretchOf(flown: FlownColumns, from: number, to: number): readonly (readonly [number, number])[] {
  const rows: [number, number][] = [];
  const first = heightAt(flown, from);
  if (first !== null) rows.push([from, first]);
  for (let i = 0; i < Math.min(flown.time.length, flown.height.length); i++) {
    const [time, height] = [flown.time[i] ?? Number.NaN, flown.height[i] ?? Number.NaN];
    if (time > from && time < to && Number.isFinite(height)) rows.push([time, height]);
  }
  const end = heightAt(flown, to);
  if (end !== null) rows.push([to, end]);
  return rows;
}
