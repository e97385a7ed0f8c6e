import type { TurningModel } from "../src/flight/options.js";
import type { FlightResult } from "../src/flight/result.js";
import { prepareEnsemble } from "../src/spread/ensemble.js";
import { type Errors, errorsOf, tightFlights } from "./accuracy.js";
import { compile, compilerFlags, compilerName, prepareC } from "./c-side.js";
import { furthestApart } from "./means.js";
import { odexFlight } from "./odex-flight.js";
import { benchSeed, benchSpec } from "./reference-plan.js";

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
  readonly seed: number;
  readonly draws: number;
  readonly compiler: string | null;
  readonly pitching: ModelFigures;
  readonly aligned: ModelFigures;
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

function measureModel(model: TurningModel, program: string | null, folder: string): ModelFigures {
  const { spec } = benchSpec(model);
  const { settings, samples } = spec.opening;
  const run = prepareEnsemble(spec);
  const runC = program === null ? null : prepareC(program, spec, folder);
  const chunk = run(0, draws);
  run(0, draws);
  const other = runC === null ? null : runC(0, draws, 1);
  let typescript = 0;
  let c: number | null = null;
  for (let round = 0; round < rounds; round++) {
    for (let i = 0; i < runsARound; i++)
      typescript = Math.max(
        typescript,
        flightsASecond(timedDraws, () => run(0, timedDraws)),
      );
    if (runC !== null) c = Math.max(c ?? 0, ...runC(0, timedDraws, runsARound).rates);
  }
  return {
    model,
    typescript,
    c,
    apart: other === null ? null : furthestApart(chunk, settings.length, samples, other),
    errors: errorsOf(chunk, spec, tightFlights(spec, drawsCompared)),
  };
}

/** The loosest tolerance at which odex is as exact as asked on the draws compared, and its speed there. */
function measureOdex(tight: readonly FlightResult[], allowed: number): OdexFigures {
  for (const tolerance of [1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 5e-6, 2e-6, 1e-6, 5e-7, 2e-7, 1e-7, 1e-8, 1e-9]) {
    const error = Math.max(...tight.map((flight) => errorOf(flight, odexFlight(flight.model, tolerance).apogeeTime)));
    if (!(error <= allowed)) continue;
    let calls = 0;
    // flight by flight, so that the best of each counts as it does for the short runs of the draws
    const rates = tight.map(({ model }) => {
      let best = 0;
      for (let round = 0; round < rounds; round++)
        best = Math.max(
          best,
          flightsASecond(1, () => odexFlight(model, tolerance)),
        );
      calls += odexFlight(model, tolerance).calls;
      return best;
    });
    const seconds = rates.reduce((sum, rate) => sum + 1 / rate, 0);
    return { tolerance, error, rate: tight.length / seconds, calls: calls / tight.length };
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
 * @param folder where the compiled program and its inputs go
 */
export function measure(source: string, folder: string): Measured {
  const name = compilerName();
  const program = name === null ? null : compile(source, folder);
  const pitching = measureModel("pitching", program, folder);
  const tight = tightFlights(benchSpec("pitching").spec, drawsCompared);
  return {
    seed: benchSeed,
    draws,
    compiler: name === null ? null : `${name}, ${compilerFlags.join(" ")}`,
    pitching,
    aligned: measureModel("aligned", program, folder),
    odex: {
      asTheyMust: measureOdex(tight, odexError),
      asTheyAre: measureOdex(tight, pitching.errors.apogeeTime),
    },
  };
}
