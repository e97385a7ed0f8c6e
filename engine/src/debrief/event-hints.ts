import type { ThrustCurve } from "../motor/motor.js";

/** What the plan knows of a flight, all optional: narrows where events are looked for. */
export interface EventHints {
  /** Way along the guide until the rocket is free [m]; without it no guide exit is placed. */
  readonly guideTravel?: number;
  /** From ignition to the nominal end of the burn [s]. */
  readonly burnTime?: number;
  /** Shape of the motor's thrust: with it a barometer alone tells the end of the burn. Level and length are fitted. */
  readonly thrust?: ThrustCurve;
  /** From the charge's firing to line stretch [s]; left out: 0. An opening seen by its charge is placed this much later. */
  readonly lineStretch?: number;
  /** Ways that the canopies cover while they fill [m], of what opens first and of the main; left out: usual ones. */
  readonly fillDistances?: { readonly first?: number; readonly main?: number };
  /** Height at which a second canopy opens above the pad [m]; left out: one opening is looked for, and a second only where plain. */
  readonly mainOpensAt?: number;
}
