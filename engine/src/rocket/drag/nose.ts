import { bridgeOverMach } from "../normal-force/compressibility.js";
import { noseJointAngle } from "../nose-shape.js";
import type { Nose } from "../rocket.js";
import { noseFlow } from "../supersonic/nose-flow.js";
import { overMach } from "../supersonic/over-mach.js";
import { waveDrag } from "../supersonic/tangent-cone.js";

/** Where the transonic rise of pressure drag begins. */
export const DRAG_RISE = 0.8;
/** Below this the wave-drag law is not used. */
const WAVE_LIMIT = 1.2;
/** Steeper cones count as this one [rad]: their shock stands off, and the law ends. */
const STEEPEST = 0.8;

/**
 * Pressure drag of a surface that leans out by an angle where it meets the tube, below the drag rise.
 *
 * @param jointAngle angle between the surface and the tube [rad]
 * @returns coefficient on the frontal area of the surface
 * @source S. F. Hoerner, Fluid-Dynamic Drag (1965), cones before a cylinder, fitted by 0.8 sin²; memory
 * @example
 * cornerDrag(Math.PI / 6); // 0.2
 */
export function cornerDrag(jointAngle: number): number {
  return 0.8 * Math.sin(jointAngle) ** 2;
}

/**
 * Pressure drag of a surface that widens the body, over Mach number: corner drag, a cone's wave drag from Mach 1.2 on, and a
 * smooth rise between Mach 0.8 and 1.2.
 *
 * @param jointAngle where it meets the tube behind it [rad]
 * @param halfAngle of the cone through its ends [rad]
 * @returns coefficient on the frontal area of the surface, over Mach number
 * @example
 * wideningDrag(0, 0.1)(0.5); // 0
 */
export function wideningDrag(jointAngle: number, halfAngle: number): (mach: number) => number {
  const corner = cornerDrag(jointAngle);
  return bridgeOverMach(
    () => corner,
    (mach) => waveDrag(Math.min(halfAngle, STEEPEST), mach),
    DRAG_RISE,
    WAVE_LIMIT,
  );
}

/**
 * Pressure drag of the nose over Mach number.
 *
 * Shapes that run out tangent to the tube have none below Mach 0.8. Above 1.2 a cone has its wave drag, every other shape that of its
 * own profile; a smooth rise between.
 *
 * @param diameter of its base, which is the reference diameter [m]
 * @returns coefficient on the reference area, over Mach number
 * @source `cornerDrag`, `waveDrag`, `noseFlow`
 * @example
 * noseDrag({ shape: { kind: "ogive" }, length: 0.3 }, 0.1)(2); // 0.1071
 */
export function noseDrag(nose: Nose, diameter: number): (mach: number) => number {
  const fineness = nose.length / diameter;
  const joint = noseJointAngle(nose.shape, fineness);
  if (nose.shape.kind === "cone") return wideningDrag(joint, Math.atan(0.5 / fineness));
  const corner = cornerDrag(joint);
  const flow = noseFlow(nose, diameter, 0);
  return bridgeOverMach(
    () => corner,
    overMach((mach) => flow(mach).drag),
    DRAG_RISE,
    WAVE_LIMIT,
  );
}
