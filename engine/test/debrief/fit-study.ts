import { findEvents } from "../../src/debrief/find-events.js";
import { fitClimb } from "../../src/debrief/fit-climb.js";
import { flightsIn } from "../../src/debrief/flights-in.js";
import { flightRecord } from "../../src/debrief/make-record.js";
import { noSpread } from "../../src/spread/drawn-values.js";
import type { SyntheticLog } from "./synthetic-log.js";
import { NINETY } from "./truth-study.js";

/** How far a fitted factor lies from the true one, logarithms, with the stated one sigma. */
export interface FitMiss {
  readonly miss: number;
  readonly sd: number;
}

/** Drag and impulse as the climb of a record tells them; null where the fit did not converge. */
export interface ClimbMiss {
  readonly drag: FitMiss;
  readonly impulse: FitMiss;
}

/** Of the day the synthetic flights leave only the burn time unknown. */
const spread = { ...noSpread, burnTime: 0.03 };

export function climbMissOf({ samples, flight, hints }: SyntheticLog): ClimbMiss | null {
  const span = flightsIn(samples).at(-1);
  if (span === undefined) return null;
  const record = flightRecord(samples, span, flight.planned.air);
  const fit = fitClimb(record, findEvents(record, hints), flight.planned, { spread });
  if (!fit.converged) return null;
  const [[drag], [, impulse]] = fit.covariance;
  return {
    drag: { miss: fit.lnDrag - flight.lnDrag, sd: Math.sqrt(drag) },
    impulse: { miss: fit.lnImpulse - flight.lnImpulse, sd: Math.sqrt(impulse) },
  };
}

/** What the misses of many records say. */
export function fitFiguresOf(misses: readonly FitMiss[]) {
  const count = misses.length;
  const bias = misses.reduce((sum, { miss }) => sum + miss, 0) / count;
  const square = misses.reduce((sum, { miss }) => sum + miss * miss, 0) / count;
  return {
    count,
    bias,
    biasError: Math.sqrt((square - bias * bias) / count),
    rootMeanSquare: Math.sqrt(square),
    largest: Math.max(...misses.map(({ miss }) => Math.abs(miss))),
    statedSd: misses.reduce((sum, { sd }) => sum + sd, 0) / count,
    coverage: misses.filter(({ miss, sd }) => Math.abs(miss) <= NINETY * sd).length / count,
  };
}
