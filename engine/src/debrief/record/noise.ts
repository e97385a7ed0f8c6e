import { robustScale } from "../fit/residuals.js";

/** Least one sigma of a height [m]: no barometer of a flight is better. */
const LEAST = 0.03;

/**
 * One sigma of one height: from a quiet stretch before `until` about its own line, else from second differences of all; at
 * least what the steps of the figures allow.
 *
 * @param until end of the quiet stretch [s]
 */
export function noiseOf(time: Float64Array, values: Float64Array, until: number): number {
  let end = 0;
  while (end < time.length && time[end]! < until) end++;
  const start = Math.max(0, end - 400);
  const rounding = stepOf(values) / Math.sqrt(12);
  if (end - start >= 12) return Math.max(LEAST, rounding, aboutOwnLine(time, values, start, end));
  const bends = new Float64Array(Math.max(0, values.length - 2));
  for (let i = 2; i < values.length; i++) bends[i - 2] = values[i]! - 2 * values[i - 1]! + values[i - 2]!;
  return Math.max(LEAST, rounding, robustScale(bends) / Math.sqrt(6));
}

function aboutOwnLine(time: Float64Array, values: Float64Array, start: number, end: number): number {
  const n = end - start;
  let [t, v, tt, tv] = [0, 0, 0, 0];
  for (let i = start; i < end; i++) {
    const u = time[i]! - time[start]!;
    t += u;
    v += values[i]!;
    tt += u * u;
    tv += u * values[i]!;
  }
  const slope = (n * tv - t * v) / Math.max(1e-12, n * tt - t * t);
  const left = new Float64Array(n);
  for (let i = start; i < end; i++) left[i - start] = values[i]! - v / n - slope * (time[i]! - time[start]! - t / n);
  const rms = Math.sqrt(left.reduce((sum, x) => sum + x * x, 0) / Math.max(1, n - 2));
  // a gust on the pad sticks out: the robust figure then, unless steps of the figures hide the noise from it
  const robust = robustScale(left);
  return robust > 0.5 * rms ? Math.min(rms, 1.5 * robust) : rms;
}

/** Smallest step between neighbouring figures that differ, where many agree to it; else 0. */
function stepOf(values: Float64Array): number {
  let same = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let i = 1; i < values.length; i++) {
    const step = Math.abs(values[i]! - values[i - 1]!);
    if (step < 1e-9) same++;
    else if (step < least) least = step;
  }
  return same > values.length / 10 && Number.isFinite(least) ? least : 0;
}
