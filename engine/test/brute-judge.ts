import type { FastOutcome } from "../src/flight/fast/outcome.js";
import { recorded } from "../src/flight/fast/records.js";
import { recordSize } from "../src/flight/fast/sizes.js";
import type { FastWork } from "../src/flight/fast/work.js";
import { airspeed2, recordAt } from "../src/spread/crossings.js";
import type { OpeningSpec } from "../src/spread/opening-spec.js";
import { CLEAN, EARLY_FAST, GROUNDED, LATE_FAST, LEAN_FAST, LOW } from "../src/spread/outcomes.js";

/** Outcome of one opening of one flight, judged by looking at it: no edges, no integrals. */
export interface Opened {
  readonly outcome: number;
  readonly holds: boolean;
}

const gravity = 9.80665;

function motionAt(w: FastWork, flight: FastOutcome, time: number) {
  const offset = recordAt(w.records, flight.recordCount, time) * recordSize;
  const share = (time - w.records[offset]!) / w.records[offset + 1]!;
  return {
    airspeed: Math.sqrt(airspeed2(w, offset, share)),
    height: recorded(w.records, offset, 0, share),
    climb: recorded(w.records, offset, 3, share),
  };
}

/** Least airspeed from the first possible opening to the ground. */
function leastAirspeed(w: FastWork, flight: FastOutcome, start: number): number {
  let least = Number.POSITIVE_INFINITY;
  const look = (from: number, to: number, count: number) => {
    for (let i = 0; i <= count; i++)
      least = Math.min(least, motionAt(w, flight, from + ((to - from) * i) / count).airspeed);
  };
  look(start, flight.landingTime, 100);
  look(Math.max(start, flight.apogeeTime - 3), Math.min(flight.landingTime, flight.apogeeTime + 3), 1200);
  return least;
}

/**
 * Judges openings of one flight in the order of the design: grounded, low (the canopy also full above half the floor),
 * lean, early or late, clean.
 *
 * @returns a function of the time of opening [s]
 */
export function bruteJudge(w: FastWork, flight: FastOutcome, spec: OpeningSpec): (time: number) => Opened {
  if (!flight.flew) return () => ({ outcome: GROUNDED, holds: false });
  const start = flight.burnout + spec.lineStretch;
  const lean = leastAirspeed(w, flight, start) >= spec.speedLimit;
  return (asked) => {
    const time = Math.max(start, asked);
    if (time >= flight.landingTime) return { outcome: GROUNDED, holds: false };
    const { airspeed, height, climb } = motionAt(w, flight, time);
    const fill = (Math.sqrt(airspeed ** 2 + 2 * gravity * spec.fillDistance) - airspeed) / gravity;
    const fullAt = height + climb * fill - 0.5 * gravity * fill ** 2;
    const onTheWayDown = time > flight.apogeeTime;
    if (height < spec.floor || (onTheWayDown && fullAt < 0.5 * spec.floor)) return { outcome: LOW, holds: false };
    const holds = airspeed < spec.strengthSpeed;
    if (airspeed < spec.speedLimit) return { outcome: CLEAN, holds };
    if (lean) return { outcome: LEAN_FAST, holds };
    return { outcome: time < flight.apogeeTime ? EARLY_FAST : LATE_FAST, holds };
  };
}

/** Mean time of the opening of a flight at a delay. */
export function openingAt(spec: OpeningSpec, flight: FastOutcome, nominalBurnout: number, delay: number): number {
  return (spec.clock === "burnout" ? flight.burnout : nominalBurnout) + delay + spec.lineStretch;
}
