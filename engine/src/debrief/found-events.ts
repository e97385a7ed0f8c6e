/** What is looked for in a record, in the order of a flight. */
export const eventNames = ["liftOff", "guideExit", "burnout", "apogee", "opening", "main", "landing"] as const;
export type EventName = (typeof eventNames)[number];

/** By what an event was placed. Codes: the faces word them. */
export type EventReason =
  | "acceleration-rises"
  | "height-leaves-noise"
  | "travelled-guide"
  | "acceleration-falls-through-zero"
  | "speed-highest"
  | "height-highest"
  | "speed-crosses-zero"
  | "pressure-spike"
  | "acceleration-spike"
  | "descent-slows"
  | "descent-slows-again"
  | "height-stops-changing"
  | "record-ends"
  | "instrument-mark"
  | "moved-by-flyer";

/** One event as found. */
export interface FoundEvent {
  /** On the clock of `FlightRecord` [s]. */
  readonly time: number;
  /** One sigma [s]. */
  readonly timeError: number;
  /** Above the pad [m]. */
  readonly height: number;
  /** One sigma [m]. */
  readonly heightError: number;
  readonly reason: EventReason;
}

/** The events of one flight; null where none could be found. */
export type FoundEvents = { readonly [Name in EventName]: FoundEvent | null };
