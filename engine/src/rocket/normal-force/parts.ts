import { bodyDiameterAt, bodyStretches, referenceArea } from "../outline.js";
import type { FinSet, Rocket } from "../rocket.js";
import { noseFlow } from "../supersonic/nose-flow.js";
import { overMach } from "../supersonic/over-mach.js";
import { bridgeOverMach } from "./compressibility.js";
import { bodyInterference, finCountFactor, finForce } from "./fins.js";
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

function transitionPart({ slope, at }: SlenderPart): Part {
  return { kind: "transition", slope, at, slopeAt: () => slope, cpAt: () => at };
}

/** The nose, and above the speed of sound the tube behind it, up to where the diameter changes. */
function nosePart(rocket: Rocket): Part {
  const { nose, diameter, length, transitions } = rocket;
  const { slope, at } = noseNormalForce(nose, diameter);
  const flow = noseFlow(nose, diameter, (transitions[0]?.at ?? length) - nose.length);
  return {
    kind: "nose",
    slope,
    at,
    slopeAt: bridgeOverMach(
      () => slope,
      overMach((mach) => flow(mach).slope),
    ),
    cpAt: bridgeOverMach(
      () => at,
      overMach((mach) => flow(mach).at),
    ),
  };
}

function finPart(rocket: Rocket, fins: FinSet): Part {
  const planform = finPlanform(fins.shape);
  const radius = bodyDiameterAt(rocket, fins.at + planform.rootChord / 2) / 2;
  const factor =
    finCountFactor(fins.count) *
    bodyInterference(radius, planform.span) *
    (planform.area / referenceArea(rocket.diameter));
  const oneFin = finForce(fins.shape, {
    leading: fins.leadingEdge,
    trailing: fins.trailingEdge,
    thicknessRatio: fins.thickness / planform.meanChord,
  });
  const slopeAt = (mach: number) => factor * oneFin.slopeAt(mach);
  const cpAt = (mach: number) => fins.at + oneFin.cpAt(mach);
  return { kind: "fins", slope: slopeAt(0), at: cpAt(0), slopeAt, cpAt };
}

/**
 * Every part that makes normal force, from nose to tail. Tubes make none at small angles.
 *
 * Small angles of attack, attached flow; transitions keep slender-body theory at every Mach number. The body's diameter beside a fin is that at the middle of its root. A ring of one or
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
  return [nosePart(rocket), ...transitions.map(transitionPart), ...rocket.finSets.map((fins) => finPart(rocket, fins))];
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
