import type { FinShape } from "../rocket.js";
import { busemann } from "../supersonic/busemann.js";
import { type FinSection, finLift } from "../supersonic/fin.js";
import { overMach } from "../supersonic/over-mach.js";
import { bridgeOverMach, SUBSONIC_LIMIT } from "./compressibility.js";
import { finPlanform, type Planform } from "./planform.js";

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

/**
 * Normal-force slope of one fin on its own area below the speed of sound, without body and neighbours.
 *
 * Diederich's form with the Prandtl-Glauert rule, held at Mach 0.9 beyond it.
 *
 * @param mach ≥ 0
 * @returns slope [1/rad]
 * @source F. W. Diederich, NACA TN 2335 (1951), as used by Barrowman 1967; memory
 * @example
 * subsonicFinSlope(finPlanform({ kind: "ellipse", root: 0.15, span: 0.1 }), 0); // 2.3071237
 */
export function subsonicFinSlope(
  { aspectRatio, midChordSweep }: Pick<Planform, "aspectRatio" | "midChordSweep">,
  mach: number,
): number {
  const m = Math.min(mach, SUBSONIC_LIMIT);
  const ratio = aspectRatio / Math.cos(midChordSweep);
  return (2 * Math.PI * aspectRatio) / (2 + Math.sqrt(4 + (1 - m * m) * ratio * ratio));
}

/** One fin's normal force over Mach number, without body and neighbours. */
export interface FinForce {
  /** On the fin's own area [1/rad]. */
  readonly slopeAt: (mach: number) => number;
  /** Where it acts, behind the root's leading edge [m]. */
  readonly cpAt: (mach: number) => number;
}

/**
 * Normal force of one fin over Mach number.
 *
 * Below Mach 0.9 `subsonicFinSlope` at a quarter of the mean chord. Above 1.2 linear theory over the whole fin: strips between its
 * Mach cones, leading edges inside or outside them; sharp edges add Busemann's second order, in proportion, which moves the force
 * forward. A smooth cubic between.
 *
 * @param section thickness over mean chord and the kinds of edges
 * @returns functions of Mach number ≥ 0; supersonic results are worked out when first asked for
 * @source `subsonicFinSlope`, `finLift`, `busemann`
 * @example
 * const edges = { leading: "round", trailing: "square", thicknessRatio: 0.02 } as const;
 * finForce({ kind: "ellipse", root: 0.15, span: 0.1 }, edges).slopeAt(0); // 2.3071237
 */
export function finForce(shape: FinShape, section: FinSection & { readonly thicknessRatio: number }): FinForce {
  const planform = finPlanform(shape);
  const lift = finLift(shape);
  const facing = section.leading === "sharp" ? section.thicknessRatio : 0;
  const leaving = section.trailing === "sharp" ? section.thicknessRatio : 0;
  const solved = new Map<number, ReturnType<typeof lift>>();
  const liftAt = (mach: number) => {
    const known = solved.get(mach) ?? lift(mach);
    solved.set(mach, known);
    return known;
  };
  /** What is left of Ackeret's plane flow. */
  const shareAt = overMach((mach) => liftAt(mach).slopeArea / (2 * busemann(mach).first * planform.area));
  const flatCpAt = overMach((mach) => liftAt(mach).at);
  const slopeAt = (mach: number) => {
    const { first, second } = busemann(mach, section.thicknessRatio);
    return shareAt(mach) * (2 * first + 2 * second * (facing - leaving));
  };
  const cpAt = (mach: number) => {
    const { first, second } = busemann(mach, section.thicknessRatio);
    const thick = (second / first) * (facing - leaving);
    const turning = (second / first) * (facing / 4 - (3 * leaving) / 4);
    const shift = (turning - thick / 2) / (1 + thick);
    return flatCpAt(mach) + shareAt(mach) * shift * planform.meanChord;
  };
  return {
    slopeAt: bridgeOverMach((mach) => subsonicFinSlope(planform, mach), slopeAt),
    cpAt: bridgeOverMach(() => planform.quarterChordAt, cpAt),
  };
}
