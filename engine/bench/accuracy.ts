import { fly } from "../src/flight/fly.js";
import type { FlightResult } from "../src/flight/result.js";
import { drawnInputs } from "../src/spread/drawn-inputs.js";
import type { EnsembleSpec } from "../src/spread/ensemble.js";
import { APOGEE_HEIGHT, APOGEE_TIME, type EnsembleChunk, flightSize } from "../src/spread/ensemble-chunk.js";
import { sampleSize } from "../src/spread/outcomes.js";

/** Draws from 0 on, each flown by `fly` at its tight tolerance from the exact formulas. */
export function tightFlights(spec: EnsembleSpec, draws: number): FlightResult[] {
  return Array.from({ length: draws }, (_, i) =>
    fly(drawnInputs(spec.inputs, spec.spread, spec.seed, i), { model: spec.options.model }),
  );
}

/** Largest errors of drawn flights against the tight ones: relative for the top, m/s for openings. */
export interface Errors {
  readonly apogeeTime: number;
  readonly apogeeHeight: number;
  readonly openingAirspeed: number;
}

/** Compares a chunk's first draws with the tight flights: tops, and the airspeed at every opening sampled. */
export function errorsOf(chunk: EnsembleChunk, spec: EnsembleSpec, tight: readonly FlightResult[]): Errors {
  const openings = spec.opening.settings.length * spec.opening.samples;
  let [apogeeTime, apogeeHeight, openingAirspeed] = [0, 0, 0];
  tight.forEach((flight, draw) => {
    const top = flight.events.apogee;
    if (top === null) throw new Error(`draw ${draw} has no apogee`);
    const time = chunk.flights[draw * flightSize + APOGEE_TIME]!;
    const height = chunk.flights[draw * flightSize + APOGEE_HEIGHT]!;
    apogeeTime = Math.max(apogeeTime, Math.abs(time / top.time - 1));
    apogeeHeight = Math.max(apogeeHeight, Math.abs(height / top.position[2] - 1));
    for (let i = 0; i < openings; i++) {
      const o = (draw * openings + i) * sampleSize;
      const airspeed = chunk.samples[o]!;
      if (Number.isNaN(airspeed)) continue;
      const there = flight.at(time + chunk.samples[o + 2]!).airspeed;
      openingAirspeed = Math.max(openingAirspeed, Math.abs(airspeed - there));
    }
  });
  return { apogeeTime, apogeeHeight, openingAirspeed };
}
