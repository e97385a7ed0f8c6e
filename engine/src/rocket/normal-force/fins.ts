import { bridgeOverMach, SUBSONIC_LIMIT } from "./compressibility.js";
import type { Planform } from "./planform.js";

/** Slope that is left of N/2 fins where more than four stand in each other's flow, by count from 5; memory, one old report. */
const CROWDED = [0.948, 0.913, 0.854, 0.81] as const;

/**
 * How many fins' worth of normal force a ring of equal fins gives, whatever the roll.
 *
 * Three or more fins give N/2 of one fin's slope in every plane; more than four disturb each other (held at eight's value
 * beyond eight). One or two fins give nothing in their weakest plane.
 *
 * @param count fins in the ring, a whole number ≥ 1
 * @returns factor on one fin's slope
 * @source N/2: Barrowman 1967; more than four fins: memory
 * @example
 * finCountFactor(4); // 2
 */
export function finCountFactor(count: number): number {
  if (count < 3) return 0;
  const crowded = count < 5 ? 1 : (CROWDED[Math.min(count, 8) - 5] ?? 1);
  return (count / 2) * crowded;
}

/**
 * Factor by which the body beside a fin raises its normal force.
 *
 * @param radius of the body at the fins [m], ≥ 0
 * @param span from root to tip [m], > 0
 * @returns 1…2
 * @source Barrowman 1967: 1 + R/(S + R); memory
 * @example
 * bodyInterference(0.033, 0.1); // 1.2481203
 */
export function bodyInterference(radius: number, span: number): number {
  return 1 + radius / (span + radius);
}

/** Slope of one fin on its own area, below the speed of sound. */
function subsonicSlope({ aspectRatio, midChordSweep }: Planform, mach: number): number {
  const m = Math.min(mach, SUBSONIC_LIMIT);
  const ratio = aspectRatio / Math.cos(midChordSweep);
  return (2 * Math.PI * aspectRatio) / (2 + Math.sqrt(4 + (1 - m * m) * ratio * ratio));
}

/** Slope of one fin on its own area, above the speed of sound. */
function supersonicSlope({ aspectRatio }: Planform, mach: number): number {
  const beta = Math.sqrt(mach * mach - 1);
  const reduced = beta * aspectRatio;
  return reduced <= 1 ? 2 * aspectRatio : (4 / beta) * (1 - 1 / (2 * reduced));
}

/**
 * Normal-force slope of one fin on its own area, over Mach number, without body and neighbours.
 *
 * Below Mach 0.9 Diederich's form with the Prandtl-Glauert rule; above 1.2 Ackeret's 4/β less the share lost in the tips'
 * Mach cones, held at its greatest, twice the aspect ratio, where those cones overlap; a monotone cubic between. Thickness
 * is left out.
 *
 * @returns slope [1/rad] over Mach number ≥ 0
 * @source F. W. Diederich, NACA TN 2335 (1951), as used by Barrowman 1967; J. Ackeret's linear theory with the rectangular
 * wing's tip loss 1 − 1/(2 β AR); memory
 * @example
 * finSlopeOverMach(finPlanform({ kind: "ellipse", root: 0.15, span: 0.1 }))(0); // 2.3071237
 */
export function finSlopeOverMach(planform: Planform): (mach: number) => number {
  return bridgeOverMach(
    (mach) => subsonicSlope(planform, mach),
    (mach) => supersonicSlope(planform, mach),
  );
}

/** Where the load of a fin acts on its mean chord above the speed of sound, from a third of it towards its middle. */
function supersonicChordFraction(aspectRatio: number, mach: number): number {
  const reduced = Math.max(1, Math.sqrt(mach * mach - 1) * aspectRatio);
  return (reduced - 2 / 3) / (2 * reduced - 1);
}

/**
 * Where the normal force acts along the mean aerodynamic chord, over Mach number.
 *
 * A quarter below Mach 0.9; above 1.2 that of a rectangular wing in linear theory, which tends to a half; a monotone cubic
 * between.
 *
 * @returns fraction of the mean chord, 0.25…0.5
 * @source linear theory of the rectangular wing, (β AR − 2/3)/(2 β AR − 1) for β AR ≥ 1; memory
 * @example
 * finChordFraction(finPlanform({ kind: "ellipse", root: 0.15, span: 0.1 }))(0.5); // 0.25
 */
export function finChordFraction(planform: Planform): (mach: number) => number {
  return bridgeOverMach(
    () => 0.25,
    (mach) => supersonicChordFraction(planform.aspectRatio, mach),
  );
}
