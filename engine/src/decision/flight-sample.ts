import { recordSize } from "../flight/fast/sizes.js";
import { fastTables } from "../flight/fast/tables.js";
import { FastWork } from "../flight/fast/work.js";
import { prepareFlight } from "../flight/model.js";
import { DrawnFlights } from "../spread/drawn-flights.js";
import type { EnsembleSpec } from "../spread/ensemble.js";
import { dropBefore, heightsAt, motionAt } from "../spread/flight-records.js";
import { judgeFlight } from "../spread/judge.js";
import { JudgeWork } from "../spread/judge-work.js";
import { judgedSize, sampleSize } from "../spread/outcomes.js";
import { CanopyFall } from "./flight-sample-descent.js";

/** Outcomes of an opening, in the order of their numbers in `FlightSampleChunk.outcome`. */
export const openingOutcomes = ["clean", "earlyFast", "lateFast", "leanFast", "low", "grounded"] as const;

/** Everything a sample of flights depends on: plain data, so that it can be sent to a worker. */
export interface FlightSampleSpec {
  /** One setting, with one opening sampled a draw. */
  readonly ensemble: EnsembleSpec;
  /** Last of the common times of the unopened flights [s]. */
  readonly until: number;
}

/**
 * Flights drawn for pictures: each opened once, at a delay of its own. Columns hold a number a draw.
 *
 * A draw that never left the guide or never came down is grounded and NaN in every other column.
 */
export interface FlightSampleChunk {
  readonly from: number;
  readonly to: number;
  /** Index into `openingOutcomes`. */
  readonly outcome: Uint8Array;
  /** 1 where the recovery holds, else 0. */
  readonly holds: Uint8Array;
  /** The top of the unopened flight. */
  readonly top: { readonly time: Float64Array; readonly height: Float64Array };
  /** The opening; NaN where it is grounded. */
  readonly opening: {
    /** From ignition [s]. */
    readonly time: Float64Array;
    readonly height: Float64Array;
    readonly airspeed: Float64Array;
    readonly east: Float64Array;
    readonly north: Float64Array;
  };
  /** Where the opened flight lands; NaN where it is grounded. */
  readonly opened: {
    readonly time: Float64Array;
    readonly east: Float64Array;
    readonly north: Float64Array;
    /** Speed over ground, and its downward part [m/s]. */
    readonly groundSpeed: Float64Array;
    readonly descentSpeed: Float64Array;
  };
  /** Where the same flight lands if nothing opens. */
  readonly unopened: { readonly time: Float64Array; readonly east: Float64Array; readonly north: Float64Array };
  /** Common times of the unopened flights [s], rising from 0 and denser early, while the thrust lasts. */
  readonly times: Float64Array;
  /** Heights of the unopened flights at those times [m], 0 before lift-off and after landing; times within draws. */
  readonly unopenedHeights: Float64Array;
  /** Moments from its own opening to its own landing [s], `descentPoints` a draw; moments within draws, NaN where it is grounded. */
  readonly descentTimes: Float64Array;
  /** Heights under the canopies at those moments [m]. */
  readonly descentHeights: Float64Array;
}

/** Common times of the unopened flights. */
export const unopenedPoints = 96;

/** Moments told of each descent. */
export const descentPoints = 48;

/**
 * Prepares the flying of a sample: the ensemble's own draws, each opened at one delay of its own and followed to the ground.
 *
 * The unopened flight and the judging of its opening are the ensemble's, to the last digit: the motor's charge fires at
 * burnout (or the nominal burn time) plus a delay drawn at the setting, and the canopies fill from line stretch on. Electronics
 * is left out, as it is in the odds. The way down has the equations of `descend`, in the draw's own air and wind with its own
 * mass.
 *
 * @param spec from `flightSampleSpec`
 * @returns a function that flies draws `from` … `to` − 1; the figures do not depend on how draws are split into runs
 * @example
 * const sample = prepareFlightSample(flightSampleSpec(inputs, { delay: 10, delaySd: 1 }))(0, 256);
 */
export function prepareFlightSample(spec: FlightSampleSpec): (from: number, to: number) => FlightSampleChunk {
  const sampler = new Sampler(spec);
  return (from, to) => sampler.fly(from, to);
}

/** Tables and memory of one sample. A class, so that its code outlives it. */
class Sampler {
  private readonly burnEnd: number;
  private readonly work: FastWork;
  private readonly descent: CanopyFall;
  private readonly judge: JudgeWork;
  private readonly times: Float64Array;
  private readonly draws: DrawnFlights;
  private readonly judged = new Float64Array(judgedSize);
  private readonly opened = new Float64Array(sampleSize);

  constructor({ ensemble, until }: FlightSampleSpec) {
    const model = prepareFlight(ensemble.inputs, ensemble.options);
    const tables = fastTables(model, ensemble.top, ensemble.topMach);
    this.burnEnd = model.burn.end;
    // steps are recorded from burnout on: with none in sight they are from the guide on
    this.work = new FastWork({ ...tables, model: { ...model, burn: { ...model.burn, end: 0 } } });
    this.draws = new DrawnFlights(ensemble, this.work);
    this.descent = new CanopyFall(this.work, model);
    this.judge = new JudgeWork(ensemble.opening, this.work.records.length / recordSize);
    this.times = Float64Array.from({ length: unopenedPoints }, (_, k) => until * (k / (unopenedPoints - 1)) ** 1.5);
  }

