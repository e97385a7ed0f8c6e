import type { FoundEvents } from "../found-events.js";
import { interpolated } from "../interpolated.js";
import { burnoutByAcceleration } from "./burnout-acceleration.js";
import { guideExitByAcceleration } from "./guide-exit.js";
import { joltsAfter } from "./jolts.js";
import { liftOffByAcceleration } from "./lift-off-acceleration.js";
import { eventAt, type Look, type Placed } from "./look.js";

/** Share of the coast by which an integrated speed misses the top: lean and scale. Of our own, generous. */
const COAST_SHARE = 0.06;
const noLag = { time: 0, error: 0 };

/**
 * Events of a record without a barometer: lift-off and burnout are as good as ever, the top is where the integrated speed is
 * used up, and what follows is told by jolts alone.
 */
export function eventsWithoutHeights(look: Look): FoundEvents {
  const { record } = look;
  const { time, speed } = record;
  const liftOff = liftOffByAcceleration(look);
  const burnout = liftOff === null ? null : burnoutByAcceleration(look, liftOff.time);
  const from = burnout?.time ?? 0;
  let apogee: Placed | null = null;
  for (let i = 1; i < time.length; i++)
    if (time[i]! > from + 0.5 && speed[i]! <= 0 && speed[i - 1]! > 0) {
      const at = time[i - 1]! + ((time[i]! - time[i - 1]!) * speed[i - 1]!) / (speed[i - 1]! - speed[i]!);
      apogee = { time: at, error: Math.hypot(0.1, COAST_SHARE * (at - from)), reason: "speed-crosses-zero" };
      break;
    }
  const jolts = joltsAfter(look, from + 1);
  const spacing = 1 / record.rate / Math.sqrt(12);
  const top = apogee?.time ?? Number.POSITIVE_INFINITY;
  const fired = jolts.find((t) => t > Math.min(top - 4, from + 2));
  const stretch = look.hints.lineStretch ?? 0;
  const opening: Placed | null =
    fired === undefined ? null : { time: fired + stretch, error: spacing + 0.01, reason: "acceleration-spike" };
  const last = jolts.at(-1);
  const rests = last !== undefined && fired !== undefined && last > fired + 5 && quietAfter(look, last);
  const landing: Placed | null = rests ? { time: last, error: 0.5, reason: "acceleration-spike" } : null;
  const at = (placed: Placed | null) => eventAt(record, placed, noLag);
  return {
    liftOff: at(liftOff),
    guideExit: liftOff === null ? null : at(guideExitByAcceleration(look, liftOff)),
    burnout: at(burnout),
    apogee: at(apogee),
    opening: at(opening),
    main: null,
    landing: at(landing),
  };
}

/** Whether the acceleration hardly moves for the rest of the record. */
function quietAfter({ record }: Look, from: number): boolean {
  const { time, acceleration, accelerationError } = record;
  const level = interpolated(time, acceleration!, time[time.length - 1]!);
  const slack = Math.max(1, 6 * (accelerationError ?? 0));
  for (let i = 0; i < time.length; i++)
    if (time[i]! > from + 1 && Math.abs(acceleration![i]! - level) > slack) return false;
  return time[time.length - 1]! > from + 2;
}
