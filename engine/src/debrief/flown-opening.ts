import type { Limits } from "../decision/inputs.js";
import type { FlightResult } from "../flight/result.js";
import type { FoundEvents } from "./found-events.js";

/** How a rocket was opened, as far as a record tells. */
export interface FlownOpening {
  /** Through the air [m/s]: of the flight that fits, at the moment of the opening. */
  readonly airspeed: number;
  /** Above the pad, as recorded [m]. */
  readonly height: number;
  /** Opening less top [s]: of the top as flown, or, where the opening came before it, of the top it would have had. */
  readonly fromTop: number;
}

/** An opening so much before the recorded top cut it short [s]; closer, the loss of height is below what a record tells. */
const CUTS_SHORT = 0.3;

/**
 * Whether the rocket opened so early that its record does not hold the top it would have had.
 *
 * @example
 * cutShort(events); // false: it opened after the top
 */
export function cutShort({ opening, apogee }: FoundEvents): boolean {
  return opening !== null && apogee !== null && opening.time < apogee.time - CUTS_SHORT;
}

/**
 * Airspeed and moment of an opening. A barometer sees no sideways motion, so the airspeed is that of the flight that fits.
 *
 * @param flight with drag and impulse as they were fitted to the climb
 * @returns null where no lift-off or no opening was found, or the flight has no top
 * @example
 * flownOpening(events, fly(fitted))?.airspeed; // 14.2
 */
export function flownOpening(events: FoundEvents, { events: planned, at }: FlightResult): FlownOpening | null {
  const { liftOff, apogee, opening } = events;
  if (liftOff === null || opening === null || planned.liftOff === null || planned.apogee === null) return null;
  const time = opening.time - liftOff.time + planned.liftOff.time;
  const fromTop =
    apogee === null || opening.time < apogee.time ? time - planned.apogee.time : opening.time - apogee.time;
  return { airspeed: at(time).airspeed, height: opening.height, fromTop };
}

/**
 * How a flight came in by its record: the classes of the odds, fast ones not told apart.
 *
 * Grounded: it came down to the ground, and nothing opened. Null where the record does not tell.
 *
 * @param opening as `flownOpening` gives it
 * @example
 * flownOutcome(events, { airspeed: 14, height: 560, fromTop: 1.1 }, limits); // "clean"
 */
export function flownOutcome(
  { opening: opened, main, landing }: FoundEvents,
  opening: FlownOpening | null,
  { openingSpeed, openingHeight }: Pick<Limits, "openingSpeed" | "openingHeight">,
): "clean" | "fast" | "low" | "grounded" | null {
  if (opening === null)
    return opened === null && main === null && landing?.reason === "height-stops-changing" ? "grounded" : null;
  if (opening.height < openingHeight) return "low";
  return opening.airspeed > openingSpeed ? "fast" : "clean";
}
