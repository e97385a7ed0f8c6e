import type { FlightSpan } from "./flight-record.js";
import type { LogSamples } from "./log-samples.js";
import { boostsIn } from "./record/boosts.js";
import { bucketsOf, clockRuns } from "./record/buckets.js";
import { climbsIn } from "./record/climbs.js";
import { heightSource } from "./record/height-source.js";

/** Kept of the stretch before lift-off and after landing [s]. */
const BEFORE = 20;
const AFTER = 30;

/**
 * The flights in one record: each from a stretch on the pad to a stretch after landing.
 *
 * A restart of the clock ends a flight; a climb counts from 20 m on. Linear in rows: an hour on the pad costs little.
 *
 * @param samples a record's columns, rows in the file's order
 * @returns flights in the order of rows; none where nothing moves
 * @example
 * flightsIn(samples).map((flight) => flight.top); // [412, 388]
 */
export function flightsIn(samples: LogSamples): readonly FlightSpan[] {
  const source = heightSource(samples);
  if (source === null) return [];
  const spans: FlightSpan[] = [];
  for (const [from, to] of clockRuns(samples.time)) {
    const buckets = bucketsOf(samples, source, from, to);
    const { time, row } = buckets;
    const climbs =
      source === "speed" || source === "acceleration" ? boostsIn(buckets, source === "speed") : climbsIn(buckets);
    climbs.forEach(({ liftOff, end, top }, n) => {
      const leastBucket = n === 0 ? 0 : Math.min(climbs[n - 1]!.end, liftOff);
      const mostBucket = n + 1 < climbs.length ? climbs[n + 1]!.liftOff : time.length;
      let first = liftOff;
      while (first > leastBucket && time[first - 1]! >= time[liftOff]! - BEFORE) first--;
      let last = Math.min(end, mostBucket);
      while (last < mostBucket && time[last]! <= time[Math.min(end, time.length - 1)]! + AFTER) last++;
      spans.push({ from: row[first]!, to: row[last]!, liftOff: time[liftOff]!, top });
    });
  }
  return spans;
}
