/** Thrust over time, linear between its points, zero outside them. */
export interface ThrustCurve {
  /** Time from ignition [s], length n ≥ 2, strictly rising, first ≥ 0. */
  readonly times: readonly number[];
  /** Thrust [N], length n, ≥ 0. */
  readonly thrusts: readonly number[];
}

/** What starts the real delay: the end of the burn, or ignition (the delay element lights with the motor). */
export type DelayClock = "burnout" | "ignition";

/** The delay a motor comes with. */
export type DelayElement =
  | {
      readonly kind: "adjustable";
      /** Delay of the uncut element [s]. */
      readonly longest: number;
      /** Most that may be taken out [s]; Infinity where the maker names no limit. */
      readonly mostRemoved: number;
      /** Least that must be left [s]. */
      readonly leastLeft: number;
      /** Depth of grain that burns in one second [m/s]; left out: unknown. */
      readonly depthPerSecond?: number;
      readonly clock: DelayClock;
      /** The flyer has confirmed that the motor's own instructions allow shortening the delay. */
      readonly cuttingConfirmed: boolean;
      /** The tool that the instructions name. */
      readonly toolNamed?: string;
    }
  | { readonly kind: "fixed"; readonly seconds: number; readonly clock: DelayClock }
  | { readonly kind: "none" };

/** One single-use motor. */
export interface Motor {
  readonly thrust: ThrustCurve;
  /** Outer diameter [m]. */
  readonly diameter: number;
  /** [m] */
  readonly length: number;
  /** Mass as loaded [kg]. */
  readonly loadedMass: number;
  /** Propellant [kg], below `loadedMass`. */
  readonly propellantMass: number;
  readonly delay: DelayElement;
  /** As printed on the label, for example `H150-14`. */
  readonly designation?: string;
}
