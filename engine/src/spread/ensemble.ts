import { recordSize } from "../flight/fast/sizes.js";
import { fastTables } from "../flight/fast/tables.js";
import { FastWork } from "../flight/fast/work.js";
import { prepareFlight } from "../flight/model.js";
import { keepingLast } from "../math/keeping-last.js";
import { compiledJudgement } from "./compiled.js";
import { DrawnFlights } from "./drawn-flights.js";
import type { DrawSpec } from "./fly-draw.js";
import { apogeeAirspeed } from "./judge.js";
import { JudgeWork } from "./judge-work.js";
import type { OpeningSpec } from "./opening-spec.js";
import { judgedSize, sampleSize } from "./outcomes.js";

/** Everything an ensemble depends on: plain data, so that it can be sent to a worker. */
export interface EnsembleSpec extends DrawSpec {
  readonly opening: OpeningSpec;
  /** Height and Mach number to which the tables reach [m]. */
  readonly top: number;
  readonly topMach: number;
}

/** Numbers a flight in `EnsembleChunk.flights`. */
export const flightSize = 8;
export const COAST = 0;
export const APOGEE_TIME = 1;
export const APOGEE_HEIGHT = 2;
export const APOGEE_AIRSPEED = 3;
export const LANDING_EAST = 4;
export const LANDING_NORTH = 5;
export const GUIDE_EXIT_SPEED = 6;
/** 1 where the flight left the guide and came down, else 0: its other numbers then mean nothing. */
export const FLEW = 7;

/** A run of draws: columns that can be handed over from a worker without copying. */
export interface EnsembleChunk {
  readonly from: number;
  readonly to: number;
  readonly flights: Float64Array;
  /** `judgedSize` numbers a setting, settings within draws. */
  readonly judged: Float64Array;
  /** `sampleSize` numbers a sample, samples within settings within draws. */
  readonly samples: Float64Array;
}

/** A search over settings or weather asks for the same tables again; a worker is sent copies of what they are made of. */
const tablesOf = keepingLast(
  ({ inputs, options, top, topMach }: Pick<EnsembleSpec, "inputs" | "options" | "top" | "topMach">) =>
    fastTables(prepareFlight(inputs, options), top, topMach),
);

/**
 * Prepares the flying of draws: tables and memory are made once, each draw depends on seed and number alone.
 *
 * @returns a function that flies draws `from` … `to` − 1; the figures do not depend on how draws are split into runs
 * @example
 * const chunk = prepareEnsemble(spec)(0, 2000);
 */
export function prepareEnsemble(spec: EnsembleSpec): (from: number, to: number) => EnsembleChunk {
  const ensemble = new Ensemble(spec);
  return (from, to) => ensemble.fly(from, to);
}

/** Tables and memory of one ensemble. A class, so that its code outlives it. */
class Ensemble {
  private readonly spec: EnsembleSpec;
  private readonly burnEnd: number;
  private readonly work: FastWork;
  private readonly judge: JudgeWork;
  private readonly draws: DrawnFlights;

  constructor(spec: EnsembleSpec) {
    const { inputs, options, top, topMach } = spec;
    const tables = tablesOf({ inputs, options, top, topMach });
    this.spec = spec;
    this.burnEnd = tables.model.burn.end;
    this.work = new FastWork(tables);
    this.judge = new JudgeWork(spec.opening, this.work.records.length / recordSize);
    this.draws = new DrawnFlights(spec, this.work);
  }

  fly(from: number, to: number): EnsembleChunk {
    const { spec, work, draws } = this;
    const { flight } = draws;
    const settingCount = spec.opening.settings.length;
    const samplesPerDraw = settingCount * spec.opening.samples * sampleSize;
    const count = to - from;
    const flights = new Float64Array(count * flightSize);
    const judged = new Float64Array(count * settingCount * judgedSize);
    const samples = new Float64Array(count * samplesPerDraw);
    for (let i = 0; i < count; i++) {
      draws.fly(from + i);
      compiledJudgement(
        this.judge,
        work,
        flight,
        this.burnEnd,
        draws.strata,
        judged,
        i * settingCount * judgedSize,
        samples,
        i * samplesPerDraw,
      );
      const o = i * flightSize;
      flights[o + FLEW] = flight.flew ? 1 : 0;
      if (!flight.flew) continue;
      flights[o + COAST] = flight.apogeeTime - flight.burnout;
      flights[o + APOGEE_TIME] = flight.apogeeTime;
      flights[o + APOGEE_HEIGHT] = flight.apogeeHeight;
      flights[o + APOGEE_AIRSPEED] = apogeeAirspeed(work, flight);
      flights[o + LANDING_EAST] = flight.landingEast;
      flights[o + LANDING_NORTH] = flight.landingNorth;
      flights[o + GUIDE_EXIT_SPEED] = flight.guideExitSpeed;
    }
    return { from, to, flights, judged, samples };
  }
}

/** Joins runs of draws that together cover 0 … n − 1, in whatever order they came. */
export function joinChunks(chunks: readonly EnsembleChunk[]): EnsembleChunk {
  const sorted = [...chunks].sort((a, b) => a.from - b.from);
  if (sorted.length === 1) return sorted[0]!;
  const concat = (pick: (chunk: EnsembleChunk) => Float64Array): Float64Array => {
    const out = new Float64Array(sorted.reduce((sum, chunk) => sum + pick(chunk).length, 0));
    let at = 0;
    for (const chunk of sorted) {
      out.set(pick(chunk), at);
      at += pick(chunk).length;
    }
    return out;
  };
  return {
    from: sorted[0]?.from ?? 0,
    to: sorted[sorted.length - 1]?.to ?? 0,
    flights: concat((chunk) => chunk.flights),
    judged: concat((chunk) => chunk.judged),
    samples: concat((chunk) => chunk.samples),
  };
}
