/** The nose's profile. `haack` takes its parameter c (0 von Kármán, 1/3 least drag for volume), `power` its exponent (0.5 paraboloid, 1 cone). */
export type NoseShape =
  | { readonly kind: "cone" | "ogive" | "parabola" | "ellipsoid" }
  | { readonly kind: "haack"; readonly c: number }
  | { readonly kind: "power"; readonly exponent: number };

/** The nose cone; its base has the rocket's reference diameter. */
export interface Nose {
  readonly shape: NoseShape;
  /** [m] */
  readonly length: number;
}

/** A conical change of diameter: a transition, or a boat-tail where it narrows. The tube keeps its aft diameter from there on. */
export interface Transition {
  /** Start, from the nose tip [m]. */
  readonly at: number;
  /** [m] */
  readonly length: number;
  /** [m] */
  readonly aftDiameter: number;
}

/** Outline of one fin. Lengths in m; the root runs along the tube. */
export type FinShape =
  | {
      readonly kind: "trapezoid";
      readonly root: number;
      readonly tip: number;
      readonly span: number;
      readonly sweep: number;
    }
  | { readonly kind: "ellipse"; readonly root: number; readonly span: number }
  /** Corners (chordwise, spanwise) from the root's leading edge, first and last on the root. */
  | { readonly kind: "polygon"; readonly points: readonly (readonly [chordwise: number, spanwise: number])[] };

export type FinEdge = "square" | "round" | "sharp";

/** A ring of equal fins. */
export interface FinSet {
  readonly shape: FinShape;
  readonly count: number;
  /** The root's leading edge, from the nose tip [m]. */
  readonly at: number;
  /** [m] */
  readonly thickness: number;
  readonly leadingEdge: FinEdge;
  readonly trailingEdge: FinEdge;
  /** Angle at which every fin stands to the axis [rad]; positive turns the body right-handed about its axis towards the nose. Left out: 0. */
  readonly cant?: number;
}

/** What runs on the launch guide. */
export interface Fitting {
  readonly kind: "rail button" | "launch lug" | "rail guide";
  /** From the nose tip [m]. */
  readonly at: number;
  /** Frontal area [m²]; left out: a usual size for the kind. */
  readonly frontalArea?: number;
}

/** Where the axial drag comes from; `scale` multiplies whatever it gives. */
export type DragSource =
  | { readonly from: "build-up"; readonly scale: number }
  | { readonly from: "constant"; readonly cd: number; readonly scale: number }
  | {
      readonly from: "table";
      /** Rising Mach numbers, length n ≥ 1; the drag coefficient is linear between and constant beyond them. */
      readonly mach: readonly number[];
      readonly coasting: readonly number[];
      readonly thrusting: readonly number[];
      readonly scale: number;
    };

/** How the thrust misses the axis. */
export interface ThrustLine {
  /** Between thrust and axis [rad]. */
  readonly angle: number;
  /** Between the axis and the thrust where it leaves the motor's aft end [m]. */
  readonly offset: number;
  /** Where its sideways push and its offset point, as an azimuth while the rocket stands upright on the pad [rad]. */
  readonly toward: number;
}

/** How the transverse inertia is known, which rules its default spread. */
export type InertiaSource = "given" | "swing" | "estimated";

/** The airframe without its motor. All positions from the nose tip [m]. */
export interface Rocket {
  /** Reference diameter [m]: the reference area is its circle. */
  readonly diameter: number;
  /** [m] */
  readonly length: number;
  /** Mass without motor [kg]. */
  readonly mass: number;
  /** Balance point without motor [m]. */
  readonly balance: number;
  /** Transverse inertia about the balance point, without motor [kg m²]. */
  readonly inertia: number;
  readonly inertiaSource: InertiaSource;
  /** About the axis, without motor [kg m²]; left out: estimated. */
  readonly rollInertia?: number;
  readonly nose: Nose;
  /** In order from the nose. */
  readonly transitions: readonly Transition[];
  readonly finSets: readonly FinSet[];
  readonly fittings: readonly Fitting[];
  /** Surface roughness, equivalent sand grain [m]. */
  readonly roughness: number;
  readonly mount: {
    /** Inner diameter [m]. */
    readonly diameter: number;
    /** Where the motor's aft end sits [m]. */
    readonly motorAftAt: number;
    /** [m]; left out: not known. */
    readonly length?: number;
    readonly retention?: "positive" | "friction" | "none";
    /** Left out: along the axis. */
    readonly thrustLine?: ThrustLine;
  };
  readonly drag: DragSource;
  /** Centre of pressure as somebody stated it [m]; replaces the computed one. */
  readonly statedCp?: number;
}

/** A point mass fixed to the airframe. */
export interface Ballast {
  /** [kg] */
  readonly mass: number;
  /** From the nose tip [m]. */
  readonly at: number;
}
