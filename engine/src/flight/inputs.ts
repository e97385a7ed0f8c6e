import type { FieldAir } from "../air/field-air.js";
import type { Motor } from "../motor/motor.js";
import type { Recovery } from "../packing/recovery.js";
import type { Ballast, Rocket } from "../rocket/rocket.js";
import type { WindProfile } from "../wind/profile.js";

/** The launch guide. */
export interface Guide {
  /** Way along the guide until the rocket is free [m]. */
  readonly travel: number;
  /** Lean from the vertical [rad]. */
  readonly tilt: number;
  /** Azimuth it leans towards [rad], clockwise from north. */
  readonly toward: number;
}

/** Everything one flight depends on, in SI units. */
export interface FlightInputs {
  readonly air: FieldAir;
  readonly wind: WindProfile;
  readonly rocket: Rocket;
  readonly motor: Motor;
  readonly ballast: Ballast;
  readonly guide: Guide;
  readonly recovery: Recovery;
}
