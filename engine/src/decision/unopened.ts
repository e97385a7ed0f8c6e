import { type EnsembleChunk, FLEW, flightSize, LANDING_EAST, LANDING_NORTH } from "../spread/ensemble.js";
import type { Unopened } from "./decision.js";

/** Factor on one sigma of a two-dimensional normal spread that holds 95 %: √(−2 ln 0.05). */
const ellipseFactor = Math.sqrt(-2 * Math.log(0.05));

/** 95 % ellipse of where the unopened flights come down, from the covariance of their landings. */
export function landingEllipse(chunk: EnsembleChunk): Unopened["ellipse95"] {
  let n = 0;
  let [e, north] = [0, 0];
  const rows: [number, number][] = [];
  for (let o = 0; o < chunk.flights.length; o += flightSize) {
    if (chunk.flights[o + FLEW] !== 1) continue;
    rows.push([chunk.flights[o + LANDING_EAST]!, chunk.flights[o + LANDING_NORTH]!]);
    e += chunk.flights[o + LANDING_EAST]!;
    north += chunk.flights[o + LANDING_NORTH]!;
    n += 1;
  }
  if (n < 3) return null;
  e /= n;
  north /= n;
  let [ee, nn, en] = [0, 0, 0];
  for (const [x, y] of rows) {
    ee += (x - e) ** 2 / n;
    nn += (y - north) ** 2 / n;
    en += ((x - e) * (y - north)) / n;
  }
  const middle = 0.5 * (ee + nn);
  const half = Math.hypot(0.5 * (ee - nn), en);
  return {
    east: e,
    north,
    major: ellipseFactor * Math.sqrt(middle + half),
    minor: ellipseFactor * Math.sqrt(Math.max(0, middle - half)),
    azimuth: half > 0 ? 0.5 * Math.atan2(2 * en, nn - ee) : 0,
  };
}
