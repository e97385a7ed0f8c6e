import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { GroundPoint, Zone } from "./landing-zone.js";
import { smallestWidth } from "./zone-width.js";

const polygon = (...corners: readonly (readonly [number, number])[]): Zone => ({
  kind: "polygon",
  points: corners.map(([east, north]) => ({ east, north })),
});

const regular = (count: number, radius: number): Zone => ({
  kind: "polygon",
  points: Array.from({ length: count }, (_, i): GroundPoint => {
    const angle = (2 * Math.PI * i) / count;
    return { east: radius * Math.cos(angle), north: radius * Math.sin(angle) };
  }),
});

describe("smallestWidth()", () => {
  it.each<[string, Zone, number]>([
    ["a circle: its diameter", { kind: "circle", east: 5, north: -3, radius: 400 }, 800],
    ["a rectangle: its shorter side", polygon([0, 0], [700, 0], [700, 300], [0, 300]), 300],
    ["the same the other way round", polygon([0, 300], [700, 300], [700, 0], [0, 0]), 300],
    ["a right triangle of 3, 4, 5: the height over the longest side", polygon([0, 0], [300, 0], [0, 400]), 240],
    ["a regular triangle: its height, 3 R / 2", regular(3, 200), 300],
    ["a regular hexagon: between two sides, √3 R", regular(6, 200), 200 * Math.sqrt(3)],
    ["a corner on an edge changes nothing", polygon([0, 0], [350, 0], [700, 0], [700, 300], [0, 300]), 300],
  ])("%s (elementary geometry)", (_, zone, width) => {
    expect(smallestWidth(zone)).toBeCloseTo(width, 9);
  });

  it.each<[string, Zone]>([
    ["dented", polygon([0, 0], [400, 0], [400, 400], [200, 50], [0, 400])],
    ["crossing itself once", polygon([0, 0], [400, 400], [400, 0], [0, 400])],
    ["wound around twice", { kind: "polygon", points: [0, 2, 4, 1, 3].map((i) => regularPoint(i)) }],
    ["a line", polygon([0, 0], [100, 0], [200, 0])],
    ["a corner twice", polygon([0, 0], [0, 0], [400, 0], [400, 400])],
  ])("is not told of a polygon that is %s", (_, zone) => {
    expect(smallestWidth(zone)).toBeNull();
  });

  it("does not change when the ground is turned and moved", () => {
    // corners on a circle, at random: always convex
    const gaps = fc.array(fc.integer({ min: 1, max: 100 }), { minLength: 3, maxLength: 9 });
    fc.assert(
      fc.property(gaps, fc.double({ min: -3, max: 3, noNaN: true }), (steps, by) => {
        const whole = steps.reduce((sum, each) => sum + each, 0);
        let passed = 0;
        const corners = steps.map((each) => {
          passed += each;
          return (2 * Math.PI * passed) / whole;
        });
        const at = (angle: number, shift: number) => ({
          east: shift + 300 * Math.cos(angle),
          north: 300 * Math.sin(angle) - shift,
        });
        const still = smallestWidth({ kind: "polygon", points: corners.map((a) => at(a, 0)) });
        const moved = smallestWidth({ kind: "polygon", points: corners.map((a) => at(a + by, 50)) });
        expect(moved).toBeCloseTo(still ?? Number.NaN, 6);
        expect(still).toBeLessThanOrEqual(600 + 1e-9);
      }),
    );
  });
});

function regularPoint(i: number): GroundPoint {
  return { east: Math.cos((2 * Math.PI * i) / 5), north: Math.sin((2 * Math.PI * i) / 5) };
}
