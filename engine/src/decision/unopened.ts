import type { PlaceColumns } from "../packing/landing-zone.js";
import { type EnsembleChunk, FLEW, flightSize, LANDING_EAST, LANDING_NORTH } from "../spread/ensemble-chunk.js";

/** Where the unopened flights come down. */
export function unopenedPlaces(chunk: EnsembleChunk): PlaceColumns {
  const east: number[] = [];
  const north: number[] = [];
  for (let o = 0; o < chunk.flights.length; o += flightSize) {
    if (chunk.flights[o + FLEW] !== 1) continue;
    east.push(chunk.flights[o + LANDING_EAST]!);
    north.push(chunk.flights[o + LANDING_NORTH]!);
  }
  return { east, north };
}
