import { recordSize } from "../flight/fast/sizes.js";
import { fastTables } from "../flight/fast/tables.js";
import { FastWork } from "../flight/fast/work.js";
import { prepareFlight } from "../flight/model.js";
import { keepingLast } from "../math/keeping-last.js";
import { compiledJudgement } from "./compiled.js";
import { DrawnFlights } from "./drawn-flights.js";
import {
  APOGEE_AIRSPEED,
  APOGEE_HEIGHT,
  APOGEE_TIME,
  COAST,
  chunkIn,
  type EnsembleChunk,
  FLEW,
  flightSize,
  GUIDE_EXIT_SPEED,
  LANDING_EAST,
  LANDING_NORTH,
} from "./ensemble-chunk.js";
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

/** A search over settings or weather asks for the same tables again; a worker is sent copies of what they are made of. */
const tablesOf = keepingLast(
  ({ inputs, options, top, topMach }: Pick<EnsembleSpec, "inputs" | "options" | "top" | "topMach">) =>
    fastTables(prepareFlight(inputs, options), top, topMach),
);

/** Flies draws `from` … `to` − 1 into a chunk of so many, or into memory of its own. */
export type PreparedEnsemble = (from: number, to: number, into?: EnsembleChunk) => EnsembleChunk;

/**
 * Prepares the flying of draws: tables and memory are made once, each draw depends on seed and number alone.
 *
 * @returns a function that flies draws `from` … `to` − 1; the figures do not depend on how draws are split into runs
 * @example
 * const chunk = prepareEnsemble(spec)(0, 2000);
 */
export function prepareEnsemble(spec: EnsembleSpec): PreparedEnsemble {
  const ensemble = new Ensemble(spec);
  return (from, to, into) => ensemble.fly(from, to, into);
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

  fly(from: number, to: number, into: EnsembleChunk = chunkIn(this.spec.opening, from, to)): EnsembleChunk {
    const { spec, work, draws } = this;
    const { flight } = draws;
    const { flights, judged, samples } = into;
    const settingCount = spec.opening.settings.length;
    const samplesPerDraw = settingCount * spec.opening.samples * sampleSize;
    for (let i = 0; i < to - from; i++) {
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
      if (!flight.flew) {
        flights.fill(0, o, o + FLEW);
        continue;
      }
      flights[o + COAST] = flight.apogeeTime - flight.burnout;
      flights[o + APOGEE_TIME] = flight.apogeeTime;
      flights[o + APOGEE_HEIGHT] = flight.apogeeHeight;
      flights[o + APOGEE_AIRSPEED] = apogeeAirspeed(work, flight);
      flights[o + LANDING_EAST] = flight.landingEast;
      flights[o + LANDING_NORTH] = flight.landingNorth;
      flights[o + GUIDE_EXIT_SPEED] = flight.guideExitSpeed;
    }
    return into;
  }
}
