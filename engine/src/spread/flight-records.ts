import type { FastOutcome } from "../flight/fast/outcome.js";
import { recorded } from "../flight/fast/records.js";
import { recordSize } from "../flight/fast/sizes.js";
import type { FastWork } from "../flight/fast/work.js";
import { recordAt } from "./crossings.js";

/** Place, velocity at a recorded time: east, north, height, then the three velocities. */
export function motionAt(w: FastWork, flight: FastOutcome, time: number): Float64Array {
  const { records } = w;
  const offset = recordAt(records, flight.recordCount, time) * recordSize;
  const share = (time - records[offset]!) / records[offset + 1]!;
  return Float64Array.of(
    placeAt(records, offset, 0, share),
    placeAt(records, offset, 1, share),
    recorded(records, offset, 0, share),
    recorded(records, offset, 1, share),
    recorded(records, offset, 2, share),
    recorded(records, offset, 3, share),
  );
}

/** East (0) or north (1) of the pad: three-point Gauss over the recorded velocity, exact for it. */
function placeAt(records: Float64Array, offset: number, axis: 0 | 1, share: number): number {
  const half = 0.5 * share;
  const reach = half * Math.sqrt(0.6);
  const velocity = (s: number): number => recorded(records, offset, 1 + axis, s);
  const sum = (5 * velocity(half - reach) + 8 * velocity(half) + 5 * velocity(half + reach)) / 18;
  return records[offset + 2 + axis]! + sum * share * records[offset + 1]!;
}

/**
 * Heights of the unopened flight at rising times: 0 before lift-off and after landing.
 *
 * From lift-off to the first record, on and just off the guide, a cubic from rest to the record's height and velocity.
 */
export function heightsAt(w: FastWork, flight: FastOutcome, times: Float64Array, out: Float64Array): void {
  const { records } = w;
  const first = records[0]!;
  for (let k = 0; k < times.length; k++) {
    const time = times[k]!;
    if (time <= flight.liftOff || time >= flight.landingTime) out[k] = 0;
    else if (time < first) {
      const span = first - flight.liftOff;
      const s = (time - flight.liftOff) / span;
      out[k] = s * s * ((3 - 2 * s) * recorded(records, 0, 0, 0) - (1 - s) * span * recorded(records, 0, 3, 0));
    } else {
      const offset = recordAt(records, flight.recordCount, time) * recordSize;
      out[k] = recorded(records, offset, 0, (time - records[offset]!) / records[offset + 1]!);
    }
  }
}

/** Drops the records before a time at which one starts, so that they are those of an ensemble's flight. */
export function dropBefore(w: FastWork, flight: FastOutcome, time: number): void {
  const { records } = w;
  const from = recordAt(records, flight.recordCount, time + 1e-9);
  records.copyWithin(0, from * recordSize, flight.recordCount * recordSize);
  flight.recordCount -= from;
}
