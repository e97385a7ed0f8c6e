import { fly } from "../flight/fly.js";
import { defaultFlightOptions, type TurningModel } from "../flight/options.js";
import type { FlightResult } from "../flight/result.js";
import { learnedDelayAt } from "../learning/learned-delay.js";
import { noSpread, varies } from "../spread/drawn-values.js";
import type { FlightSampleSpec } from "./flight-sample.js";
import type { DecisionInputs } from "./inputs.js";
import { fillDistanceOf, strengthOf } from "./opening-rules.js";

/** How a sample is drawn; left out: the defaults of `decide`. */
export interface FlightSampleOptions {
  readonly seed?: number;
  readonly model?: TurningModel;
  /** The nominal flight where it is known already, flown with `model`. */
  readonly flight?: FlightResult;
}

/** Tolerance of the flight that only tells how far tables and times must reach. */
const roughTolerance = 1e-5;

/** The common times reach this much beyond the nominal landing: draws fly longer. */
const untilFactor = 1.25;

/**
 * What a sample of flights at one setting depends on: plain data.
 *
 * Openings are judged by the plan's limits and the recovery's strength, as `decide` judges them. Where nothing varies, every
 * draw is the nominal flight: one is enough.
 *
 * @param inputs without issues
 * @param setting delay as cut and one sigma of its scatter [s]: a `Setting` of the decision; what was learned moves its mean
 * @example
 * flightSampleSpec(inputs, { delay: 10, delaySd: 1 }, { seed: 1 });
 */
export function flightSampleSpec(
  inputs: DecisionInputs,
  setting: { readonly delay: number; readonly delaySd: number },
  options: FlightSampleOptions = {},
): FlightSampleSpec {
  const { air, wind, rocket, motor, ballast, guide, recovery, limits, spread } = inputs;
  const flight =
    options.flight ?? fly(inputs, { tolerance: roughTolerance, ...(options.model ? { model: options.model } : {}) });
  const top = flight.events.apogee?.position[2] ?? 0;
  const outlook = inputs.learned?.delay && learnedDelayAt(inputs.learned.delay, setting.delay);
  const uncertain = varies(spread) || setting.delaySd > 0;
  return {
    ensemble: {
      inputs: { air, wind, rocket, motor, ballast, guide, recovery },
      options: flight.options,
      ...(uncertain ? {} : { tolerance: defaultFlightOptions.tolerance }),
      spread: uncertain ? spread : noSpread,
      opening: {
        settings: [{ delay: outlook?.mean ?? setting.delay, sd: setting.delaySd }],
        ...(outlook === undefined || setting.delaySd === 0 ? {} : { degrees: outlook.degrees }),
        clock: motor.delay.kind === "none" ? "burnout" : motor.delay.clock,
        lineStretch: recovery.lineStretch,
        speedLimit: limits.openingSpeed,
        strengthSpeed: strengthOf(flight.model, limits, top, inputs.packing?.fittingsStrength).speed,
        floor: limits.openingHeight,
        fillDistance: fillDistanceOf(flight.model),
        electronicsDelay: recovery.electronics?.delay ?? null,
        samples: 1,
      },
      seed: options.seed ?? 1,
      // far enough for draws that go higher and faster
      top: 1.6 * top + 300,
      topMach: 1.3 * flight.peaks().highestMach + 0.1,
    },
    until: untilFactor * (flight.events.landing?.time ?? flight.model.burn.end),
  };
}
