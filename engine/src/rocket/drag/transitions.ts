import { bridgeOverMach } from "../normal-force/compressibility.js";
import type { BodyStretch } from "../outline.js";
import { overMach } from "../supersonic/over-mach.js";
import { shockExpansion } from "../supersonic/shock-expansion.js";
import { baseDragCoasting } from "./base.js";
import { DRAG_RISE, wideningDrag } from "./nose.js";

/** Half angle up to which the flow stays on a boat-tail [rad]; memory. */
const ATTACHED = (8 * Math.PI) / 180;
/** Half angle from which a boat-tail is as bad as a step [rad]; memory. */
const SEPARATED = (25 * Math.PI) / 180;

/**
 * How much of a step's base drag a boat-tail still has.
 *
 * @param halfAngle of the narrowing cone [rad], 0…π/2
 * @returns 0 for slender boat-tails, 1 for a step
 * @source S. F. Hoerner, Fluid-Dynamic Drag (1965), idea of flow that separates from steep afterbodies; angles memory
 * @example
 * separatedShare(0.1); // 0
 */
export function separatedShare(halfAngle: number): number {
  const way = Math.min(1, Math.max(0, (halfAngle - ATTACHED) / (SEPARATED - ATTACHED)));
  return way * way * (3 - 2 * way);
}

/** Wave drag of a narrowing cone on which the flow stays, on the circle of its fore diameter. */
function expansionDrag({ start, end, foreDiameter, aftDiameter }: BodyStretch): (mach: number) => number {
  const length = end - start;
  const profile = [
    [-length, foreDiameter / 2] as const,
    [0, foreDiameter / 2] as const,
    [length, aftDiameter / 2] as const,
  ];
  const fore = (aftDiameter / foreDiameter) ** 2;
  return bridgeOverMach(
    () => 0,
    overMach((mach) => fore * shockExpansion(profile, mach).drag),
    DRAG_RISE,
  );
}

/**
 * Pressure drag of a conical transition over Mach number.
 *
 * A widening one is taken as a nose's cone on the ring it adds. A narrowing one keeps a share of base drag on the ring it takes
 * away; for the rest of it, where the flow stays, the drag of its expansion above the speed of sound.
 *
 * @param stretch the transition [m]
 * @param diameter reference diameter [m]
 * @returns coefficient on the reference area, over Mach number, ≥ 0
 * @source `wideningDrag`, `separatedShare`, `baseDragCoasting`, `shockExpansion`
 * @example
 * const tail = { kind: "transition", start: 1.4, end: 1.5, foreDiameter: 0.1, aftDiameter: 0.08 } as const;
 * transitionDrag(tail, 0.1)(0.5); // 0
 */
export function transitionDrag(stretch: BodyStretch, diameter: number): (mach: number) => number {
  const { start, end, foreDiameter, aftDiameter } = stretch;
  const ring = Math.abs(aftDiameter ** 2 - foreDiameter ** 2) / diameter ** 2;
  const halfAngle = Math.atan2(Math.abs(aftDiameter - foreDiameter) / 2, end - start);
  if (aftDiameter > foreDiameter) {
    const widening = wideningDrag(halfAngle, halfAngle);
    return (mach) => ring * widening(mach);
  }
  const separated = separatedShare(halfAngle);
  const share = ring * separated;
  if (separated >= 1 || ring === 0) return (mach) => share * baseDragCoasting(mach);
  const expansion = expansionDrag(stretch);
  const attached = (1 - separated) * (foreDiameter / diameter) ** 2;
  return (mach) => share * baseDragCoasting(mach) + attached * expansion(mach);
}
