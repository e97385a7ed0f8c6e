import { doublesScratch } from "../math/scratch.js";
import { scrambleCount, scrambleOf } from "../spread/draws.js";
import type { EnsembleChunk } from "../spread/ensemble-chunk.js";
import { FIRES_FIRST, HOLDS, judgedSize, sampleSize } from "../spread/outcomes.js";
import type { Odds, Setting } from "./decision.js";
import { quantilesOf } from "./quantiles.js";

const speedColumn = doublesScratch();
const heightColumn = doublesScratch();
const timingColumn = doublesScratch();

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
  const speeds = speedColumn.take(draws * samples);
  const heights = heightColumn.take(draws * samples);
  const timings = timingColumn.take(draws * samples);
  let count = 0;
  for (let i = 0; i < draws; i++) {
    let at = (i * settingCount + setting) * samples * sampleSize;
    for (let j = 0; j < samples; j++, at += sampleSize) {
      const speed = chunk.samples[at]!;
      // grounded: there was no opening
      if (Number.isNaN(speed)) continue;
      speeds[count] = speed;
      heights[count] = chunk.samples[at + 1]!;
      timings[count] = chunk.samples[at + 2]!;
      count += 1;
    }
  }
  if (count === 0) return noOpenings;
  const opened = (column: Float64Array): Float64Array => column.subarray(0, count);
  const speed = quantilesOf(opened(speeds), [0.05, 0.5, 0.9, 0.95]);
  const height = quantilesOf(opened(heights), [0.05, 0.1, 0.5]);
  const timing = quantilesOf(opened(timings), [0.05, 0.5, 0.95]);
  return {
    openingSpeed: { p05: speed[0]!, p50: speed[1]!, p90: speed[2]!, p95: speed[3]! },
    openingHeight: { p05: height[0]!, p10: height[1]!, p50: height[2]! },
    secondsFromApogee: { p05: timing[0]!, p50: timing[1]!, p95: timing[2]! },
  };
}

/** No opening was sampled, or every one is grounded. */
export const noOpenings = Object.freeze({ openingSpeed: null, openingHeight: null, secondsFromApogee: null });
