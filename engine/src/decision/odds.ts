import { padTemperature } from "../air/at-field.js";
import { fly } from "../flight/fly.js";
import { defaultFlightOptions, type FlightOptions } from "../flight/options.js";
import type { FlightResult } from "../flight/result.js";
import { noSpread, varies } from "../spread/drawn-values.js";
import {
  type EnsembleChunk,
  type EnsembleSpec,
  FLEW,
  flightSize,
  prepareEnsemble,
  type WeatherShift,
} from "../spread/ensemble.js";
import type { CutPlan } from "./cut-plan.js";
import type { Setting } from "./decision.js";
import { type DelayScatter, delayScatter } from "./delay-scatter.js";
import type { DecisionInputs } from "./inputs.js";
import { fillDistanceOf, type Strength, strengthOf } from "./opening-rules.js";
import { depthPerSecondOf } from "./removals.js";
import { oddsOf, openingsOf } from "./summary.js";

/** Flies an ensemble's draws, here or on workers; the figures must not depend on how it splits them. */
export type EnsembleRunner = (
  spec: EnsembleSpec,
  draws: number,
  onProgress?: (done: number) => void,
) => Promise<EnsembleChunk>;

/** Flies all draws in one go where it is called. */
export const runHere: EnsembleRunner = async (spec, draws) => prepareEnsemble(spec)(0, draws);

/** How an ensemble is flown. */
export interface OddsOptions {
  readonly draws: number;
  readonly seed: number;
  readonly flight: FlightOptions;
  readonly run: EnsembleRunner;
  /** A search over weather or ballast wants odds alone: its flights are near one that is known, and no quantiles are needed. */
  readonly near?: FlightResult;
  /** Flies in other weather than the plan's. */
  readonly shift?: WeatherShift;
}

/** Every setting judged on one ensemble. */
export interface JudgedSettings {
  /** The nominal flight. */
  readonly flight: FlightResult;
  /** The flight by which the tables were laid out: a search over weather goes on from it. */
  readonly rough: FlightResult;
  readonly settings: readonly Setting[];
  readonly scatters: readonly DelayScatter[];
  readonly chunk: EnsembleChunk;
  readonly strength: Strength;
  /** Draws that were flown: 1 where nothing varies. */
  readonly draws: number;
  /** Draws that never left the guide or never came down. */
  readonly notFlown: number;
}

/** Openings sampled for the quantiles over all settings of one draw, shared out among them. */
const samplesPerDraw = 16;

/** Tolerance of the flight that only tells how far the tables must reach, and of which a percent matters. */
const roughTolerance = 1e-5;

/** Tables reach this much higher than the nominal top. */
const topFactor = 1.6;
const topSpare = 300;
const topMachFactor = 1.3;
const topMachSpare = 0.1;

/** Highest Mach number of the powered flight, near enough for the reach of a table. */
function highestMach(flight: FlightResult): number {
  const { guideExit } = flight.events;
  if (guideExit === null) return 0.3;
  const { end } = flight.model.burn;
  return Math.max(
    ...Array.from({ length: 21 }, (_, i) => flight.at(guideExit.time + (i / 20) * (end - guideExit.time)).mach),
  );
}

function clockOf(inputs: DecisionInputs): "burnout" | "ignition" {
  const { delay } = inputs.motor;
  return delay.kind === "none" ? "burnout" : delay.clock;
}

function scatterOf(inputs: DecisionInputs, flight: FlightResult, plan: CutPlan): DelayScatter {
  const { motor, tool, cutSoFar, spread } = inputs;
  const { model, events } = flight;
  const asItIs = cutSoFar !== undefined && plan.depth !== null && Math.abs(plan.depth - cutSoFar.removedDepth) < 1e-9;
  const cutError = plan.removed > 0 ? (spread.cutDepth ?? tool?.depthError ?? 0) : 0;
  const depthPerSecond = motor.delay.kind === "adjustable" ? depthPerSecondOf(motor.delay, tool) : undefined;
  return delayScatter(plan.delay, spread.delay, {
    depthError: asItIs && varies(spread) ? cutSoFar.depthError : cutError,
    ...(depthPerSecond === undefined ? {} : { depthPerSecond }),
    motorTemperature: inputs.motorTemperature ?? padTemperature(inputs.air),
    pressure: model.airAt(0.5 * (events.apogee?.position[2] ?? 0)).pressure,
  });
}

const noOpenings = { openingSpeed: null, openingHeight: null, secondsFromApogee: null };

/**
 * Judges settings on one ensemble: the nominal flight, then every draw once, every setting on each.
 *
 * @param plans settings to judge, at least one
 */
export async function judgeSettings(
  inputs: DecisionInputs,
  plans: readonly CutPlan[],
  options: OddsOptions,
): Promise<JudgedSettings> {
  const { limits, recovery, spread } = inputs;
  const rough = options.near ?? fly(inputs, { ...options.flight, tolerance: roughTolerance });
  const top = rough.events.apogee?.position[2] ?? 0;
  const strength = strengthOf(rough.model, limits, top);
  const scatters = plans.map((plan) => scatterOf(inputs, rough, plan));
  const uncertain = varies(spread) || scatters.some((s) => s.total > 0);
  const draws = uncertain ? options.draws : 1;
  const samples =
    options.near !== undefined
      ? 0
      : uncertain
        ? Math.max(1, Math.min(8, Math.round(samplesPerDraw / plans.length)))
        : 1;
  const flying = options.run(
    {
      inputs: flightInputsOf(inputs),
      options: rough.options,
      ...(uncertain ? {} : { tolerance: defaultFlightOptions.tolerance }),
      ...(options.shift === undefined ? {} : { shift: options.shift }),
      spread: uncertain ? spread : noSpread,
      opening: {
        settings: plans.map((plan, i) => ({ delay: plan.delay, sd: scatters[i]!.total })),
        clock: clockOf(inputs),
        lineStretch: recovery.lineStretch,
        speedLimit: limits.openingSpeed,
        strengthSpeed: strength.speed,
        floor: limits.openingHeight,
        fillDistance: fillDistanceOf(rough.model),
        electronicsDelay: recovery.electronics?.delay ?? null,
        samples,
      },
      seed: options.seed,
      top: topFactor * top + topSpare,
      topMach: topMachFactor * highestMach(rough) + topMachSpare,
    },
    draws,
  );
  // while the draws are under way, on workers or between their runs, the flight that is shown is flown
  const flight = options.near ?? fly(inputs, options.flight);
  const chunk = await flying;
  const settings = plans.map((plan, i): Setting => {
    const { odds, firesFirst } = oddsOf(chunk, plans.length, i);
    return {
      ...plan,
      odds,
      delaySd: scatters[i]!.total,
      ...(samples > 0 ? openingsOf(chunk, plans.length, i, samples) : noOpenings),
      firesFirst: recovery.motorCharge === "backup" && recovery.electronics !== undefined ? firesFirst : null,
    };
  });
  let notFlown = 0;
  for (let i = 0; i < draws; i++) if (chunk.flights[i * flightSize + FLEW] !== 1) notFlown += 1;
  return { flight, rough, settings, scatters, chunk, strength, draws, notFlown };
}

function flightInputsOf({
  air,
  wind,
  rocket,
  motor,
  ballast,
  guide,
  recovery,
}: DecisionInputs): EnsembleSpec["inputs"] {
  return { air, wind, rocket, motor, ballast, guide, recovery };
}
