import type { FlightResult } from "../flight/result.js";
import {
  APOGEE_AIRSPEED,
  APOGEE_HEIGHT,
  COAST,
  type EnsembleChunk,
  FLEW,
  flightSize,
} from "../spread/ensemble-chunk.js";
import type { Decision } from "./decision.js";
import { densityOf } from "./density.js";
import { quantilesOf } from "./quantiles.js";

/** One figure of every draw that flew, in the draws' order. */
export function flownColumn({ flights }: EnsembleChunk, figure: number): Float64Array {
  const column = new Float64Array(flights.length / flightSize);
  let count = 0;
  for (let o = 0; o < flights.length; o += flightSize) {
    if (flights[o + FLEW] !== 1) continue;
    column[count] = flights[o + figure]!;
    count += 1;
  }
  return column.subarray(0, count);
}

/** Coast time, height and airspeed at the top over the draws; the nominal flight's where none flew. */
export function flightFigures(
  flight: FlightResult,
  chunk: EnsembleChunk,
): Pick<Decision, "coast" | "apogeeHeight" | "apogeeAirspeed"> {
  const { apogee, burnout } = flight.events;
  const nominal = apogee !== null && burnout !== null ? apogee.time - burnout.time : 0;
  const coasts = flownColumn(chunk, COAST);
  if (coasts.length === 0) {
    const top = apogee?.position[2] ?? 0;
    return {
      coast: { nominal, p05: nominal, p50: nominal, p95: nominal, density: null },
      apogeeHeight: { p05: top, p50: top, p95: top },
      apogeeAirspeed: { p50: 0, p95: 0 },
    };
  }
  const density = densityOf(coasts);
  const speeds = quantilesOf(flownColumn(chunk, APOGEE_AIRSPEED), [0.5, 0.95]);
  return {
    coast: { nominal, ...band(coasts), density },
    apogeeHeight: band(flownColumn(chunk, APOGEE_HEIGHT)),
    apogeeAirspeed: { p50: speeds[0]!, p95: speeds[1]! },
  };
}

/** The middle, and where 5 % lie below and above. */
export function band(values: Float64Array): { p05: number; p50: number; p95: number } {
  const at = quantilesOf(values, [0.05, 0.5, 0.95]);
  return { p05: at[0]!, p50: at[1]!, p95: at[2]! };
}
