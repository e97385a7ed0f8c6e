import type { FlightRecord } from "../flight-record.js";
import type { FoundEvents } from "../found-events.js";

/** A record's climb in means over short times: enough of them for any fit, however fast the record. */
export interface ClimbSamples {
  /** After the lift-off found [s]. */
  readonly times: Float64Array;
  readonly heights: Float64Array;
  /** How many of the record's heights a mean holds. */
  readonly counts: Float64Array;
  /** On the record's clock [s]. */
  readonly from: number;
  readonly to: number;
}

const mostMeans = 150;

/** Before line stretch the charge has fired and its gas may have reached the barometer [s]. Own default, no source. */
const beforeOpening = 1;

/** From lift-off to the top or just before the opening; null where no lift-off was found, or nothing is left. */
export function climbSamples(record: FlightRecord, events: FoundEvents): ClimbSamples | null {
  const { liftOff, apogee, opening, landing } = events;
  if (liftOff === null) return null;
  const from = liftOff.time;
  const to = Math.min(
    apogee?.time ?? Number.POSITIVE_INFINITY,
    opening === null ? Number.POSITIVE_INFINITY : opening.time - Math.max(beforeOpening, 3 * opening.timeError),
    landing?.time ?? Number.POSITIVE_INFINITY,
    record.time.at(-1) ?? Number.NEGATIVE_INFINITY,
  );
  if (!(to > from)) return null;
  const width = (to - from) / mostMeans;
  const times: number[] = [];
  const heights: number[] = [];
  const counts: number[] = [];
  let bin = -1;
  for (let i = 0; i < record.time.length; i++) {
    const time = record.time[i]!;
    const height = record.height[i]!;
    if (time < from || time > to || !Number.isFinite(height) || flawed(record, time)) continue;
    const place = Math.floor((time - from) / width);
    if (place !== bin) {
      bin = place;
      times.push(0);
      heights.push(0);
      counts.push(0);
    }
    const last = counts.length - 1;
    times[last]! += time - from;
    heights[last]! += height;
    counts[last]! += 1;
  }
  const mean = (sums: readonly number[]) => Float64Array.from(sums, (sum, i) => sum / counts[i]!);
  return { times: mean(times), heights: mean(heights), counts: Float64Array.from(counts), from, to };
}

function flawed({ flaws }: FlightRecord, time: number): boolean {
  return flaws.some((flaw) => flaw.kind !== "gap" && flaw.kind !== "saturated" && time >= flaw.from && time <= flaw.to);
}
