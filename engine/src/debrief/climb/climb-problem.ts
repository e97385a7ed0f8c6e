import type { DrawnValues } from "../../flight/fast/draw.js";
import { lagged, shownAt } from "./barometer.js";
import type { Climb, ClimbFlights } from "./climb-flights.js";
import type { Day } from "./days.js";

/** Parameters that are flown again in every round: logarithms of drag, impulse and burn time, clock [s], barometer's lag [s]. */
export const DRAG = 0;
export const IMPULSE = 1;
export const BURN = 2;
export const CLOCK = 3;
export const LAG = 4;
export type Parameters = readonly [drag: number, impulse: number, burn: number, clock: number, lag: number];

/** Steps of the central differences: wide enough that the flight's own step control does not show. */
const steps: Parameters = [0.03, 0.01, 0.01, 0.01, 0.02];

/** Step of the difference by a wave of the thrust. */
export const waveStep = 0.05;

/** Heights that a barometer shows at the samples' times, for any parameters and any day. */
export class ClimbProblem {
  private readonly flights: ClimbFlights;
  private readonly waved: readonly ClimbFlights[];
  private readonly times: Float64Array;

  /** @param waved the same flights with thrusts of another shape, each waved by `waveStep` */
  constructor(flights: ClimbFlights, waved: readonly ClimbFlights[], times: Float64Array) {
    this.flights = flights;
    this.waved = waved;
    this.times = times;
  }

  private climb(p: Parameters, day?: Day, flights = this.flights): Climb | null {
    return flights.fly((drawn: DrawnValues) => {
      day?.change(drawn);
      drawn.dragScale = Math.exp(p[DRAG]);
      drawn.totalImpulse = Math.exp(p[IMPULSE]);
      drawn.burnTime = Math.exp(p[BURN]);
    });
  }

  private shown(climb: Climb, p: Parameters): Float64Array {
    return shownAt(lagged(climb, p[LAG]), this.times, p[CLOCK]);
  }

  /** What a unit of another shape of thrust does to the heights; null where the flight fails. */
  shapes(p: Parameters): Float64Array[] | null {
    const stated = this.heights(p);
    const climbs = this.waved.map((flights) => this.climb(p, undefined, flights));
    if (stated === null || climbs.includes(null)) return null;
    return climbs.map((climb) => this.shown(climb!, p).map((height, i) => (height - stated[i]!) / waveStep));
  }

  /** Null where such a flight never leaves the guide. */
  heights(p: Parameters, day?: Day): Float64Array | null {
    const climb = this.climb(p, day);
    if (climb === null) return null;
    const shown = this.shown(climb, p);
    return day === undefined ? shown : shown.map((height) => height * day.shown);
  }

  /** Central differences by every parameter; null where a flight fails. */
  slopes(p: Parameters): Float64Array[] | null {
    const all: Float64Array[] = [];
    for (const [k, step] of steps.entries()) {
      // a lag is never below zero
      const down = k === LAG ? Math.min(step, p[LAG]) : step;
      const plus = this.heights(p.with(k, p[k]! + step) as unknown as Parameters);
      const minus = this.heights(p.with(k, p[k]! - down) as unknown as Parameters);
      if (plus === null || minus === null) return null;
      all.push(plus.map((height, i) => (height - minus[i]!) / (step + down)));
    }
    return all;
  }

  /**
   * What days like this one do to the heights: their mean, less the heights of the day as stated, and the covariance about it,
   * row-major. Days on which it never leaves the guide are left out.
   */
  departures(p: Parameters, days: readonly Day[]): { readonly mean: Float64Array; readonly covariance: Float64Array } {
    const rows = this.times.length;
    const mean = new Float64Array(rows);
    const covariance = new Float64Array(rows * rows);
    const stated = this.heights(p);
    const flown = days.map((day) => this.heights(p, day)).filter((heights) => heights !== null);
    if (stated === null || flown.length < 2) return { mean, covariance };
    for (const heights of flown) for (let i = 0; i < rows; i++) mean[i]! += (heights[i]! - stated[i]!) / flown.length;
    for (const heights of flown) {
      const off = heights.map((height, i) => height - stated[i]! - mean[i]!);
      for (let i = 0; i < rows; i++)
        for (let j = 0; j <= i; j++) covariance[i * rows + j]! += (off[i]! * off[j]!) / (flown.length - 1);
    }
    return { mean, covariance };
  }
}