  fly(from: number, to: number): FlightSampleChunk {
    const { work, judge, draws, times, opened } = this;
    const { flight, values } = draws;
    const out = emptySample(from, to, times);
    for (let i = 0; i < to - from; i++) {
      draws.fly(from + i);
      flight.burnout = this.burnEnd * values.burnTime;
      flight.flew = flight.flew && flight.landingTime > flight.burnout;
      if (flight.flew) {
        heightsAt(work, flight, times, out.unopenedHeights.subarray(i * unopenedPoints, (i + 1) * unopenedPoints));
        dropBefore(work, flight, flight.burnout);
      }
      judgeFlight(judge, work, flight, this.burnEnd, draws.strata, this.judged, 0, opened, 0);
      if (!flight.flew) continue;
      out.top.time[i] = flight.apogeeTime;
      out.top.height[i] = flight.apogeeHeight;
      out.unopened.time[i] = flight.landingTime;
      out.unopened.east[i] = flight.landingEast;
      out.unopened.north[i] = flight.landingNorth;
      const time = flight.apogeeTime + opened[2]!;
      if (Number.isNaN(time)) continue;
      let stretch = 0;
      while (stretch < judge.edgeCount && time >= judge.edges[stretch]!) stretch += 1;
      out.outcome[i] = judge.classes[stretch]!;
      out.holds[i] = judge.holding[stretch]!;
      this.openDraw(out, i, time);
    }
    return out;
  }

  private openDraw(out: FlightSampleChunk, i: number, time: number): void {
    const { descent, opened } = this;
    const start = motionAt(this.work, this.draws.flight, time);
    out.opening.time[i] = time;
    out.opening.height[i] = opened[1]!;
    out.opening.airspeed[i] = opened[0]!;
    out.opening.east[i] = start[0]!;
    out.opening.north[i] = start[1]!;
    if (!descent.fall(start, time, this.draws.values.dragScale)) return;
    const { state, knots } = descent;
    out.opened.time[i] = descent.time;
    out.opened.east[i] = state[0]!;
    out.opened.north[i] = state[1]!;
    out.opened.groundSpeed[i] = Math.hypot(state[3]!, state[4]!, state[5]!);
    out.opened.descentSpeed[i] = -state[5]!;
    for (let k = 0; k < descentPoints; k++) {
      const moment = momentOf(knots, k);
      out.descentTimes[i * descentPoints + k] = moment;
      out.descentHeights[i * descentPoints + k] = k === descentPoints - 1 ? 0 : descent.heightAt(moment);
    }
  }
}

/** Moments share out evenly among the stretches between openings and landing, and are dense after each opening. */
function momentOf(knots: readonly number[], k: number): number {
  const place = (k / (descentPoints - 1)) * (knots.length - 1);
  const i = Math.min(Math.floor(place), knots.length - 2);
  return knots[i]! + (place - i) ** 2 * (knots[i + 1]! - knots[i]!);
}

const grounded = openingOutcomes.indexOf("grounded");

/** A sample in which nothing flew. */
function emptySample(from: number, to: number, times: Float64Array): FlightSampleChunk {
  const column = (size = 1): Float64Array => new Float64Array((to - from) * size).fill(Number.NaN);
  return {
    from,
    to,
    outcome: new Uint8Array(to - from).fill(grounded),
    holds: new Uint8Array(to - from),
    top: { time: column(), height: column() },
    opening: { time: column(), height: column(), airspeed: column(), east: column(), north: column() },
    opened: { time: column(), east: column(), north: column(), groundSpeed: column(), descentSpeed: column() },
    unopened: { time: column(), east: column(), north: column() },
    times: times.slice(),
    unopenedHeights: column(unopenedPoints),
    descentTimes: column(descentPoints),
    descentHeights: column(descentPoints),
  };
}

/**
 * Joins runs of draws that together cover 0 … n − 1, in whatever order they came.
 *
 * @param chunks of one spec, at least one
 * @example
 * joinFlightSamples([fly(128, 256), fly(0, 128)]).to; // 256
 */
export function joinFlightSamples(chunks: readonly FlightSampleChunk[]): FlightSampleChunk {
  const first = chunks.reduce((a, b) => (b.from < a.from ? b : a));
  const last = chunks.reduce((a, b) => (b.to > a.to ? b : a));
  const out = emptySample(first.from, last.to, first.times);
  for (const chunk of chunks) {
    const put = (into: Float64Array, column: Float64Array, size = 1): void =>
      into.set(column, (chunk.from - first.from) * size);
    out.outcome.set(chunk.outcome, chunk.from - first.from);
    out.holds.set(chunk.holds, chunk.from - first.from);
    put(out.unopenedHeights, chunk.unopenedHeights, unopenedPoints);
    put(out.descentTimes, chunk.descentTimes, descentPoints);
    put(out.descentHeights, chunk.descentHeights, descentPoints);
    for (const group of ["top", "opening", "opened", "unopened"] as const) {
      const columns: Readonly<Record<string, Float64Array>> = chunk[group];
      const into: Readonly<Record<string, Float64Array>> = out[group];
      for (const [name, column] of Object.entries(columns)) put(into[name]!, column);
    }
  }
  return out;
}
