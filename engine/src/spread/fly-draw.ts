import type { DrawnValues } from "../flight/fast/draw.js";
import type { FastOutcome } from "../flight/fast/outcome.js";
import { recordSize } from "../flight/fast/sizes.js";
import type { FastWork } from "../flight/fast/work.js";
import { fly } from "../flight/fly.js";
import type { FlightInputs } from "../flight/inputs.js";
import type { ResolvedFlightOptions } from "../flight/options.js";
import type { FlightResult } from "../flight/result.js";
import { mixSeed } from "../math/mix-seed.js";
import { compiledFlight } from "./compiled.js";
import { inputsOfDraw } from "./drawn-inputs.js";
import { varies } from "./drawn-values.js";
import type { Spread } from "./spread.js";

/** Relative tolerance of a quick draw's steps: apogee then lies within 1e-4 of the tight flight, tested on every example. */
export const drawTolerance = 7e-6;

/** The same of a rigid draw: in turbulence, whose gusts it must follow. */
export const rigidDrawTolerance = 1e-6;

/** What the flying of a draw depends on beside its own values. */
export interface DrawSpec {
  readonly inputs: FlightInputs;
  readonly options: ResolvedFlightOptions;
  readonly spread: Spread;
  readonly seed: number;
  /** Relative tolerance of each step; left out: the draws' own. */
  readonly tolerance?: number;
  /** Rigid draws meet the mean wind alone; left out: each its own turbulence. */
  readonly calm?: boolean;
  /** Left out: the plan's own weather. */
  readonly shift?: WeatherShift;
}

/** Weather moved away from the plan's, for all draws alike. */
export interface WeatherShift {
  /** Added to the air temperature [K]; up to some 15 K. */
  readonly temperature: number;
  /** Factor on the wind. */
  readonly windSpeed: number;
  /** Added to the wind at its reference height [m/s]. */
  readonly windEast: number;
}

/**
 * Flies one draw to the ground and records its steps after burnout: from the tables, or in the rigid model by the plain `fly`, each
 * draw in turbulence of its own where anything varies.
 *
 * @param work set up for the draw by `setDraw`
 * @param out filled
 */
export function flyDraw(spec: DrawSpec, work: FastWork, values: DrawnValues, draw: number, out: FastOutcome): void {
  if (spec.options.model !== "rigid") {
    compiledFlight(work, values.totalImpulse, values.burnTime, spec.tolerance ?? drawTolerance, out);
    return;
  }
  const flight = fly(inputsOfDraw(spec.inputs, values), {
    ...spec.options,
    tolerance: spec.tolerance ?? rigidDrawTolerance,
    turbulence: varies(spec.spread) && spec.calm !== true ? turbulenceSeed(spec.seed, draw) : spec.options.turbulence,
  });
  noteFlight(flight, work, work.tables.model.burn.end * values.burnTime, out);
}

/** Seed of the turbulence of one draw: `fly` with it flies what the ensemble flew. */
export function turbulenceSeed(seed: number, draw: number): number {
  return mixSeed(seed, draw, 0x6775_7374);
}

function noteFlight({ ended, events, legs, calls }: FlightResult, work: FastWork, burnout: number, out: FastOutcome) {
  const { liftOff, guideExit, apogee, landing } = events;
  out.clear();
  out.burnout = burnout;
  out.calls = calls;
  out.liftOff = liftOff?.time ?? 0;
  if (ended !== "landed" || guideExit === null || apogee === null || landing === null) return;
  out.guideExitSpeed = Math.hypot(...guideExit.velocity);
  out.apogeeTime = apogee.time;
  out.apogeeHeight = apogee.position[2];
  out.landingTime = landing.time;
  [out.landingEast, out.landingNorth] = landing.position;
  const { records } = work;
  for (const { phase, steps } of legs) {
    if (phase === "guide") continue;
    for (const { from, to, coefficients } of steps) {
      if (from < burnout - 1e-12) continue;
      if ((out.recordCount + 1) * recordSize > records.length) return;
      const o = out.recordCount * recordSize;
      records[o] = from;
      records[o + 1] = to - from;
      records[o + 2] = coefficients[0]!;
      records[o + 3] = coefficients[5]!;
      // height and velocity: components 2 to 5, of the same form
      for (let i = 0; i < 20; i++) records[o + 4 + i] = coefficients[10 + i]!;
      out.recordCount += 1;
    }
  }
  out.flew = out.recordCount > 0;
}
