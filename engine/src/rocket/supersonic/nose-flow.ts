import { noseRadius } from "../nose-shape.js";
import type { Nose } from "../rocket.js";
import { type BodyFlow, type Profile, shockExpansion } from "./shock-expansion.js";

const NOSE_POINTS = 30;
const TUBE_POINTS = 10;

function noseProfile({ shape, length }: Nose, diameter: number): Profile {
  return Array.from({ length: NOSE_POINTS + 1 }, (_, k) => {
    const s = (k / NOSE_POINTS) ** 2;
    return [s * length, (diameter / 2) * noseRadius(shape, length / diameter, s)] as const;
  });
}

/**
 * Supersonic flow over a nose and the tube behind it, which carries some of the nose's normal force.
 *
 * @param diameter of the nose's base [m]
 * @param tube length of the tube behind it [m], ≥ 0
 * @returns coefficients on the base area, for Mach numbers 1.2…3.7
 * @source `shockExpansion`
 * @example
 * noseFlow({ shape: { kind: "ogive" }, length: 0.3 }, 0.1, 0)(2).drag; // 0.1070
 */
export function noseFlow(nose: Nose, diameter: number, tube: number): (mach: number) => BodyFlow {
  const profile = [
    ...noseProfile(nose, diameter),
    ...Array.from(
      { length: tube > 0 ? TUBE_POINTS : 0 },
      (_, k) => [nose.length + tube * ((k + 1) / TUBE_POINTS) ** 2, diameter / 2] as const,
    ),
  ];
  return (mach) => shockExpansion(profile, mach);
}
