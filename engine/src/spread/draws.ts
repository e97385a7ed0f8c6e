import { normalQuantile } from "../math/normal.js";
import { mixSeed, scramble } from "./scramble.js";
import { sobolInteger } from "./sobol.js";

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
  for (let d = 0; d < drawSize; d++) {
    const u = (scramble(sobolInteger(index, d), mixSeed(seed, set, d)) + 0.5) / 4294967296;
    out[d] = d < flightInputsDrawn.length ? normalQuantile(u) : u;
  }
  return out;
}
