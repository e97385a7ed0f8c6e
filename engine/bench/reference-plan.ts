import { flightD } from "../reference/trajectories/inputs.js";
import { fillDistanceOf } from "../src/decision/opening-rules.js";
import { fly } from "../src/flight/fly.js";
import type { FlightInputs } from "../src/flight/inputs.js";
import type { TurningModel } from "../src/flight/options.js";
import type { FlightResult } from "../src/flight/result.js";
import type { EnsembleSpec } from "../src/spread/ensemble.js";
import { usualSpread } from "../test/plan.js";

/** Seed of every figure of the bench. */
export const benchSeed = 1;

/** What the two-end tool makes of an element of 14 s. */
const delays = [14, 12, 10, 8, 6];

/** Reference flight (d), its drag from the build-up. */
export const benchInputs: FlightInputs = {
  ...flightD,
  rocket: { ...flightD.rocket, drag: { from: "build-up", scale: 1 } },
};

/** The reference plan as the draws get it: five settings judged, eight openings sampled a setting. */
export function benchSpec(model: TurningModel): { readonly spec: EnsembleSpec; readonly flight: FlightResult } {
  const flight = fly(benchInputs, { model });
  const top = flight.events.apogee?.position[2] ?? 0;
  const spec: EnsembleSpec = {
    inputs: benchInputs,
    options: flight.options,
    spread: usualSpread,
    opening: {
      settings: delays.map((delay) => ({
        delay,
        sd: Math.max(usualSpread.delay.seconds, usualSpread.delay.fraction * delay),
      })),
      clock: "burnout",
      lineStretch: benchInputs.recovery.lineStretch,
      speedLimit: 20,
      strengthSpeed: 40,
      floor: 100,
      fillDistance: fillDistanceOf(flight.model),
      electronicsDelay: null,
      samples: 8,
    },
    seed: benchSeed,
    top: 1.6 * top + 300,
    topMach: 1.3 * flight.peaks().highestMach + 0.1,
  };
  return { spec, flight };
}
