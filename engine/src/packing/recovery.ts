/** Canopy types with handbook data; see `canopyData`. */
export type CanopyShape =
  | "flat circular"
  | "conical"
  | "biconical"
  | "triconical"
  | "extended skirt 10 %"
  | "extended skirt 14.3 %"
  | "hemispherical"
  | "annular"
  | "cross"
  | "flat ribbon"
  | "conical ribbon"
  | "ringslot"
  | "ringsail"
  | "disk-gap-band"
  | "guide surface, ribless";

/** One canopy. */
export interface Canopy {
  readonly shape: CanopyShape;
  /** Nominal diameter: of the circle with the canopy's whole area [m]. */
  readonly diameter: number;
  /** Drag coefficient on the nominal area; left out: the handbook's for the shape. */
  readonly cd?: number;
}

/** How the rocket comes down. */
export interface Recovery {
  /** `primary`: the motor's charge opens the rocket. `backup`: electronics does, and the charge stands behind it. */
  readonly motorCharge: "primary" | "backup";
  /** From the charge's firing to line stretch [s]. */
  readonly lineStretch: number;
  /** Electronics that fires at apogee plus `delay` [s]. */
  readonly electronics?: { readonly fires: "apogee"; readonly delay: number };
  /** Opens at the first event where there is one; the main then opens at `main.opensAt`. */
  readonly drogue?: { readonly canopy: Canopy; readonly strength?: number };
  readonly main: {
    readonly canopy: Canopy;
    /** Load that the canopy and its fittings bear [N]. */
    readonly strength?: number;
    /** Height of the second event [m]; only with a drogue. */
    readonly opensAt?: number;
  };
  readonly harness?: { readonly length?: number; readonly strength?: number };
}
