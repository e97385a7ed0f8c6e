import { prepareFlight } from "../src/flight/model.js";
import type { TurningModel } from "../src/flight/options.js";
import type { FlightResult } from "../src/flight/result.js";
import { drawnInputs } from "../src/spread/drawn-inputs.js";
import { prepareEnsemble } from "../src/spread/ensemble.js";
import { type Errors, errorsOf, tightFlights } from "./accuracy.js";
import { compile, compilerFlags, compilerName, prepareC } from "./c-side.js";
import { furthestApart } from "./means.js";
import { odexFlight } from "./odex-flight.js";
import { benchSeed, benchSpec } from "./reference-plan.js";
import { type RigidFigures, rigidContender } from "./rigid.js";

/** Draws on which both sides must agree. */
const draws = 2000;

/**
 * Draws in one timed run. Time is the processor's, so that waiting for other work does not count; runs of both sides take turns
 * and the best of each counts.
 */
const timedDraws = 200;
const rounds = 8;
const runsARound = 25;

const drawsCompared = 40;

/** Largest error of the apogee's time that odex may have, relative: what the draws are held to. */
const odexError = 1e-4;

export interface ModelFigures {
  readonly model: TurningModel;
  /** Flights a second; null where there is no C compiler. */
  readonly typescript: number;
  readonly c: number | null;
  /** Largest difference between the means of both sides, relative. */
  readonly apart: number | null;
  readonly errors: Errors;
}

export interface OdexFigures {
  readonly tolerance: number;
  /** Largest error of the apogee's time, relative. */
  readonly error: number;
  /** Flights a second. */
  readonly rate: number;
  /** Right-hand sides a flight. */
  readonly calls: number;
}

export interface Measured {
  readonly rigid: RigidFigures;
  readonly seed: number;
  readonly draws: number;
  readonly compiler: string | null;
  readonly pitching: ModelFigures;
  readonly aligned: ModelFigures;
  /** Pitching flights a second with nothing judged: what odex does, too. */
  readonly flightsAlone: number;
  /** Odex as exact as the draws must be, and as exact as they are. */
  readonly odex: { readonly asTheyMust: OdexFigures; readonly asTheyAre: OdexFigures };
}

/** Processor time of this process, helper threads of the engine's collector included [s]. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

function flightsASecond(count: number, fly: () => unknown): number {
  const start = processorTime();
  fly();
  return count / (processorTime() - start);
}

/** One of those who take turns: runs a round at a time, then says what it came to. */
interface Contender<T> {
  readonly round: () => void;
  readonly figures: () => T;
}

function ensembleContender(model: TurningModel, program: string | null, folder: string): Contender<ModelFigures> {
  const { spec } = benchSpec(model);
  const { settings, samples } = spec.opening;
  const run = prepareEnsemble(spec);
  const runC = program === null ? null : prepareC(program, spec, folder);
  const chunk = run(0, draws);
  run(0, draws);
  const other = runC === null ? null : runC(0, draws, 1);
  const errors = errorsOf(chunk, spec, tightFlights(spec, drawsCompared));
  let typescript = 0;
  let c: number | null = null;
  return {
    round: () => {
      for (let i = 0; i < runsARound; i++)
        typescript = Math.max(
          typescript,
          flightsASecond(timedDraws, () => run(0, timedDraws)),
        );
      if (runC !== null) c = Math.max(c ?? 0, ...runC(0, timedDraws, runsARound).rates);
    },
    figures: () => ({
      model,
      typescript,
      c,
      apart: other === null ? null : furthestApart(chunk, settings.length, samples, other),
      errors,
    }),
  };
}

/** Draws flown to the ground, no opening judged. */
function flightsAloneContender(): Contender<number> {
  const { spec } = benchSpec("pitching");
  const run = prepareEnsemble({ ...spec, opening: { ...spec.opening, settings: [] } });
  run(0, draws);
  let rate = 0;
  return {
    round: () => {
      for (let i = 0; i < runsARound; i++)
        rate = Math.max(
          rate,
          flightsASecond(timedDraws, () => run(0, timedDraws)),
        );
    },
    figures: () => rate,
  };
}

/** Odex at the loosest tolerance at which it is as exact as asked on the draws compared. */
function odexContender(tight: readonly FlightResult[], allowed: number): Contender<OdexFigures> {
  const { spec } = benchSpec("pitching");
  for (const tolerance of [1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 5e-6, 2e-6, 1e-6, 5e-7, 2e-7, 1e-7, 1e-8, 1e-9]) {
    const error = Math.max(...tight.map((flight) => errorOf(flight, odexFlight(flight.model, tolerance).apogeeTime)));
    if (!(error <= allowed)) continue;
    let calls = 0;
    // flight by flight, so that the best of each counts as it does for the short runs of the draws
    const best = new Float64Array(tight.length);
    return {
      round: () => {
        calls = 0;
        for (const i of tight.keys())
          best[i] = Math.max(
            best[i]!,
            flightsASecond(1, () => {
              // as for the draws, a flight begins with drawing its inputs and preparing what they need
              const inputs = drawnInputs(spec.inputs, spec.spread, spec.seed, i);
              calls += odexFlight(prepareFlight(inputs, spec.options), tolerance).calls;
            }),
          );
      },
      figures: () => ({
        tolerance,
        error,
        rate: tight.length / best.reduce((sum, rate) => sum + 1 / rate, 0),
        calls: calls / tight.length,
      }),
    };
  }
  throw new Error("odex reaches the draws' accuracy at no tolerance tried");
}

function errorOf(flight: FlightResult, apogeeTime: number): number {
  return Math.abs(apogeeTime / (flight.events.apogee?.time ?? 0) - 1);
}

/**
 * Measures both models on both sides, and odex.
 *
 * @param source path of `ensemble.c`
 * @param rigidSource path of `rigid.c`
 * @param folder where the compiled program and its inputs go
 */
export function measure(source: string, rigidSource: string, folder: string): Measured {
  const name = compilerName();
  const program = name === null ? null : compile(source, folder);
  const pitching = ensembleContender("pitching", program, folder);
  const aligned = ensembleContender("aligned", program, folder);
  const alone = flightsAloneContender();
  const rigid = rigidContender(name === null ? null : compile(rigidSource, folder), folder, flightsASecond);
  const tight = tightFlights(benchSpec("pitching").spec, drawsCompared);
  const asTheyMust = odexContender(tight, odexError);
  const asTheyAre = odexContender(tight, pitching.figures().errors.apogeeTime);
  for (let round = 0; round < rounds; round++)
    for (const contender of [pitching, alone, asTheyMust, aligned, asTheyAre, rigid]) contender.round();
  return {
    seed: benchSeed,
    draws,
    compiler: name === null ? null : `${name}, ${compilerFlags.join(" ")}`,
    pitching: pitching.figures(),
    aligned: aligned.figures(),
    flightsAlone: alone.figures(),
    rigid: rigid.figures(),
    odex: { asTheyMust: asTheyMust.figures(), asTheyAre: asTheyAre.figures() },
  };
}

export { measureShortlist } from "./shortlist.js";
