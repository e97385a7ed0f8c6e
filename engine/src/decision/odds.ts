import { fly } from "../flight/fly.js";
import { defaultFlightOptions, type FlightOptions } from "../flight/options.js";
import type { FlightResult } from "../flight/result.js";
import { noSpread, varies } from "../spread/drawn-values.js";
import { type EnsembleSpec, prepareEnsemble } from "../spread/ensemble.js";
import {
  chunkBytes,
  chunkIn,
  type EnsembleChunk,
  FLEW,
  flightSize,
  partOf,
  putChunk,
} from "../spread/ensemble-chunk.js";
import type { WeatherShift } from "../spread/fly-draw.js";
import type { CutPlan } from "./cut-plan.js";
import type { Setting } from "./decision.js";
import type { DelayScatter } from "./delay-scatter.js";
import type { DecisionInputs } from "./inputs.js";
import { fillDistanceOf, type Strength, strengthOf } from "./opening-rules.js";
import { settingScatter } from "./setting-scatter.js";
import { noOpenings, oddsOf, openingsOf } from "./summary.js";

/**
 * Flies draws `from` … `to` − 1 of an ensemble, here or on workers; the figures must not depend on how it splits them.
 *
 * It may be called again before an earlier run has ended. It rejects to call everything off: whoever asked then rejects with the same error.
 *
 * @param onProgress told how many of them are done
 * @param into room for them, which it may fill and return: it then need not be copied
 */
export type EnsembleRunner = (
  spec: EnsembleSpec,
  from: number,
  to: number,
  onProgress?: (done: number) => void,
  into?: EnsembleChunk,
) => Promise<EnsembleChunk>;

/** Flies all draws in one go where it is called. */
export const runHere: EnsembleRunner = async (spec, from, to, _, into) => prepareEnsemble(spec)(from, to, into);

/**
 * Gives memory for draws, with anything in it: the same one again saves a browser from getting and clearing it for each answer.
 *
 * Nobody else may write into it until whoever asked is done, or has rejected.
 *
 * @param bytes how much, at least
 */
export type DrawMemory = (bytes: number) => ArrayBuffer;

/** How an ensemble is flown. */
export interface OddsOptions {
  readonly draws: number;
  readonly seed: number;
  readonly flight: FlightOptions;
  readonly run: EnsembleRunner;
  /** A flight near those of the draws, from `roughFlight`: a search goes on from it, and none is flown to be shown. */
  readonly near?: FlightResult;
  /** Openings are sampled for their quantiles; left out: where no flight is `near`, since a search wants odds alone. */
  readonly openings?: boolean;
  /** Flies in other weather than the plan's. */
  readonly shift?: WeatherShift;
  /** Rising numbers of draws at which `onStage` is told what they say; the draws go on from there. */
  readonly stages?: readonly number[];
  /** Gives memory of so many bytes, or more, for all draws; left out: new. */
  readonly memory?: DrawMemory;
  /** A promise that it returns is waited for before anything more is computed here; the next draws are given out first. */
  readonly onStage?: (judged: JudgedSettings) => unknown;
}

