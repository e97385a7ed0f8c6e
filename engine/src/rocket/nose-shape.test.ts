import fc from "fast-check";
import { expect, test } from "vitest";
import { noseJointAngle, noseRadius, noseSideArea, noseVolumeFraction, noseWettedArea } from "./nose-shape.js";
import { integrateUnit } from "./quadrature.js";
import type { NoseShape } from "./rocket.js";

const shapes: fc.Arbitrary<NoseShape> = fc.oneof(
  fc.constantFrom<NoseShape>({ kind: "cone" }, { kind: "ogive" }, { kind: "parabola" }, { kind: "ellipsoid" }),
  fc.record({ kind: fc.constant("haack" as const), c: fc.double({ min: 0, max: 2 / 3, noNaN: true }) }),
  fc.record({ kind: fc.constant("power" as const), exponent: fc.double({ min: 0.2, max: 1, noNaN: true }) }),
);
const finenesses = fc.double({ min: 0.5, max: 40, noNaN: true });

test("noseRadius() runs from the tip to the base and never shrinks", () => {
  fc.assert(
    fc.property(shapes, finenesses, fc.double({ min: 0, max: 0.99, noNaN: true }), (shape, fineness, s) => {
      expect(noseRadius(shape, fineness, 0)).toBeCloseTo(0, 12);
      expect(noseRadius(shape, fineness, 1)).toBeCloseTo(1, 12);
      expect(noseRadius(shape, fineness, s + 0.01)).toBeGreaterThanOrEqual(noseRadius(shape, fineness, s) - 1e-12);
    }),
  );
});

test("noseVolumeFraction() lies within 0…1 and agrees with its profile to 1e-9", () => {
  fc.assert(
    fc.property(shapes, finenesses, (shape, fineness) => {
      const fraction = noseVolumeFraction(shape, fineness);
      expect(fraction).toBeGreaterThan(0);
      expect(fraction).toBeLessThan(1);
      expect(Math.abs(integrateUnit((s) => noseRadius(shape, fineness, s) ** 2) - fraction)).toBeLessThan(1e-9);
    }),
  );
});

test("noseVolumeFraction() of a hemisphere is two thirds whether ogive or ellipsoid", () => {
  expect(noseVolumeFraction({ kind: "ogive" }, 0.5)).toBeCloseTo(2 / 3, 12);
});

test("noseVolumeFraction() of the ogive tends to the parabola's", () => {
  expect(noseVolumeFraction({ kind: "ogive" }, 1000)).toBeCloseTo(8 / 15, 6);
  expect(noseVolumeFraction({ kind: "ogive" }, 10.0001)).toBeCloseTo(noseVolumeFraction({ kind: "ogive" }, 9.9999), 7);
});

test("noseSideArea() gives triangle and quarter circles", () => {
  const cone = noseSideArea({ kind: "cone" }, 0.3, 0.1);
  expect(cone.area).toBeCloseTo(0.015, 12);
  expect(cone.centroid).toBeCloseTo(0.2, 12);
  const half = noseSideArea({ kind: "ellipsoid" }, 0.05, 0.1);
  expect(half.area).toBeCloseTo((Math.PI * 0.05 ** 2) / 2, 11);
  expect(half.centroid).toBeCloseTo(0.05 - (4 * 0.05) / (3 * Math.PI), 11);
});

test("noseWettedArea() gives cone, hemisphere and paraboloid in closed form", () => {
  expect(noseWettedArea({ kind: "cone" }, 0.3, 0.1)).toBeCloseTo(Math.PI * 0.05 * Math.hypot(0.3, 0.05), 12);
  expect(noseWettedArea({ kind: "ellipsoid" }, 0.05, 0.1)).toBeCloseTo(2 * Math.PI * 0.05 ** 2, 11);
  expect(noseWettedArea({ kind: "ogive" }, 0.05, 0.1)).toBeCloseTo(2 * Math.PI * 0.05 ** 2, 11);
  const [r, h] = [0.05, 0.3];
  const paraboloid = ((Math.PI * r) / (6 * h * h)) * ((r * r + 4 * h * h) ** 1.5 - r ** 3);
  expect(noseWettedArea({ kind: "power", exponent: 0.5 }, h, 2 * r)).toBeCloseTo(paraboloid, 11);
});

test("noseWettedArea() lies between that of the side view and that of the cylinder around with its face", () => {
  fc.assert(
    fc.property(shapes, finenesses, (shape, fineness) => {
      const wetted = noseWettedArea(shape, fineness, 1);
      expect(wetted).toBeGreaterThan(Math.PI * noseSideArea(shape, fineness, 1).area);
      expect(wetted).toBeLessThan(Math.PI * fineness + Math.PI / 4);
    }),
  );
});

test("noseJointAngle() is the cone's half angle and zero where the shape runs out tangent", () => {
  expect(noseJointAngle({ kind: "cone" }, 0.5)).toBeCloseTo(Math.PI / 4, 12);
  expect(noseJointAngle({ kind: "power", exponent: 1 }, 3)).toBe(noseJointAngle({ kind: "cone" }, 3));
  expect(noseJointAngle({ kind: "haack", c: 0 }, 3)).toBe(0);
});
