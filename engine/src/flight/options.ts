import { allOfRigid, type RigidSwitches } from "./rigid/switches.js";

/** How the body turns: docs/models.md. */
export type TurningModel = "pitching" | "aligned" | "rigid";

/** Models of which thousands of draws are flown in a second. */
export type QuickModel = Exclude<TurningModel, "rigid">;

export interface FlightOptions {
  readonly model?: TurningModel;
  /** Relative tolerance of the integration; larger than 1e-4 loses the swing. */
  readonly tolerance?: number;
  /** Longest flight followed [s]. */
  readonly timeLimit?: number;
  /** Hand over to the settled model once the swing is below the bound. */
  readonly handOver?: boolean;
  /** Cross-flow force on nose and tube. */
  readonly bodyLift?: boolean;
  /** Slopes and centres of pressure that change with Mach number. */
  readonly compressibility?: boolean;
  /** A constant gravity [m/s²] in place of the field's; null: the field's. */
  readonly gravity?: number | null;
  /** Seed of the rigid model's turbulence; null: the mean wind alone. Other models have none. */
  readonly turbulence?: number | null;
  /** Parts of the rigid model; left out: all on. */
  readonly rigid?: RigidSwitches;
}

/** The options of a flight after the defaults are filled in; they travel with the result. */
export interface ResolvedFlightOptions {
  readonly model: TurningModel;
  readonly tolerance: number;
  readonly timeLimit: number;
  readonly handOver: boolean;
  readonly bodyLift: boolean;
  readonly compressibility: boolean;
  readonly gravity: number | null;
  readonly turbulence: number | null;
  readonly rigid: RigidSwitches;
}

/** Defaults of a shown flight: draws use a looser tolerance, chosen and tested in `spread`. */
export const defaultFlightOptions: ResolvedFlightOptions = Object.freeze({
  model: "pitching",
  tolerance: 1e-9,
  timeLimit: 1800,
  handOver: true,
  bodyLift: true,
  compressibility: true,
  gravity: null,
  turbulence: null,
  rigid: allOfRigid,
});

export function resolveFlightOptions(options: FlightOptions): ResolvedFlightOptions {
  return { ...defaultFlightOptions, ...options };
}
