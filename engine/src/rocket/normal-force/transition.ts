import type { SlenderPart } from "./nose.js";

/** A conical change of diameter within the body. */
export interface Cone {
  /** Start, from the nose tip [m]. */
  readonly at: number;
  /** [m] */
  readonly length: number;
  /** [m] */
  readonly foreDiameter: number;
  /** [m] */
  readonly aftDiameter: number;
}

/**
 * Normal force of a conical transition; negative where the body narrows.
 *
 * Small angles; slender-body theory, held constant over Mach number. A boat-tail's slope is an upper bound in size: the
 * thick boundary layer weakens it.
 *
 * @param cone its place and size [m]
 * @param diameter reference diameter [m]
 * @returns slope [1/rad] and centre of pressure from the nose tip [m]
 * @source J. S. Barrowman, thesis, Catholic University of America, 1967, section 3; memory
 * @example
 * transitionNormalForce({ at: 0.6, length: 0.1, foreDiameter: 0.054, aftDiameter: 0.075 }, 0.054).slope; // 1.8580247
 */
export function transitionNormalForce(cone: Cone, diameter: number): SlenderPart {
  const { at, length, foreDiameter, aftDiameter } = cone;
  const slope = 2 * ((aftDiameter / diameter) ** 2 - (foreDiameter / diameter) ** 2);
  return { slope, at: at + (length / 3) * (1 + aftDiameter / (foreDiameter + aftDiameter)) };
}
