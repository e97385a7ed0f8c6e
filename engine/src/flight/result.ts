import type { FlightModel } from "./model.js";
import type { ResolvedFlightOptions } from "./options.js";
import type { Kinematics, Leg } from "./trajectory.js";

export type FlightEnd =
  | "landed"
  | "never-lifted"
  | "never-left-guide"
  | "time-limit"
  | "not-finite"
  | "step-too-small"
  | "too-many-steps";

/** Highest figures on the way up. */
export interface Peaks {
  /** Speed over ground [m/s], with the Mach number then. */
  readonly fastest: { readonly time: number; readonly speed: number; readonly mach: number };
  /** Acceleration over ground [m/s²]. */
  readonly hardest: { readonly time: number; readonly acceleration: number };
  readonly highestMach: number;
}

/** One unopened flight, from ignition to the ground. */
export interface FlightResult {
  readonly ended: FlightEnd;
  /** The options as they were used: with the inputs they repeat the flight. */
  readonly options: ResolvedFlightOptions;
  readonly model: FlightModel;
  readonly events: {
    readonly liftOff: Kinematics | null;
    readonly guideExit: Kinematics | null;
    /** The aft fitting leaves the guide, where it does so later than the forward one, which is the guide exit. */
    readonly lastFitting: Kinematics | null;
    readonly burnout: Kinematics | null;
    readonly handOver: Kinematics | null;
    readonly apogee: Kinematics | null;
    readonly landing: Kinematics | null;
  };
  /** Highest speed, acceleration and Mach number; searched for when first asked. */
  readonly peaks: () => Peaks;
  readonly legs: readonly Leg[];
  /** Right-hand sides called. */
  readonly calls: number;
  /** Motion at any time of the flight. */
  readonly at: (time: number) => Kinematics;
}
