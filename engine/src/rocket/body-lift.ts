import { keepingLast } from "../math/keeping-last.js";
import { type Part, slopeOf } from "./normal-force/parts.js";
import { bodyPlanform } from "./outline.js";
import type { Rocket } from "./rocket.js";

/** Drag coefficient of a long cylinder across the flow. S. F. Hoerner, Fluid-Dynamic Drag (1965); memory. */
export const CROSS_FLOW_DRAG = 1.1;

/** Cross-flow force on the body: q · area · cdc · sin² of the angle of attack, at `at`. */
export interface BodyLift {
  /** Side view of nose, tubes and transitions [m²]. */
  readonly area: number;
  /** Its centroid, from the nose tip [m]. */
  readonly at: number;
  /** Cross-flow drag coefficient on that area. */
  readonly cdc: number;
}

const kept = keepingLast((rocket: Rocket): BodyLift => {
  const { area, centroid } = bodyPlanform(rocket);
  return { area, at: centroid, cdc: CROSS_FLOW_DRAG };
});

/**
 * What cross-flow pushes on the body.
 *
 * Low cross-flow Mach number; the coefficient is that of a cylinder below the drag crisis.
 *
 * @returns area [m²], centroid from the nose tip [m], coefficient
 * @source S. F. Hoerner, Fluid-Dynamic Drag (1965), cross-flow principle; memory
 * @example
 * bodyLift(exampleRocket).area; // 0.0924318890
 */
export function bodyLift(rocket: Rocket): BodyLift {
  return kept(rocket);
}

/** What `cpWithBodyLift` asks for. */
export interface CpWithBodyLift {
  readonly parts: readonly Part[];
  readonly bodyLift: BodyLift;
  /** Angle of attack [rad], 0…π/2. */
  readonly alpha: number;
  readonly mach: number;
  /** [m²] */
  readonly referenceArea: number;
}

/**
 * Centre of pressure at an angle of attack, with cross-flow on the body: it moves forward as the angle grows.
 *
 * Held against flights only up to some 15 degrees.
 *
 * @returns from the nose tip [m]
 * @source Barrowman 1967 for the parts, Hoerner 1965 for the cross-flow; memory
 * @example
 * const parts = normalForceParts(exampleRocket);
 * cpWithBodyLift({ parts, bodyLift: bodyLift(exampleRocket), alpha: 0, mach: 0, referenceArea: 0.00342119 }); // 1.2218474
 */
export function cpWithBodyLift({ parts, bodyLift: body, alpha, mach, referenceArea }: CpWithBodyLift): number {
  const cross = (body.area / referenceArea) * body.cdc * Math.sin(alpha);
  const moment = parts.reduce((sum, part) => sum + part.slopeAt(mach) * part.cpAt(mach), 0);
  return (moment + cross * body.at) / (slopeOf(parts, mach) + cross);
}
