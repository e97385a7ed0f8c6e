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
