import { scrambleCount, scrambleOf } from "../spread/draws.js";
import type { EnsembleChunk } from "../spread/ensemble.js";
import { FIRES_FIRST, HOLDS, judgedSize, sampleSize } from "../spread/opening-spec.js";
import type { Odds, Setting } from "./decision.js";

/** Sorts in place; NaN, which sorts last, is cut off. */
function sortedNumbers(values: Float64Array): Float64Array {
  values.sort();
  let count = values.length;
  while (count > 0 && Number.isNaN(values[count - 1]!)) count -= 1;
  return values.subarray(0, count);
}

/** Quantile of sorted values, linear between them. */
export function quantile(sorted: Float64Array, p: number): number {
  const place = p * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below]!;
  return low + (place - below) * (sorted[Math.min(below + 1, sorted.length - 1)]! - low);
}

/** Sorted values of one column of a row-major table, rows without a value left out. */
export function sortedColumn(table: Float64Array, rowSize: number, column: number): Float64Array {
  const out = new Float64Array(table.length / rowSize);
  for (let i = 0; i < out.length; i++) out[i] = table[i * rowSize + column]!;
  return sortedNumbers(out);
}

/**
 * Three standard errors of a mean over draws, from the scatter of the independent scrambles' means.
 *
 * @param figureOf the value of a draw
 * @returns 0 for a single draw
 */
export function samplingError(draws: number, figureOf: (draw: number) => number): number {
  const sums = new Float64Array(scrambleCount);
  const counts = new Float64Array(scrambleCount);
  for (let i = 0; i < draws; i++) {
    sums[scrambleOf(i)]! += figureOf(i);
    counts[scrambleOf(i)]! += 1;
  }
  const means = Array.from(sums, (sum, i) => sum / counts[i]!).filter((m) => Number.isFinite(m));
  if (means.length < 2) return 0;
  const mean = means.reduce((a, b) => a + b, 0) / means.length;
  const variance = means.reduce((a, b) => a + (b - mean) ** 2, 0) / (means.length - 1);
  return 3 * Math.sqrt(variance / means.length);
}

/** Odds of one setting: means over the draws, added up in the draws' own order so that workers change nothing. */
export function oddsOf(
  chunk: EnsembleChunk,
  settingCount: number,
  setting: number,
): { odds: Odds; firesFirst: number } {
  const draws = chunk.to - chunk.from;
  const sums = new Float64Array(judgedSize);
  const row = (draw: number): number => (draw * settingCount + setting) * judgedSize;
  for (let i = 0; i < draws; i++) for (let k = 0; k < judgedSize; k++) sums[k]! += chunk.judged[row(i) + k]!;
  const mean = (k: number): number => sums[k]! / draws;
  return {
    odds: {
      clean: mean(0),
      earlyFast: mean(1),
      lateFast: mean(2),
      leanFast: mean(3),
      low: mean(4),
      grounded: mean(5),
      holds: mean(HOLDS),
      error: samplingError(draws, (i) => chunk.judged[row(i)]!),
      holdsError: samplingError(draws, (i) => chunk.judged[row(i) + HOLDS]!),
    },
    firesFirst: mean(FIRES_FIRST),
  };
}

/** Quantiles of speed, height and timing of the openings of one setting. */
export function openingsOf(
  chunk: EnsembleChunk,
  settingCount: number,
  setting: number,
  samples: number,
): Pick<Setting, "openingSpeed" | "openingHeight" | "secondsFromApogee"> {
  const draws = chunk.to - chunk.from;
  const columns = [0, 1, 2].map((k) => {
    const out = new Float64Array(draws * samples);
    for (let i = 0; i < draws; i++)
      for (let j = 0; j < samples; j++)
        out[i * samples + j] = chunk.samples[((i * settingCount + setting) * samples + j) * sampleSize + k]!;
    return sortedNumbers(out);
  }) as [Float64Array, Float64Array, Float64Array];
  const [speeds, heights, offsets] = columns;
  if (speeds.length === 0) return { openingSpeed: null, openingHeight: null, secondsFromApogee: null };
  return {
    openingSpeed: { p50: quantile(speeds, 0.5), p90: quantile(speeds, 0.9), p95: quantile(speeds, 0.95) },
    openingHeight: { p05: quantile(heights, 0.05), p10: quantile(heights, 0.1), p50: quantile(heights, 0.5) },
    secondsFromApogee: { p05: quantile(offsets, 0.05), p50: quantile(offsets, 0.5), p95: quantile(offsets, 0.95) },
  };
}
