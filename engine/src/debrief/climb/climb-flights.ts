import { DrawnValues, setDraw } from "../../flight/fast/draw.js";
import { FastOutcome } from "../../flight/fast/outcome.js";
import { fastTables } from "../../flight/fast/tables.js";
import { FastWork } from "../../flight/fast/work.js";
import { fly as flyOnce } from "../../flight/fly.js";
import type { FlightInputs } from "../../flight/inputs.js";
import { prepareFlight } from "../../flight/model.js";
import type { TurningModel } from "../../flight/options.js";
import { compiledFlight } from "../../spread/compiled.js";
import { heightsAt } from "../../spread/flight-records.js";

/** Steps much tighter than a draw's: differences between flights are what counts. */
const tolerance = 1e-7;

/** Tolerance of the flight that only tells how far tables must reach. */
const roughTolerance = 1e-5;

/** Times at which a flight's heights are told [s]. */
export const gridStep = 0.02;

/** Heights over time of one flight: `heights[i]` at `i · gridStep` after lift-off. */
export type Climb = Float64Array;

export interface ClimbFlights {
  /** Null where it never leaves the guide. */
  readonly fly: (change: (drawn: DrawnValues) => void) => Climb | null;
}

/**
 * Flies the same rocket over and over with changed drag, impulse, burn, mass, air and wind, from tables: the ensemble's own flight.
 *
 * @param most seconds after lift-off that are told
 * @param top height that the record reaches [m]
 */
export function climbFlights(inputs: FlightInputs, model: TurningModel, most: number, top: number): ClimbFlights {
  const rough = flyOnce(inputs, { model, tolerance: roughTolerance });
  const highest = Math.max(top, rough.events.apogee?.position[2] ?? 0);
  const prepared = prepareFlight(inputs, rough.options);
  const topMach = 1.5 * (rough.legs.length === 0 ? 0.3 : rough.peaks().highestMach) + 0.1;
  const tables = fastTables(prepared, 1.6 * highest + 300, topMach);
  // steps are recorded from burnout on: with none in sight they are from the guide on
  const work = new FastWork({ ...tables, model: { ...prepared, burn: { ...prepared.burn, end: 0 } } });
  const flight = new FastOutcome();
  const count = Math.ceil(most / gridStep) + 1;
  const times = new Float64Array(count);
  const fly = (change: (drawn: DrawnValues) => void): Climb | null => {
    const drawn = new DrawnValues();
    change(drawn);
    setDraw(work, drawn);
    compiledFlight(work, drawn.totalImpulse, drawn.burnTime, tolerance, flight);
    if (!flight.flew || flight.recordCount === 0) return null;
    for (let i = 0; i < count; i++) times[i] = flight.liftOff + i * gridStep;
    const heights = new Float64Array(count);
    heightsAt(work, flight, times, heights);
    return heights;
  };
  return { fly };
}
