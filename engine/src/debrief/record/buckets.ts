import type { LogSamples } from "../log-samples.js";
import type { HeightSource } from "./height-source.js";

/** Length of a bucket [s]. */
const LENGTH = 0.25;
/** Figures looked at in one bucket at most. */
const MOST = 15;

/** A column in coarse steps of time: what the search for flights walks over. */
export interface Buckets {
  /** First row of each bucket, and one more: the end. */
  readonly row: readonly number[];
  /** Time of the first row [s]. */
  readonly time: readonly number[];
  /** Median of the figures, in metres where the column is one of heights. */
  readonly value: readonly number[];
}

/** Rows between two restarts of the record's clock. */
export function clockRuns(time: Float64Array): [number, number][] {
  const runs: [number, number][] = [];
  let start = 0;
  let latest = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < time.length; i++) {
    const t = time[i]!;
    if (t < latest - 0.5) {
      // one misread time is no restart: the clock must stay behind, or the one ahead was misread
      const on = time[Math.min(i + 3, time.length - 1)]!;
      if (on < latest - 0.5) {
        const before = i >= 2 ? time[i - 2]! : Number.NEGATIVE_INFINITY;
        if (t > before) latest = t;
        else {
          runs.push([start, i]);
          start = i;
          latest = t;
        }
      }
    } else if (t > latest) latest = t;
  }
  runs.push([start, time.length]);
  return runs;
}

/** Height by the standard atmosphere, good enough to look for a flight [m]. */
const roughHeight = (pressure: number): number => 44_330.8 * (1 - (pressure / 101_325) ** 0.190263);

/** Puts the rows of one clock run into buckets; linear in rows. */
export function bucketsOf(samples: LogSamples, source: HeightSource, from: number, to: number): Buckets {
  const column = samples[source]!;
  const { time } = samples;
  const row: number[] = [];
  const start: number[] = [];
  const value: number[] = [];
  for (let i = from; i < to; ) {
    const end = time[i]! + LENGTH;
    let j = i + 1;
    while (j < to && (time[j]! < end || j - i < 3)) j++;
    const stride = Math.max(1, Math.floor((j - i) / MOST));
    const few: number[] = [];
    for (let k = i; k < j; k += stride) if (Number.isFinite(column[k]!)) few.push(column[k]!);
    if (few.length > 0) {
      few.sort((a, b) => a - b);
      const middle = few[few.length >> 1]!;
      row.push(i);
      start.push(time[i]!);
      value.push(source === "pressure" ? roughHeight(Math.max(1, middle)) : middle);
    }
    i = j;
  }
  row.push(to);
  return { row, time: start, value };
}
