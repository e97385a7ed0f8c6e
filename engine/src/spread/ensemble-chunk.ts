import type { OpeningSpec } from "./opening-spec.js";
import { judgedSize, sampleSize } from "./outcomes.js";

/** Numbers a flight in `EnsembleChunk.flights`. */
export const flightSize = 8;
export const COAST = 0;
export const APOGEE_TIME = 1;
export const APOGEE_HEIGHT = 2;
export const APOGEE_AIRSPEED = 3;
export const LANDING_EAST = 4;
export const LANDING_NORTH = 5;
export const GUIDE_EXIT_SPEED = 6;
/** 1 where the flight left the guide and came down, else 0: its other numbers then mean nothing. */
export const FLEW = 7;

/** A run of draws: columns that can be handed over from a worker without copying. */
export interface EnsembleChunk {
  readonly from: number;
  readonly to: number;
  readonly flights: Float64Array;
  /** `judgedSize` numbers a setting, settings within draws. */
  readonly judged: Float64Array;
  /** `sampleSize` numbers a sample, samples within settings within draws. */
  readonly samples: Float64Array;
}

/** Numbers a draw in each column. */
type Widths = readonly [flights: number, judged: number, samples: number];

function widthsOf({ settings, samples }: Pick<OpeningSpec, "settings" | "samples">): Widths {
  return [flightSize, settings.length * judgedSize, settings.length * samples * sampleSize];
}

/**
 * Memory that a number of draws take.
 *
 * @param opening settings that each draw is judged at, and openings sampled at each
 * @param draws ≥ 0
 * @returns [bytes]
 * @example
 * chunkBytes({ settings: [{ delay: 8, sd: 0.5 }], samples: 2 }, 10_000); // 1_760_000
 */
export function chunkBytes(opening: Pick<OpeningSpec, "settings" | "samples">, draws: number): number {
  return widthsOf(opening).reduce((sum, width) => sum + width * draws, 0) * Float64Array.BYTES_PER_ELEMENT;
}

/**
 * Room for draws `from` … `to` − 1, its columns one behind the other in one memory.
 *
 * @param opening settings that each draw is judged at, and openings sampled at each
 * @param memory at least `chunkBytes`, with anything in it; left out: new
 * @throws {RangeError} where the memory is too small
 * @example
 * chunkIn({ settings: [{ delay: 8, sd: 0.5 }], samples: 2 }, 0, 100).judged.length; // 800
 */
export function chunkIn(
  opening: Pick<OpeningSpec, "settings" | "samples">,
  from: number,
  to: number,
  memory: ArrayBuffer = new ArrayBuffer(chunkBytes(opening, to - from)),
): EnsembleChunk {
  let at = 0;
  const [flights, judged, samples] = widthsOf(opening).map((width) => {
    const column = new Float64Array(memory, at, width * (to - from));
    at += column.byteLength;
    return column;
  }) as [Float64Array, Float64Array, Float64Array];
  return { from, to, flights, judged, samples };
}

/**
 * Draws `from` … `to` − 1 of a chunk, in its own memory: what is written into the one is in the other.
 *
 * @param from not before the chunk's first draw
 * @param to not after its last
 * @example
 * partOf(prepareEnsemble(spec)(0, 2000), 0, 256).to; // 256
 */
export function partOf(chunk: EnsembleChunk, from: number, to: number): EnsembleChunk {
  const draws = chunk.to - chunk.from;
  const rows = (column: Float64Array): Float64Array => {
    const width = column.length / draws;
    return column.subarray((from - chunk.from) * width, (to - chunk.from) * width);
  };
  return { from, to, flights: rows(chunk.flights), judged: rows(chunk.judged), samples: rows(chunk.samples) };
}

/**
 * Copies a run of draws to its place in a chunk that covers them.
 *
 * @example
 * putChunk(whole, prepareEnsemble(spec)(256, 512));
 */
export function putChunk(whole: EnsembleChunk, run: EnsembleChunk): void {
  const { flights, judged, samples } = partOf(whole, run.from, run.to);
  flights.set(run.flights);
  judged.set(run.judged);
  samples.set(run.samples);
}

/** Joins runs of draws that together cover 0 … n − 1, in whatever order they came. */
export function joinChunks(chunks: readonly EnsembleChunk[]): EnsembleChunk {
  const [first] = chunks;
  if (first === undefined || chunks.length === 1) return first ?? emptyChunk;
  const from = Math.min(...chunks.map((chunk) => chunk.from));
  const to = Math.max(...chunks.map((chunk) => chunk.to));
  const column = (of: Float64Array): Float64Array =>
    new Float64Array((of.length / (first.to - first.from)) * (to - from));
  const whole = {
    from,
    to,
    flights: column(first.flights),
    judged: column(first.judged),
    samples: column(first.samples),
  };
  for (const chunk of chunks) putChunk(whole, chunk);
  return whole;
}

const emptyChunk: EnsembleChunk = {
  from: 0,
  to: 0,
  flights: new Float64Array(),
  judged: new Float64Array(),
  samples: new Float64Array(),
};

/**
 * The memory behind a chunk, each piece once, to be handed over with it.
 *
 * @example
 * postMessage(chunk, memoryOf(chunk));
 */
export function memoryOf({ flights, judged, samples }: EnsembleChunk): ArrayBuffer[] {
  return [...new Set([flights, judged, samples].map((column) => column.buffer as ArrayBuffer))];
}
