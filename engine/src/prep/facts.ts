/** What a signature can rest on. */
export type PrepBasis =
  | "motor"
  | "bag"
  | "removed"
  | "setting"
  | "charge"
  | "bay"
  | "recovery"
  | "rocket"
  | "guide"
  | "weather"
  | "place";

/** What a plan's prep sheet depends on. */
export interface PrepFacts {
  /** `none`: a plugged motor without delay and charge. */
  readonly delay: "adjustable" | "fixed" | "none";
  /**
   * `to-make`: the plan's delay asks for a cut that no reading shows yet; `made`: the reading shows it; `not-confirmed`: it asks for one
   * that the motor's instructions do not yet allow; `does-not-hold`: it asks for one that the recovery would not bear.
   */
  readonly cut: "none" | "to-make" | "made" | "not-confirmed" | "does-not-hold";
  /** Electronics that opens the rocket, or stands behind the motor's charge. */
  readonly electronics: boolean;
  /** Charges of the flyer's own, fired by the electronics. */
  readonly ownCharge: boolean;
  readonly shearPins: boolean;
  readonly drogue: boolean;
  /** A check of the plan says stop. */
  readonly checkSaysStop: boolean;
  /** One opaque text for each thing that a signature can rest on; it changes when that thing does. */
  readonly basis: Readonly<Record<PrepBasis, string>>;
}
