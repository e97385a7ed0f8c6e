import { noseVolumeFraction } from "../nose-shape.js";
import type { Nose } from "../rocket.js";

/** Slope and centre of pressure of one part of the body; a slender body's do not change with Mach number. */
export interface SlenderPart {
  /** Normal-force slope [1/rad] on the reference area. */
  readonly slope: number;
  /** Centre of pressure from the nose tip [m]. */
  readonly at: number;
}

/**
 * Normal force of the nose: slope 2 on its base area, at L − V/A of the base.
 *
 * Small angles; slender-body theory, held constant over Mach number.
 *
 * @param diameter of its base, which is the reference diameter [m]
 * @returns slope [1/rad] and centre of pressure from the tip [m]
 * @source J. S. Barrowman, thesis, Catholic University of America, 1967, section 3; memory
 * @example
 * noseNormalForce({ shape: { kind: "cone" }, length: 0.2 }, 0.054); // { slope: 2, at: 0.1333333333 }
 */
export function noseNormalForce(nose: Nose, diameter: number): SlenderPart {
  return { slope: 2, at: nose.length * (1 - noseVolumeFraction(nose.shape, nose.length / diameter)) };
}
