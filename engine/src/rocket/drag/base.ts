import { bridgeOverMach } from "../normal-force/compressibility.js";

/** Coasting base drag over Mach number, its kink at Mach 1 rounded. */
const coasting = bridgeOverMach(
  (mach) => 0.12 + 0.13 * mach * mach,
  (mach) => 0.25 / mach,
  0.9,
  1.1,
);

/**
 * Base drag of a body whose motor does not burn.
 *
 * Between Mach 0.9 and 1.1 a smooth cubic joins the two laws.
 *
 * @param mach ≥ 0
 * @returns coefficient on the base area
 * @source E. L. Fleeman, Tactical Missile Design (2006), 2.4: 0.12 + 0.13 M² below Mach 1, 0.25/M above (memory)
 * @example
 * baseDragCoasting(0.6); // 0.1668
 */
export function baseDragCoasting(mach: number): number {
  return coasting(mach);
}

/** What `baseDrag` asks for. */
export interface BaseDrag {
  readonly mach: number;
  readonly thrusting: boolean;
  /** [m] */
  readonly baseDiameter: number;
  /** Diameter of the motor, whose jet fills that part of the base [m]. */
  readonly motorDiameter: number;
  /** [m] */
  readonly diameter: number;
}

/**
 * Base drag on the reference area; under thrust the jet relieves the part of the base that the motor fills.
 *
 * @returns coefficient on the circle of the reference diameter, ≥ 0
 * @source E. L. Fleeman, Tactical Missile Design (2006), 2.4: factor 1 − Ae/A under thrust; memory
 * @example
 * baseDrag({ mach: 0, thrusting: true, baseDiameter: 0.1, motorDiameter: 0.05, diameter: 0.1 }); // 0.09
 */
export function baseDrag({ mach, thrusting, baseDiameter, motorDiameter, diameter }: BaseDrag): number {
  const filled = thrusting ? Math.min(baseDiameter, motorDiameter) : 0;
  return (baseDragCoasting(mach) * (baseDiameter * baseDiameter - filled * filled)) / (diameter * diameter);
}

/**
 * Base drag as the thickness of the boundary layer before it rules it, to hold `baseDragCoasting` against.
 *
 * Subsonic.
 *
 * @param forebodyDrag friction drag of the body before the base, on its frontal area, > 0
 * @param diameterRatio base diameter over body diameter
 * @returns coefficient on the frontal area
 * @source S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. III: 0.029 (db/d)³/√CDf; memory
 * @example
 * baseDragFromBoundaryLayer(0.15, 1); // 0.0748777
 */
export function baseDragFromBoundaryLayer(forebodyDrag: number, diameterRatio: number): number {
  return (0.029 * diameterRatio ** 3) / Math.sqrt(forebodyDrag);
}
