import { descentPoints, type FlightSampleChunk, unopenedPoints } from "./flight-sample.js";
import { quantilesOf } from "./quantiles.js";

/** Quantiles of height over time: columns of one length. */
export interface HeightFan {
  /** From ignition [s]. */
  readonly times: Float64Array;
  /** Heights [m] below which 5, 25, 50, 75 and 95 % of the flights are. */
  readonly p05: Float64Array;
  readonly p25: Float64Array;
  readonly p50: Float64Array;
  readonly p75: Float64Array;
  readonly p95: Float64Array;
}

/** What a fan shows: up to the last opening, from the first opening to the last landing, or the flight that nothing opens. */
export type FanPart = "climb" | "descent" | "unopened";

const shares = [0.05, 0.25, 0.5, 0.75, 0.95];

/**
 * How high the flights of a sample are over time.
 *
 * `climb` and `descent` are two views of one thing, all flights as they open: a flight that has landed counts as on the
 * ground, one that is grounded follows its unopened fall. So both join where they overlap, and no flight drops out of the
 * quantiles on the way. `unopened` follows the same flights with nothing opened.
 *
 * @param sample at least one draw that flew, else the fan has no rows
 * @param part from 0 to the last opening; from the first opening to the last landing; from 0 to the last unopened landing
 * @param count rows, ≥ 2
 * @returns heights above the pad [m]
 * @example
 * heightFan(sample, "climb").p50;
 */
export function heightFan(sample: FlightSampleChunk, part: FanPart, count = 96): HeightFan {
  const flown = Array.from(sample.unopened.time, (_, i) => i).filter((i) => !Number.isNaN(sample.unopened.time[i]!));
  const [from, to] = spanOf(sample, part, flown);
  const rows = flown.length === 0 ? 0 : count;
  const times = Float64Array.from({ length: rows }, (_, k) =>
    k === count - 1 ? to : from + (k / (count - 1)) * (to - from),
  );
  const bands = shares.map(() => new Float64Array(rows));
  const heights = new Float64Array(flown.length);
  times.forEach((time, k) => {
    flown.forEach((draw, n) => {
      heights[n] = part === "unopened" ? unopenedHeight(sample, draw, time) : openedHeight(sample, draw, time);
    });
    quantilesOf(heights, shares).forEach((height, q) => {
      bands[q]![k] = height;
    });
  });
  const [p05, p25, p50, p75, p95] = bands as [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];
  return { times, p05, p25, p50, p75, p95 };
}

function spanOf(sample: FlightSampleChunk, part: FanPart, flown: readonly number[]): [number, number] {
  const { opening, opened, unopened } = sample;
  const over = (column: Float64Array, pick: (a: number, b: number) => number, none: number): number =>
    flown.reduce((best, i) => (Number.isNaN(column[i]!) ? best : pick(best, column[i]!)), none);
  const lastFall = over(unopened.time, Math.max, 0);
  if (part === "unopened") return [0, lastFall];
  const first = over(opening.time, Math.min, Number.POSITIVE_INFINITY);
  if (!Number.isFinite(first)) return [0, lastFall];
  return part === "climb" ? [0, over(opening.time, Math.max, 0)] : [first, over(opened.time, Math.max, lastFall)];
}

function unopenedHeight({ times, unopenedHeights, unopened }: FlightSampleChunk, draw: number, time: number): number {
  const row = draw * unopenedPoints;
  return heightBetween(times, unopenedHeights.subarray(row, row + unopenedPoints), unopened.time[draw]!, time);
}

function openedHeight(sample: FlightSampleChunk, draw: number, time: number): number {
  const { opening, opened, descentTimes, descentHeights } = sample;
  const landing = opened.time[draw]!;
  if (!(time > opening.time[draw]!) || Number.isNaN(landing)) return unopenedHeight(sample, draw, time);
  const row = draw * descentPoints;
  const end = row + descentPoints;
  return heightBetween(descentTimes.subarray(row, end), descentHeights.subarray(row, end), landing, time);
}

/** Straight between neighbours of rising times, and from the last one before the landing to the ground. */
function heightBetween(times: Float64Array, heights: Float64Array, landing: number, time: number): number {
  if (time >= landing) return 0;
  let low = 0;
  let high = times.length;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (times[middle]! <= time) low = middle;
    else high = middle;
  }
  const grounds = high === times.length || times[high]! >= landing;
  const share = (time - times[low]!) / ((grounds ? landing : times[high]!) - times[low]!);
  return heights[low]! + share * ((grounds ? 0 : heights[high]!) - heights[low]!);
}
