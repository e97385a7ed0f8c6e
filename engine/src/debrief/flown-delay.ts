import type { FlownDelay } from "./climb-fit.js";
import type { FoundEvents } from "./found-events.js";

/** What the delay of a flight is reckoned from, beside its events. */
export interface FlownDelayHow {
  /** From where the delay counts: the burnout found, or ignition and the nominal burn. */
  readonly clock: "burnout" | "ignition";
  /** From ignition to the end of the nominal burn [s]. */
  readonly nominalBurnEnd: number;
  /** From ignition to lift-off as predicted [s]; left out: 0. For a delay that counts from ignition, which no record shows. */
  readonly nominalLiftOff?: number;
  /** From firing to line stretch [s]. */
  readonly lineStretch: number;
  /** `backup`: electronics fires at the top, and an opening there is its. */
  readonly motorCharge: "primary" | "backup";
  /** Beside electronics, an opening later than this after the top is the motor charge's [s]; left out: 2, own default, no source. */
  readonly electronicsWithin?: number;
}

const usualElectronicsWithin = 2;

/**
 * The delay as flown: from burnout (or the nominal burn time after ignition) to the charge's firing, a line stretch before the
 * opening.
 *
 * A bound where the charge was not seen: beside electronics that opened first, and where the rocket came down unopened, it burned
 * at least so long. That a charge fired and opened nothing cannot be told from one that did not fire: the flyer excludes such a
 * flight.
 *
 * @returns `unknown` where burnout, or what the clock counts from, was not found
 * @example
 * flownDelay(events, { clock: "burnout", nominalBurnEnd: 1.7, lineStretch: 0.5, motorCharge: "primary" });
 * // { kind: "seen", delay: 10.4, error: 0.07 }
 */
export function flownDelay(events: FoundEvents, how: FlownDelayHow): FlownDelay {
  const { liftOff, burnout, opening, apogee, landing } = events;
  const { clock, nominalBurnEnd, nominalLiftOff = 0, lineStretch } = how;
  const start =
    clock === "burnout"
      ? burnout && { time: burnout.time, error: burnout.timeError }
      : liftOff && { time: liftOff.time - nominalLiftOff + nominalBurnEnd, error: liftOff.timeError };
  if (start === null) return { kind: "unknown" };
  const since = (time: number): number => time - lineStretch - start.time;
  if (opening === null) {
    if (landing === null) return { kind: "unknown" };
    return { kind: "at-least", delay: Math.max(0, since(landing.time)) };
  }
  const within = how.electronicsWithin ?? usualElectronicsWithin;
  const byElectronics =
    how.motorCharge === "backup" && (apogee === null || opening.time - lineStretch <= apogee.time + within);
  if (byElectronics) return { kind: "at-least", delay: Math.max(0, since(opening.time)) };
  return { kind: "seen", delay: since(opening.time), error: Math.hypot(opening.timeError, start.error) };
}