/** Every setting judged on one ensemble. */
export interface JudgedSettings {
  /** The nominal flight; the rough one before the last stage, and where one was near. */
  readonly flight: FlightResult;
  /** The flight by which the tables were laid out: a search over weather goes on from it. */
  readonly rough: FlightResult;
  readonly settings: readonly Setting[];
  readonly scatters: readonly DelayScatter[];
  readonly chunk: EnsembleChunk;
  readonly strength: Strength;
  /** Draws flown so far; 1 in all where nothing varies. */
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

/** The nominal flight, near enough to lay out tables and to judge draws about it. */
export function roughFlight(inputs: DecisionInputs, options: FlightOptions): FlightResult {
  return fly(inputs, { ...options, tolerance: roughTolerance });
}

/** All that judging takes but the draws. */
interface PreparedOdds {
  readonly inputs: DecisionInputs;
  readonly plans: readonly CutPlan[];
  readonly rough: FlightResult;
  readonly strength: Strength;
  readonly scatters: readonly DelayScatter[];
  readonly spec: EnsembleSpec;
  readonly draws: number;
}

function samplesFor(options: OddsOptions, settingCount: number, uncertain: boolean): number {
  if (!(options.openings ?? options.near === undefined)) return 0;
  return uncertain ? Math.max(1, Math.min(8, Math.round(samplesPerDraw / settingCount))) : 1;
}

function prepareOdds(inputs: DecisionInputs, plans: readonly CutPlan[], options: OddsOptions): PreparedOdds {
  const { limits, recovery, spread } = inputs;
  const rough = options.near ?? roughFlight(inputs, options.flight);
  const top = rough.events.apogee?.position[2] ?? 0;
  const strength = strengthOf(rough.model, limits, top, inputs.packing?.fittingsStrength);
  const scatters = plans.map((plan) => settingScatter(inputs, rough, plan));
  const uncertain = varies(spread) || scatters.some((s) => s.total > 0);
  const degrees = scatters[0]?.degrees;
  const spec: EnsembleSpec = {
    inputs: flightInputsOf(inputs),
    options: rough.options,
    ...(uncertain ? {} : { tolerance: defaultFlightOptions.tolerance }),
    ...(options.shift === undefined ? {} : { shift: options.shift }),
    spread: uncertain ? spread : noSpread,
    opening: {
      settings: plans.map((plan, i) => ({ delay: scatters[i]!.mean ?? plan.delay, sd: scatters[i]!.total })),
      ...(degrees === undefined ? {} : { degrees }),
      clock: clockOf(inputs),
      lineStretch: recovery.lineStretch,
      speedLimit: limits.openingSpeed,
      strengthSpeed: strength.speed,
      floor: limits.openingHeight,
      fillDistance: fillDistanceOf(rough.model),
      electronicsDelay: recovery.electronics?.delay ?? null,
      samples: samplesFor(options, plans.length, uncertain),
    },
    seed: options.seed,
    top: topFactor * top + topSpare,
    topMach: topMachFactor * highestMach(rough) + topMachSpare,
  };
  return { inputs, plans, rough, strength, scatters, spec, draws: uncertain ? options.draws : 1 };
}

/** What the draws flown so far say of every setting. */
function judgedBy(prepared: PreparedOdds, chunk: EnsembleChunk, flight: FlightResult): JudgedSettings {
  const { inputs, plans, rough, strength, scatters, spec } = prepared;
  const { recovery } = inputs;
  const { samples } = spec.opening;
  const settings = plans.map((plan, i): Setting => {
    const { odds, firesFirst } = oddsOf(chunk, plans.length, i);
    return {
      ...plan,
      odds,
      delaySd: scatters[i]!.total,
      ...(scatters[i]!.mean === undefined ? {} : { delayMean: scatters[i]!.mean }),
      ...(samples > 0 ? openingsOf(chunk, plans.length, i, samples) : noOpenings),
      firesFirst: recovery.motorCharge === "backup" && recovery.electronics !== undefined ? firesFirst : null,
    };
  });
  const draws = chunk.to - chunk.from;
  let notFlown = 0;
  for (let i = 0; i < draws; i++) if (chunk.flights[i * flightSize + FLEW] !== 1) notFlown += 1;
  return { flight, rough, settings, scatters, chunk, strength, draws, notFlown };
}

/**
 * Judges settings on one ensemble: the nominal flight, then every draw once, every setting on each.
 *
 * With stages it is told in between what the draws flown so far say; no draw is flown twice, and the last answer is the same.
 *
 * @param plans settings to judge, at least one
 */
export async function judgeSettings(
  inputs: DecisionInputs,
  plans: readonly CutPlan[],
  options: OddsOptions,
): Promise<JudgedSettings> {
  const prepared = prepareOdds(inputs, plans, options);
  const { spec, draws, rough } = prepared;
  const { opening } = spec;
  const flown = chunkIn(opening, 0, draws, options.memory?.(chunkBytes(opening, draws)));
  let from = 0;
  let told: Promise<unknown> = Promise.resolve();
  const giveOut = (first: number, end: number): Promise<void> => {
    const room = partOf(flown, first, end);
    const flying = options.run(spec, first, end, undefined, room).then((chunk) => {
      if (chunk !== room) putChunk(room, chunk);
    });
    // whoever calls it off while something else is waited for is heard once it is this run's turn
    flying.catch(() => undefined);
    return flying;
  };
  for (const to of options.stages ?? []) {
    if (to <= from || to >= draws) continue;
    const flying = giveOut(from, to);
    await told;
    await flying;
    told = Promise.resolve(options.onStage?.(judgedBy(prepared, partOf(flown, 0, to), rough)));
    told.catch(() => undefined);
    from = to;
  }
  const flying = giveOut(from, draws);
  await told;
  // while the last draws are under way, on workers or between their runs, the flight that is shown is flown
  const flight = options.near ?? fly(inputs, options.flight);
  await flying;
  return judgedBy(prepared, flown, flight);
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
