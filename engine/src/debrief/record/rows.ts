import type { FlightSpan, RecordFlaw } from "../flight-record.js";
import type { LogSamples } from "../log-samples.js";

/** Rows of a span with rising times. */
export interface RisingRows {
  readonly rows: Int32Array;
  /** On the record's own clock [s]. */
  readonly time: Float64Array;
  /** Median spacing [s]. */
  readonly spacing: number;
}

/** Rows whose time stands still, goes back or is no number are left out: jitter of a clock, doubled rows. */
export function risingRows(samples: LogSamples, from: number, to: number): RisingRows {
  const rows: number[] = [];
  let before = Number.NEGATIVE_INFINITY;
  for (let i = from; i < to; i++) {
    const t = samples.time[i]!;
    if (!(t > before) || !Number.isFinite(t)) continue;
    // one time far ahead of the row after it is a misread, not a gap
    const next = samples.time[i + 1];
    if (i + 1 < to && next !== undefined && next < t && next > before) continue;
    rows.push(i);
    before = t;
  }
  const time = Float64Array.from(rows, (i) => samples.time[i]!);
  return { rows: Int32Array.from(rows), time, spacing: medianSpacing(time) };
}

/** Median of the steps of a rising series, from at most some 2,000 of them; 0 with fewer than two values. */
export function medianSpacing(time: Float64Array): number {
  const stride = Math.max(1, Math.floor(time.length / 2000));
  const steps: number[] = [];
  for (let i = 1; i < time.length; i += stride) steps.push(time[i]! - time[i - 1]!);
  return median(steps);
}

/** Median; 0 of nothing. */
export function median(values: readonly number[] | Float64Array): number {
  if (values.length === 0) return 0;
  const sorted = Float64Array.from(values).sort();
  return sorted[sorted.length >> 1]!;
}

/** Gaps between rows, and a restart of the clock at either end of the span. */
export function gapsAndRestarts(
  samples: LogSamples,
  span: FlightSpan,
  time: Float64Array,
  spacing: number,
): RecordFlaw[] {
  const flaws: RecordFlaw[] = [];
  const first = time[0]!;
  const last = time[time.length - 1]!;
  const clock = samples.time;
  if (span.from > 0 && clock[span.from - 1]! > clock[span.from]!)
    flaws.push({ kind: "restart", from: first, to: first });
  const longest = Math.max(0.25, 5 * spacing);
  for (let i = 1; i < time.length; i++)
    if (time[i]! - time[i - 1]! > longest) flaws.push({ kind: "gap", from: time[i - 1]!, to: time[i]! });
  if (span.to < clock.length && clock[span.to]! < clock[span.to - 1]!)
    flaws.push({ kind: "restart", from: last, to: last });
  return flaws;
}
