import type { EventHints } from "./event-hints.js";
import { apogeeOf } from "./events/apogee.js";
import { burnoutByAcceleration } from "./events/burnout-acceleration.js";
import { climbByShape } from "./events/climb-shape.js";
import { descentSteps } from "./events/descent-steps.js";
import { firingsOf } from "./events/firings.js";
import { guideExitByAcceleration } from "./events/guide-exit.js";
import { joltsAfter } from "./events/jolts.js";
import { lagOf } from "./events/lag.js";
import { landingOf } from "./events/landing.js";
import { liftOffByAcceleration } from "./events/lift-off-acceleration.js";
import { eventAt, type Lag, type Look, lookAt, type Placed, usualLag } from "./events/look.js";
import { mainOf, openingOf } from "./events/opening.js";
import { topTime } from "./events/top.js";
import { eventsWithoutHeights } from "./events/unheighted.js";
import type { FlightRecord } from "./flight-record.js";
import type { FoundEvents } from "./found-events.js";

const atOnce: Lag = { time: 0, error: 0 };

/**
 * Finds the events of a flight, each with its error and the reason it was placed there.
 *
 * Lift-off and burnout come from the accelerometer where there is one, else from a fit of the thrust's shape to the heights of
 * the climb; the top from a polynomial on its undisturbed sides; the openings from the fall, and exactly from a charge that
 * is seen to fire; the landing from where the descent meets the ground. A barometer's lag is taken off: fitted against the
 * accelerometer, else the usual 0.06 ± 0.03 s. An opening is the moment of line stretch. What the record does not tell is null.
 *
 * @param record from `flightRecord`
 * @param hints what the plan knows; all optional
 * @example
 * findEvents(record, { guideTravel: 1.9, lineStretch: 0.5 }).apogee?.time; // 9.82
 */
export function findEvents(record: FlightRecord, hints: EventHints = {}): FoundEvents {
  const look = lookAt(record, hints);
  if (record.heightsFrom === "acceleration" || record.heightsFrom === "speed") return eventsWithoutHeights(look);

  const byPush = liftOffByAcceleration(look);
  const burnoutByPush = byPush === null ? null : burnoutByAcceleration(look, byPush.time);
  const byShape = byPush === null || burnoutByPush === null ? climbByShape(look) : null;
  const liftOff = byPush ?? byShape?.liftOff ?? null;
  const burnout = burnoutByPush ?? byShape?.burnout ?? null;
  const guideExit = byPush === null ? (byShape?.guideExit ?? null) : guideExitOf(look, byPush);
  const lag = byPush !== null && burnoutByPush !== null ? lagOf(look, byPush.time, burnoutByPush.time) : usualLag;

  const burnEnd = burnout?.time ?? Math.min(2, topTime(look) / 3);
  const jolts = joltsAfter(look, burnEnd + 0.4);
  const firings = firingsOf(look, burnEnd + 0.2, jolts);
  const highest = topTime(look);
  const { placed: landing, descent } = landingOf(look, highest, lag);
  const down = landing?.time ?? record.time[record.time.length - 1]!;
  const steps = descentSteps(look, highest, down, descent);
  const opened = openingOf(look, burnEnd, highest, down, steps, firings, lag);
  const apogee = apogeeOf(look, burnEnd, opened, lag);
  const main = mainOf(look, down, steps, lag);

  const byHeight = (placed: Placed | null) => eventAt(record, placed, lag);
  return {
    liftOff: eventAt(record, liftOff, atOnce),
    guideExit: byHeight(guideExit),
    burnout: byHeight(burnout),
    apogee: byHeight(apogee),
    opening: byHeight(opened?.placed ?? null),
    main: byHeight(main),
    landing: byHeight(landing),
  };
}

/** By the accelerometer; where it stands at the end of its range, the way along the guide is the barometer's. */
function guideExitOf(look: Look, liftOff: Placed): Placed | null {
  const exit = guideExitByAcceleration(look, liftOff);
  const clipped = look.record.flaws.some(
    (f) => f.kind === "saturated" && f.from < (exit?.time ?? 0) && f.to > liftOff.time,
  );
  const shaped = clipped ? climbByShape(look) : null;
  if (shaped?.guideExit == null) return exit;
  const time = liftOff.time + shaped.guideExit.time - shaped.liftOff.time;
  return { time, error: Math.hypot(liftOff.error, 0.1 * (time - liftOff.time)), reason: "travelled-guide" };
}
