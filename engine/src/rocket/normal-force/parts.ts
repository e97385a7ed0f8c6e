import { bodyDiameterAt, bodyStretches, referenceArea } from "../outline.js";
import type { FinSet, Rocket } from "../rocket.js";
import { bodyInterference, finChordFraction, finCountFactor, finSlopeOverMach } from "./fins.js";
import { noseNormalForce, type SlenderPart } from "./nose.js";
import { finPlanform } from "./planform.js";
import { transitionNormalForce } from "./transition.js";

/** One part of the rocket that makes normal force. */
export interface Part {
  readonly kind: "nose" | "transition" | "fins";
  /** Normal-force slope at Mach 0 [1/rad] on the reference area. */
  readonly slope: number;
  /** Centre of pressure at Mach 0, from the nose tip [m]. */
  readonly at: number;
  /** Slope at a Mach number [1/rad]. */
  readonly slopeAt: (mach: number) => number;
  /** Centre of pressure at a Mach number, from the nose tip [m]. */
  readonly cpAt: (mach: number) => number;
}

function slenderPart(kind: "nose" | "transition", { slope, at }: SlenderPart): Part {
  return { kind, slope, at, slopeAt: () => slope, cpAt: () => at };
}

function finPart(rocket: Rocket, fins: FinSet): Part {
  const planform = finPlanform(fins.shape);
  const radius = bodyDiameterAt(rocket, fins.at + planform.rootChord / 2) / 2;
  const factor =
    finCountFactor(fins.count) *
    bodyInterference(radius, planform.span) *
    (planform.area / referenceArea(rocket.diameter));
  const oneFin = finSlopeOverMach(planform);
  const fraction = finChordFraction(planform);
  const slopeAt = (mach: number) => factor * oneFin(mach);
  const cpAt = (mach: number) => fins.at + planform.quarterChordAt + (fraction(mach) - 0.25) * planform.meanChord;
  return { kind: "fins", slope: slopeAt(0), at: cpAt(0), slopeAt, cpAt };
}

/**
 * Every part that makes normal force, from nose to tail. Tubes make none at small angles.
 *
 * Small angles of attack, attached flow. The body's diameter beside a fin is that at the middle of its root. A ring of one or
 * two fins counts as nothing, since its weakest plane rules; `rocketIssues` reports it.
 *
 * @param rocket without issues (see `rocketIssues`)
 * @returns nose, transitions, fin sets
 * @source J. S. Barrowman, thesis, Catholic University of America, 1967, section 3; memory
 * @example
 * normalForceParts(exampleRocket).map((part) => part.kind); // ["nose", "fins"]
 */
export function normalForceParts(rocket: Rocket): readonly Part[] {
  const transitions = bodyStretches(rocket)
    .filter((stretch) => stretch.kind === "transition" && stretch.foreDiameter !== stretch.aftDiameter)
    .map((stretch) =>
      transitionNormalForce({ ...stretch, at: stretch.start, length: stretch.end - stretch.start }, rocket.diameter),
    );
  return [
    slenderPart("nose", noseNormalForce(rocket.nose, rocket.diameter)),
    ...transitions.map((transition) => slenderPart("transition", transition)),
    ...rocket.finSets.map((fins) => finPart(rocket, fins)),
  ];
}

/**
 * Normal-force slope of the whole rocket.
 *
 * @param mach ≥ 0
 * @returns [1/rad] on the reference area
 * @example
 * slopeOf(normalForceParts(exampleRocket), 0); // 17.3004569
 */
export function slopeOf(parts: readonly Part[], mach: number): number {
  return parts.reduce((sum, part) => sum + part.slopeAt(mach), 0);
}

/**
 * Centre of pressure of the whole rocket at zero angle of attack.
 *
 * @param mach ≥ 0
 * @returns from the nose tip [m]
 * @source moments of the parts about the tip over their sum; Barrowman 1967
 * @example
 * cpOf(normalForceParts(exampleRocket), 0); // 1.2218474
 */
export function cpOf(parts: readonly Part[], mach: number): number {
  return parts.reduce((sum, part) => sum + part.slopeAt(mach) * part.cpAt(mach), 0) / slopeOf(parts, mach);
}
