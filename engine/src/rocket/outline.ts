import { noseRadius, noseSideArea, noseWettedArea } from "./nose-shape.js";
import type { Rocket } from "./rocket.js";

/** A stretch of the body behind the nose: a cylinder where both diameters agree, else a cone's frustum. */
export interface BodyStretch {
  readonly kind: "tube" | "transition";
  /** From the nose tip [m]. */
  readonly start: number;
  /** From the nose tip [m]. */
  readonly end: number;
  /** [m] */
  readonly foreDiameter: number;
  /** [m] */
  readonly aftDiameter: number;
}

/**
 * The body behind the nose as a row of tubes and transitions, up to the rocket's length.
 *
 * @returns in order from the nose, without gaps
 * @example
 * bodyStretches(exampleRocket).map((stretch) => stretch.kind); // ["tube"]
 */
export function bodyStretches(rocket: Rocket): readonly BodyStretch[] {
  const stretches: BodyStretch[] = [];
  let at = rocket.nose.length;
  let diameter = rocket.diameter;
  const tubeTo = (end: number) => {
    if (end > at) {
      stretches.push({ kind: "tube", start: at, end, foreDiameter: diameter, aftDiameter: diameter });
      at = end;
    }
  };
  for (const transition of rocket.transitions) {
    tubeTo(transition.at);
    const end = transition.at + transition.length;
    const { aftDiameter } = transition;
    stretches.push({ kind: "transition", start: transition.at, end, foreDiameter: diameter, aftDiameter });
    at = end;
    diameter = aftDiameter;
  }
  tubeTo(rocket.length);
  return stretches;
}

/**
 * Outer diameter of the body at a station.
 *
 * @param x from the nose tip [m]; before the tip it is 0, behind the tail the tail's
 * @returns [m]
 * @example
 * bodyDiameterAt(exampleRocket, 0.5); // 0.066
 */
export function bodyDiameterAt(rocket: Rocket, x: number): number {
  if (x <= 0) return 0;
  const { nose, diameter } = rocket;
  if (x < nose.length) return diameter * noseRadius(nose.shape, nose.length / diameter, x / nose.length);
  let last = diameter;
  for (const stretch of bodyStretches(rocket)) {
    if (x < stretch.end) {
      const way = (x - stretch.start) / (stretch.end - stretch.start);
      return stretch.foreDiameter + (stretch.aftDiameter - stretch.foreDiameter) * way;
    }
    last = stretch.aftDiameter;
  }
  return last;
}

/**
 * Side view of nose, tubes and transitions, without fins: what cross-flow pushes on.
 *
 * @returns area [m²] and centroid from the nose tip [m]
 * @example
 * bodyPlanform(exampleRocket).area; // 0.0924318890
 */
export function bodyPlanform(rocket: Rocket): { readonly area: number; readonly centroid: number } {
  const nose = noseSideArea(rocket.nose.shape, rocket.nose.length, rocket.diameter);
  let area = nose.area;
  let moment = nose.area * nose.centroid;
  for (const { start, end, foreDiameter, aftDiameter } of bodyStretches(rocket)) {
    const length = end - start;
    area += (length * (foreDiameter + aftDiameter)) / 2;
    moment += (length * (start * (foreDiameter + aftDiameter))) / 2;
    moment += (length * length * (foreDiameter + 2 * aftDiameter)) / 6;
  }
  return { area, centroid: moment / area };
}

/**
 * Outer surface of the body without its base and fins.
 *
 * @returns [m²]
 * @example
 * bodyWettedArea(exampleRocket); // 0.2905834
 */
export function bodyWettedArea(rocket: Rocket): number {
  let area = noseWettedArea(rocket.nose.shape, rocket.nose.length, rocket.diameter);
  for (const { start, end, foreDiameter, aftDiameter } of bodyStretches(rocket)) {
    const slant = Math.hypot(end - start, (aftDiameter - foreDiameter) / 2);
    area += (Math.PI * slant * (foreDiameter + aftDiameter)) / 2;
  }
  return area;
}

/**
 * Largest diameter of the body.
 *
 * @returns [m]
 * @example
 * largestDiameter(exampleRocket); // 0.066
 */
export function largestDiameter(rocket: Rocket): number {
  return Math.max(rocket.diameter, ...rocket.transitions.map((transition) => transition.aftDiameter));
}

/**
 * Diameter at the aft end.
 *
 * @returns [m]
 * @example
 * baseDiameter(exampleRocket); // 0.066
 */
export function baseDiameter(rocket: Rocket): number {
  return rocket.transitions.at(-1)?.aftDiameter ?? rocket.diameter;
}

/**
 * Fineness of the body: its length over its largest diameter.
 *
 * @returns ratio
 * @example
 * bodyFineness(exampleRocket); // 22.7272727
 */
export function bodyFineness(rocket: Rocket): number {
  return rocket.length / largestDiameter(rocket);
}

/**
 * Reference area of every coefficient: the circle of the reference diameter.
 *
 * @param diameter [m]
 * @returns [m²]
 * @example
 * referenceArea(0.066); // 0.00342119
 */
export function referenceArea(diameter: number): number {
  return (Math.PI * diameter * diameter) / 4;
}
