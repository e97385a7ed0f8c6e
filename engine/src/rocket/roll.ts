import type { Part } from "./normal-force/parts.js";
import { finPlanform } from "./normal-force/planform.js";
import { bodyDiameterAt } from "./outline.js";
import type { FinSet, FinShape, Rocket } from "./rocket.js";

/** What one ring of fins does in roll, on the reference area: moment = q (slope · cant · forcing − slope · p/V · damping). */
export interface FinRoll {
  /** Slope of all fins together [1/rad] at a Mach number, every fin in its own plane. */
  readonly slopeAt: (mach: number) => number;
  /** [rad], positive turns the body right-handed about its axis towards the nose. */
  readonly cant: number;
  /** Arm of the force of canted fins, area over its moment about the axis [m]. */
  readonly forcing: number;
  /** Mean square distance of the fin's area from the axis [m²]. */
  readonly damping: number;
}

/** Area's first and second moments about the root over the area: ȳ [m] and its mean square [m²]. */
function spanMoments(shape: FinShape): { readonly mean: number; readonly square: number } {
  if (shape.kind === "trapezoid") {
    const { root, tip, span } = shape;
    const chords = root + tip;
    return { mean: (span * (root + 2 * tip)) / (3 * chords), square: (span ** 2 * (root + 3 * tip)) / (6 * chords) };
  }
  if (shape.kind === "ellipse") return { mean: (4 * shape.span) / (3 * Math.PI), square: shape.span ** 2 / 4 };
  return polygonMoments(shape.points);
}

/** Closed forms over the polygon's triangles to the origin. */
function polygonMoments(points: readonly (readonly [number, number])[]): { mean: number; square: number } {
  let area = 0;
  let first = 0;
  let second = 0;
  points.forEach(([x1, y1], i) => {
    const [x2, y2] = points[(i + 1) % points.length]!;
    const cross = x1 * y2 - x2 * y1;
    area += cross / 2;
    first += (cross * (y1 + y2)) / 6;
    second += (cross * (y1 * y1 + y1 * y2 + y2 * y2)) / 12;
  });
  return { mean: first / area, square: second / area };
}

function finRoll(rocket: Rocket, fins: FinSet, part: Part): FinRoll {
  const planform = finPlanform(fins.shape);
  const radius = bodyDiameterAt(rocket, fins.at + planform.rootChord / 2) / 2;
  const { mean, square } = spanMoments(fins.shape);
  return {
    // N fins in one plane push with half of what all of them push with in their own
    slopeAt: (mach) => 2 * part.slopeAt(mach),
    cant: fins.cant ?? 0,
    forcing: radius + mean,
    damping: radius * radius + 2 * radius * mean + square,
  };
}

/** Fins that make normal force whatever the roll. */
const FEWEST_FINS = 3;

/**
 * Roll forcing and damping of every ring of fins that makes normal force.
 *
 * Strip theory: each strip of a fin meets the air at its own angle, cant less p y/V, with the whole fin's slope beside the body. The
 * steady roll rate V cant · forcing/damping does not depend on that slope. A ring of one or two fins is left out, as in the normal force.
 *
 * @param rocket without issues (see `rocketIssues`)
 * @param parts its parts, those of the fins in the rocket's order
 * @source J. S. Barrowman, thesis, Catholic University of America, 1967 (roll forcing and damping by strips); memory
 * @example
 * finRolls(exampleRocket, normalForceParts(exampleRocket))[0]?.forcing; // 0.07744444
 */
export function finRolls(rocket: Rocket, parts: readonly Part[]): readonly FinRoll[] {
  const fins = parts.filter((part) => part.kind === "fins");
  return rocket.finSets.flatMap((set, i) => {
    const part = fins[i];
    return part !== undefined && set.count >= FEWEST_FINS ? [finRoll(rocket, set, part)] : [];
  });
}

/**
 * Moment of inertia about the axis, without motor, where nobody measured it.
 *
 * All mass in a thin tube of the reference diameter: parts on the axis lower it, fins raise it.
 *
 * @returns [kg m²]
 * @source thin tube, m D²/4
 * @example
 * estimateRollInertia({ mass: 0.9, diameter: 0.066 }); // 0.0009801
 */
export function estimateRollInertia({ mass, diameter }: { readonly mass: number; readonly diameter: number }): number {
  return (mass * diameter * diameter) / 4;
}
