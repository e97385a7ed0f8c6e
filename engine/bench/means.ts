import { type EnsembleChunk, flightSize } from "../src/spread/ensemble-chunk.js";
import { judgedSize, sampleSize } from "../src/spread/outcomes.js";

/** Means over the draws of all that an ensemble came to, column by column. */
export interface Means {
  readonly flights: readonly number[];
  /** Settings in order, `judgedSize` each. */
  readonly judged: readonly number[];
  /** Settings in order, their samples, `sampleSize` each; openings that never came are left out. */
  readonly samples: readonly number[];
}

function columnMeans(values: Float64Array, columns: number, of: (x: number) => number): number[] {
  return Array.from({ length: columns }, (_, column) => {
    let sum = 0;
    let count = 0;
    for (let i = column; i < values.length; i += columns) {
      const value = values[i] as number;
      if (Number.isNaN(value)) continue;
      sum += of(value);
      count += 1;
    }
    return count > 0 ? sum / count : 0;
  });
}

/**
 * @param of what is averaged of each number; left out: the number itself
 */
export function meansOf(
  chunk: EnsembleChunk,
  settings: number,
  samples: number,
  of: (x: number) => number = (x) => x,
): Means {
  return {
    flights: columnMeans(chunk.flights, flightSize, of),
    judged: columnMeans(chunk.judged, settings * judgedSize, of),
    samples: columnMeans(chunk.samples, settings * samples * sampleSize, of),
  };
}

/** Below this a mean is held absolutely: odds come from differences of numbers near 1. */
const least = 1e-6;

/**
 * Largest difference of two ensembles' means, relative to the mean size of the numbers averaged: odds to themselves, places
 * either side of the pad to how far they are from it.
 */
export function furthestApart(chunk: EnsembleChunk, settings: number, samples: number, other: Means): number {
  const means = meansOf(chunk, settings, samples);
  const sizes = meansOf(chunk, settings, samples, Math.abs);
  const apart = (["flights", "judged", "samples"] as const).flatMap((part) => {
    if (other[part].length !== means[part].length) throw new Error(`${part} differ in length`);
    return means[part].map((mean, i) => Math.abs(mean - other[part][i]!) / Math.max(least, sizes[part][i]!));
  });
  // NaN must not pass for agreement
  return apart.every(Number.isFinite) ? Math.max(...apart) : Number.POSITIVE_INFINITY;
}
