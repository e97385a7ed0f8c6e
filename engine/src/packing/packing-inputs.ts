import type { BaySize } from "./ejection-charge.js";
import type { MotorCharge } from "./motor-charge.js";
import type { Recovery } from "./recovery.js";
import type { PinCount } from "./shear-pins.js";

/** The bay that the ejection charge opens, and what holds it shut. */
export interface EjectionBay extends BaySize {
  /** Pressure rise that the flyer wants [Pa], > 0. */
  readonly pressure?: number;
  readonly pins?: readonly PinCount[];
  /** Force that pulls the joint apart without its pins [N], ≥ 0. */
  readonly friction?: number;
}

/** Where a canopy comes to line stretch. The height enters by its density and gravity. */
export interface OpeningPoint {
  readonly which: "drogue" | "main";
  /** [m/s], > 0. */
  readonly airspeed: number;
  /** [kg/m³], > 0. */
  readonly density: number;
  /** [m/s²], > 0. */
  readonly gravity: number;
}

/** The air over the landing, and how fast it was flown to. */
export interface LandingPoint {
  /** [kg/m³], > 0. */
  readonly density: number;
  /** [m/s²], > 0. */
  readonly gravity: number;
  /** Over ground at touch-down [m/s]; left out: the steady descent under the main. */
  readonly speed?: number;
}

/** Everything that packing one rocket on one motor depends on, in SI units. */
export interface PackingInputs {
  /** [m] */
  readonly rocketLength: number;
  /** That hangs under the canopies: rocket, ballast and burnt-out motor [kg]. */
  readonly mass: number;
  readonly recovery: Recovery;
  readonly bay?: EjectionBay;
  /** The charge that comes with the motor; left out: it has none. */
  readonly motorCharge?: MotorCharge;
  /** The bay that an altimeter sits in; left out: the static ports are for `bay`. */
  readonly electronicsBay?: BaySize;
  /** Load that the weakest link, bolt or eye bears [N]. */
  readonly fittingsStrength?: number;
  /** Pins of a joint that must stay shut while the first canopy opens. */
  readonly stillShut?: readonly PinCount[];
  readonly openings: readonly OpeningPoint[];
  readonly landing: LandingPoint;
  /** Diameter of a hole cut into the main beside its usual vent [m]. */
  readonly spillHole?: number;
  /** Masses of the tethered sections [kg]; none: the whole mass lands as one. */
  readonly sections?: readonly number[];
}

/** What the flyer may set otherwise; see `defaultPackingOptions`. */
export interface PackingOptions {
  /** Times the holding force that the charge should push with, > 0. */
  readonly separationMargin?: number;
  /** Speed of descent that canopies are sized for [m/s], > 0. */
  readonly landingSpeed?: number;
  /** Most energy of a section [J]. */
  readonly energyLimit?: number;
}
