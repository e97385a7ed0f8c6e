import { normalQuantileIn } from "../math/normal.js";
import { mixSeed, scrambleIn } from "./scramble.js";
import { sobolIn } from "./sobol.js";

/** The uncertain inputs of a flight, in the order of their Sobol' dimensions: the weightiest get the best ones. */
export const flightInputsDrawn = [
  "dragScale",
  "windSpeed",
  "guideTiltEast",
  "guideTiltNorth",
  "totalImpulse",
  "windExponent",
  "windFloorEast",
  "windFloorNorth",
  "windFrom",
  "mass",
  "burnTime",
  "inertia",
  "balance",
  "temperature",
] as const;

export type DrawnInput = (typeof flightInputsDrawn)[number];

/** Dimensions of one draw: the flight's inputs, then one that shifts the strata of the delay. */
export const drawSize = flightInputsDrawn.length + 1;

/** Independent scrambles whose scatter gives the sampling error. */
export const scrambleCount = 16;

/** Which scramble a draw belongs to. */
export function scrambleOf(draw: number): number {
  return draw % scrambleCount;
}

const fractions = new Uint32Array(drawSize);

const scrambleSeeds = new Uint32Array(scrambleCount * drawSize);
let seedsAreOf: number | null = null;

/** Seeds of all scrambles and dimensions; those asked for last are kept. */
function seedsOf(seed: number): Uint32Array {
  if (seedsAreOf !== seed) {
    for (let i = 0; i < scrambleSeeds.length; i++)
      scrambleSeeds[i] = mixSeed(seed, Math.floor(i / drawSize), i % drawSize);
    seedsAreOf = seed;
  }
  return scrambleSeeds;
}

/**
 * One draw: standard normal values for the flight's inputs and, last, a uniform number for the delay's strata.
 *
 * Depends on seed and number only, never on the draws before it.
 *
 * @param seed any integer
 * @param draw number of the draw, ≥ 0
 * @param out length `drawSize`; filled and returned
 */
export function drawNormals(seed: number, draw: number, out: Float64Array): Float64Array {
  const set = scrambleOf(draw);
  const index = (draw - set) / scrambleCount;
  const seeds = seedsOf(seed);
  for (let d = 0; d < drawSize; d++) {
    sobolIn(fractions, d, index, d);
    scrambleIn(fractions, d, seeds[set * drawSize + d]!);
    out[d] = (fractions[d]! + 0.5) / 4294967296;
    if (d < flightInputsDrawn.length) normalQuantileIn(out, d);
  }
  return out;
}
