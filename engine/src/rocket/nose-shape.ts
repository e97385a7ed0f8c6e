import { integrateUnit } from "./quadrature.js";
import type { NoseShape } from "./rocket.js";

/** Above this fineness the ogive's closed form loses digits, so its volume is integrated instead. */
const SLENDER_OGIVE = 10;

/** Radius of the ogive's arc over the base radius. */
const ogiveArc = (fineness: number) => 0.5 + 2 * fineness * fineness;

const haackAngle = (s: number) => Math.acos(Math.min(1, Math.max(-1, 1 - 2 * s)));

/**
 * Radius of the nose over its base radius.
 *
 * @param fineness length over base diameter, ≥ 0.5 (only the ogive depends on it)
 * @param s way from the tip over the length, 0…1
 * @returns 0 at the tip, 1 at the base
 * @source the shapes' definitions: tangent ogive (an arc of a circle, tangent to the tube), tangent parabola 2s − s²,
 * half ellipsoid, power series sⁿ, and Haack's series in θ = acos(1 − 2s) with parameter c
 * @example
 * noseRadius({ kind: "power", exponent: 0.5 }, 4, 0.25); // 0.5
 */
export function noseRadius(shape: NoseShape, fineness: number, s: number): number {
  switch (shape.kind) {
    case "cone":
      return s;
    case "ogive": {
      const offset = ogiveArc(fineness) - 1;
      const rise = 4 * fineness * fineness * s * (2 - s);
      return s <= 0 ? 0 : rise / (Math.sqrt(offset * offset + rise) + offset);
    }
    case "parabola":
      return s * (2 - s);
    case "ellipsoid":
      return Math.sqrt(s * (2 - s));
    case "haack": {
      const angle = haackAngle(s);
      return Math.sqrt(Math.max(0, angle - Math.sin(2 * angle) / 2 + shape.c * Math.sin(angle) ** 3) / Math.PI);
    }
    case "power":
      return s ** shape.exponent;
  }
}

/** Half the slope of the squared profile, r·dr/ds: finite where the slope itself is not. */
function radiusTimesSlope(shape: NoseShape, fineness: number, s: number): number {
  switch (shape.kind) {
    case "cone":
      return s;
    case "ogive": {
      const offset = ogiveArc(fineness) - 1;
      const square = 4 * fineness * fineness;
      return (noseRadius(shape, fineness, s) * square * (1 - s)) / Math.sqrt(offset * offset + square * s * (2 - s));
    }
    case "parabola":
      return s * (2 - s) * (2 - 2 * s);
    case "ellipsoid":
      return 1 - s;
    case "haack": {
      const angle = haackAngle(s);
      return (Math.sin(angle) * (2 + 3 * shape.c * Math.cos(angle))) / Math.PI;
    }
    case "power":
      return shape.exponent * s ** (2 * shape.exponent - 1);
  }
}

/**
 * Volume of the nose over that of the cylinder around it.
 *
 * @param fineness length over base diameter, ≥ 0.5 (only the ogive depends on it)
 * @returns 0…1, exact to 1e-11
 * @source closed forms of the shapes; Barrowman 1967 needs it for the centre of pressure
 * @example
 * noseVolumeFraction({ kind: "haack", c: 1 / 3 }, 5); // 0.5625
 */
export function noseVolumeFraction(shape: NoseShape, fineness: number): number {
  switch (shape.kind) {
    case "cone":
      return 1 / 3;
    case "ogive": {
      if (fineness > SLENDER_OGIVE) return integrateUnit((s) => noseRadius(shape, fineness, s) ** 2);
      const length = 2 * fineness;
      const arc = ogiveArc(fineness);
      const offset = arc - 1;
      const segment = length * offset + arc * arc * Math.asin(length / arc);
      return arc * arc - (length * length) / 3 + offset * offset - (offset * segment) / length;
    }
    case "parabola":
      return 8 / 15;
    case "ellipsoid":
      return 2 / 3;
    case "haack":
      return 1 / 2 + (3 * shape.c) / 16;
    case "power":
      return 1 / (2 * shape.exponent + 1);
  }
}

/**
 * Area of the nose seen from the side, and where its centroid is.
 *
 * @param length [m], > 0
 * @param diameter of the base [m], > 0
 * @returns area [m²] and centroid from the tip [m], to 1e-10
 * @example
 * noseSideArea({ kind: "cone" }, 0.3, 0.1); // { area: 0.015, centroid: 0.2 }
 */
export function noseSideArea(shape: NoseShape, length: number, diameter: number): { area: number; centroid: number } {
  const fineness = length / diameter;
  const zeroth = integrateUnit((s) => noseRadius(shape, fineness, s));
  const first = integrateUnit((s) => s * noseRadius(shape, fineness, s));
  return { area: zeroth * length * diameter, centroid: (first / zeroth) * length };
}

/**
 * Outer surface of the nose without its base.
 *
 * @param length [m], > 0
 * @param diameter of the base [m], > 0
 * @returns [m²], to 1e-10
 * @example
 * noseWettedArea({ kind: "ellipsoid" }, 0.05, 0.1); // half a sphere: 0.0157079633
 */
export function noseWettedArea(shape: NoseShape, length: number, diameter: number): number {
  const fineness = length / diameter;
  const radius = diameter / 2;
  const ring = (s: number) =>
    Math.hypot(length * noseRadius(shape, fineness, s), radius * radiusTimesSlope(shape, fineness, s));
  return 2 * Math.PI * radius * integrateUnit(ring);
}

/**
 * Angle between the nose's surface and the tube where they meet: zero for shapes that run out tangent.
 *
 * @param fineness length over base diameter, > 0
 * @returns [rad], 0…π/2
 * @example
 * noseJointAngle({ kind: "cone" }, 0.5); // 0.7853981634
 */
export function noseJointAngle(shape: NoseShape, fineness: number): number {
  if (shape.kind === "cone") return Math.atan(0.5 / fineness);
  if (shape.kind === "power") return Math.atan((0.5 * shape.exponent) / fineness);
  return 0;
}
