import type { Vec3 } from "../math/vec3.js";
import type { PowerLawWind } from "./profile.js";

/**
 * Exponents of the power law by terrain, for neutral air.
 *
 * @source Hellmann exponents of wind-energy practice: open water 0.10, open land 1/7, inhabited or wooded land 0.34;
 * rough land 0.20 from memory
 */
export const terrainExponents = Object.freeze({ water: 0.1, open: 1 / 7, rough: 0.2, wooded: 0.34 });

/**
 * Wind speed at one height over the speed at another, by the power law.
 *
 * Valid in the lowest few hundred metres over even ground, in neutral air.
 *
 * @param z height above the ground [m]; at or below 0 the answer is 0
 * @param referenceHeight [m], > 0
 * @param exponent ≥ 0
 * @returns ratio, ≥ 0
 * @source common practice in wind engineering
 * @example
 * powerLawRatio(100, 10, 1 / 7); // 1.3894955
 */
export function powerLawRatio(z: number, referenceHeight: number, exponent: number): number {
  return z > 0 ? Math.exp(exponent * Math.log(z / referenceHeight)) : 0;
}

/**
 * The wind of a power-law profile: zero at the ground and below, no longer growing above the gradient height.
 *
 * @param profile the reading near the ground, exponent and gradient height
 * @returns a function of height above the pad [m] that gives where the air goes [m/s]
 * @example
 * powerLawWind({ kind: "power", east: 5, north: 0, referenceHeight: 10, exponent: 1 / 7, gradientHeight: 300 })(10); // [5, 0, 0]
 */
export function powerLawWind(profile: PowerLawWind): (z: number) => Vec3 {
  const { east, north, referenceHeight, exponent, gradientHeight } = profile;
  return (z) => {
    const ratio = powerLawRatio(Math.min(z, gradientHeight), referenceHeight, exponent);
    return [east * ratio, north * ratio, 0];
  };
}
