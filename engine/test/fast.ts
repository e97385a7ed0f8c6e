import { DrawnValues, setDraw } from "../src/flight/fast/draw.js";
import { fastFlight } from "../src/flight/fast/fast-flight.js";
import { FastOutcome } from "../src/flight/fast/outcome.js";
import { fastTables } from "../src/flight/fast/tables.js";
import { FastWork } from "../src/flight/fast/work.js";
import type { FlightInputs } from "../src/flight/inputs.js";
import { prepareFlight } from "../src/flight/model.js";
import { type FlightOptions, resolveFlightOptions } from "../src/flight/options.js";
import { drawTolerance } from "../src/spread/fly-draw.js";

/** Memory for fast flights of one plan, set up for the nominal draw. Tables to 3000 m and Mach 1.6. */
export function fastWork(inputs: FlightInputs, options: FlightOptions = {}): FastWork {
  const work = new FastWork(fastTables(prepareFlight(inputs, resolveFlightOptions(options)), 3000, 1.6));
  setDraw(work, new DrawnValues());
  return work;
}

/** Flies one draw into the work's records. */
export function flyDraw(work: FastWork, drawn: DrawnValues = new DrawnValues()): FastOutcome {
  setDraw(work, drawn);
  return fastFlight(work, drawn.totalImpulse, drawn.burnTime, drawTolerance, new FastOutcome());
}

/** Numbers of a table of winds aloft: a veering wind with a jet. */
export const veeringWind = {
  kind: "aloft",
  heights: [2, 100, 300, 700, 1500],
  east: [3, 5, 6, 4, -3],
  north: [1, 2, 5, 9, 6],
} as const;
