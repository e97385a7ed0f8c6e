import { type EnsembleChunk, FLEW, flightSize, LANDING_EAST, LANDING_NORTH } from "../spread/ensemble.js";
import { type GroundEllipse, spreadEllipse } from "./landings.js";

/** 95 % ellipse of where the unopened flights come down, from the covariance of their landings. */
export function landingEllipse(chunk: EnsembleChunk): GroundEllipse | null {
  const east: number[] = [];
  const north: number[] = [];
  for (let o = 0; o < chunk.flights.length; o += flightSize) {
    if (chunk.flights[o + FLEW] !== 1) continue;
    east.push(chunk.flights[o + LANDING_EAST]!);
    north.push(chunk.flights[o + LANDING_NORTH]!);
  }
  return spreadEllipse({ east, north }, 0.95);
}
