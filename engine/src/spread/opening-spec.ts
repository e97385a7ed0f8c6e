/** What an opening is judged by, the same for every draw. */
export interface OpeningSpec {
  /** Mean and one sigma of the delay as it burns, at each achievable setting [s]. */
  readonly settings: readonly { readonly delay: number; readonly sd: number }[];
  /** Degrees of freedom of the delay's Student-t, > 2, where flights have taught it; left out: it is normal. */
  readonly degrees?: number;
  /** `ignition`: the delay counts from ignition plus the nominal burn time, whatever the drawn burn. */
  readonly clock: "burnout" | "ignition";
  /** From firing to line stretch [s]. */
  readonly lineStretch: number;
  /** Highest airspeed of a clean opening [m/s]. */
  readonly speedLimit: number;
  /** Highest airspeed that the recovery bears [m/s]. */
  readonly strengthSpeed: number;
  /** Least height of an opening [m]. */
  readonly floor: number;
  /** Way that the canopy covers while it fills [m]: it must be full above half the floor. */
  readonly fillDistance: number;
  /** Electronics fires at apogee plus this [s]; null without electronics. */
  readonly electronicsDelay: number | null;
  /** Openings sampled per draw and setting for the quantiles; 0: none. */
  readonly samples: number;
}

/** Numbers a draw and setting: six outcomes in their order, holds, fires first. */
export const judgedSize = 8;
export const CLEAN = 0;
export const EARLY_FAST = 1;
export const LATE_FAST = 2;
export const LEAN_FAST = 3;
export const LOW = 4;
export const GROUNDED = 5;
export const HOLDS = 6;
export const FIRES_FIRST = 7;

/** Numbers an opening sample: airspeed, height, seconds after apogee; NaN where grounded. */
export const sampleSize = 3;
