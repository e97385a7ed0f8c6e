import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type GroundPoint,
  insidePolygon,
  insideZone,
  shareInAny,
  shareInside,
  shareOutside,
  type Zone,
} from "./landing-zone.js";

const at = (east: number, north: number): GroundPoint => ({ east, north });
const polygon = (...corners: (readonly [number, number])[]): GroundPoint[] => corners.map(([e, n]) => at(e, n));

const square = polygon([0, 0], [10, 0], [10, 10], [0, 10]);
/** A square with a notch cut in from the north down to (5, 4). */
const notched = polygon([0, 0], [10, 0], [10, 10], [5, 4], [0, 10]);

test("insidePolygon() knows a concave polygon's notch", () => {
  for (const corners of [notched, [...notched].reverse()]) {
    expect(insidePolygon(at(5, 3), corners)).toBe(true);
    expect(insidePolygon(at(5, 5), corners)).toBe(false);
    expect(insidePolygon(at(1, 7), corners)).toBe(true);
    expect(insidePolygon(at(9, 7), corners)).toBe(true);
    expect(insidePolygon(at(5, 11), corners)).toBe(false);
    expect(insidePolygon(at(-1, 4), corners)).toBe(false);
  }
});

test("insidePolygon() gives a shared edge to one of two neighbours", () => {
  const east = square.map((p) => at(p.east + 10, p.north));
  const north = square.map((p) => at(p.east, p.north + 10));
  for (const s of [0, 2.5, 9]) {
    expect([square, east].filter((p) => insidePolygon(at(10, s), p))).toEqual([east]);
    expect([square, north].filter((p) => insidePolygon(at(s, 10), p))).toEqual([north]);
    expect(insidePolygon(at(0, s), square)).toBe(true);
    expect(insidePolygon(at(s, 0), square)).toBe(true);
  }
});

test("insidePolygon() passes a ray through corners once", () => {
  const diamond = polygon([0, -5], [5, 0], [0, 5], [-5, 0]);
  expect(insidePolygon(at(0, 0), diamond)).toBe(true);
  expect(insidePolygon(at(-6, 0), diamond)).toBe(false);
  expect(insidePolygon(at(-6, 5), diamond)).toBe(false);
});

test("insidePolygon() of fewer than three corners holds nothing", () => {
  expect(insidePolygon(at(0, 0), [])).toBe(false);
  expect(insidePolygon(at(0, 0), polygon([0, 0], [1, 1]))).toBe(false);
});

const metres = fc.double({ min: -100, max: 100, noNaN: true });
const place = fc.record({ east: metres, north: metres });
const corners = fc.array(place, { minLength: 3, maxLength: 8 });

/** Distance from a polygon's outline: nearer than rounding reaches, a point's side means nothing. */
function fromOutline({ east, north }: GroundPoint, outline: readonly GroundPoint[]): number {
  return Math.min(
    ...outline.map((b, i) => {
      const a = outline.at(i - 1)!;
      const [e, n] = [b.east - a.east, b.north - a.north];
      const length2 = e * e + n * n;
      const s = length2 === 0 ? 0 : ((east - a.east) * e + (north - a.north) * n) / length2;
      const t = Math.min(1, Math.max(0, s));
      return Math.hypot(east - a.east - t * e, north - a.north - t * n);
    }),
  );
}

test("insidePolygon() does not change when point and polygon are moved and turned together", () => {
  fc.assert(
    fc.property(place, corners, place, fc.double({ min: -4, max: 4, noNaN: true }), (point, outline, shift, angle) => {
      fc.pre(fromOutline(point, outline) > 1e-6);
      const [c, s] = [Math.cos(angle), Math.sin(angle)];
      const moved = ({ east, north }: GroundPoint) =>
        at(c * east - s * north + shift.east, s * east + c * north + shift.north);
      expect(insidePolygon(moved(point), outline.map(moved))).toBe(insidePolygon(point, outline));
    }),
  );
});

test("insidePolygon() does not depend on where the outline starts nor which way it runs", () => {
  fc.assert(
    fc.property(place, corners, fc.nat(7), (point, outline, first) => {
      fc.pre(fromOutline(point, outline) > 1e-6);
      const turned = [...outline.slice(first % outline.length), ...outline.slice(0, first % outline.length)];
      expect(insidePolygon(point, turned)).toBe(insidePolygon(point, outline));
      expect(insidePolygon(point, [...outline].reverse())).toBe(insidePolygon(point, outline));
    }),
  );
});

test("insideZone() of a circle agrees with a polygon of many corners, and holds its edge", () => {
  const circle: Zone = { kind: "circle", east: 3, north: -4, radius: 50 };
  const points = Array.from({ length: 20_000 }, (_, i) =>
    at(3 + 50 * Math.cos((i * Math.PI) / 10_000), -4 + 50 * Math.sin((i * Math.PI) / 10_000)),
  );
  fc.assert(
    fc.property(place, (point) => {
      // the polygon lies within 1e-6 of the circle
      fc.pre(Math.abs(Math.hypot(point.east - 3, point.north + 4) - 50) > 1e-5);
      expect(insideZone(point, circle)).toBe(insideZone(point, { kind: "polygon", points }));
    }),
    { numRuns: 50 },
  );
  expect(insideZone(at(33, 36), circle)).toBe(true);
});

test("shareInside() and shareOutside() share out all places, rows without a number left out", () => {
  const places = {
    east: Float64Array.of(5, 5, 20, Number.NaN, 1),
    north: Float64Array.of(3, 5, 0, 1, Number.NaN),
  };
  const zone: Zone = { kind: "polygon", points: notched };
  expect(shareInside(places, zone)).toBeCloseTo(1 / 3, 15);
  expect(shareOutside(places, zone)).toBeCloseTo(2 / 3, 15);
  expect(shareInside({ east: [], north: [] }, zone)).toBe(0);
  expect(shareOutside({ east: [Number.NaN], north: [0] }, zone)).toBe(0);
});

test("shareInside() of evenly spread places is the zone's share of the area", () => {
  const grid = Array.from(
    { length: 10_000 },
    (_, i) => [0.05 + 0.1 * (i % 100), 0.05 + 0.1 * Math.floor(i / 100)] as const,
  );
  const places = { east: grid.map(([e]) => e), north: grid.map(([, n]) => n) };
  // the notch takes a triangle of base 10 and height 6 out of 100 m²; a grid misses an edge by half a cell
  expect(Math.abs(shareInside(places, { kind: "polygon", points: notched }) - 0.7)).toBeLessThan(0.01);
  expect(Math.abs(shareInside(places, { kind: "circle", east: 5, north: 5, radius: 4 }) - 0.16 * Math.PI)).toBeLessThan(
    0.01,
  );
});

test("shareInAny() counts a place in two zones once, and leaves out what is no place", () => {
  const places = { east: [0, 10, 60, Number.NaN], north: [0, 0, 0, 0] };
  const circle = (east: number, radius: number): Zone => ({ kind: "circle", east, north: 0, radius });
  const zones = [circle(0, 15), circle(10, 5), circle(60, 1)];
  expect(shareInAny(places, zones)).toBe(1);
  expect(shareInAny(places, zones.slice(0, 2))).toBeCloseTo(2 / 3, 12);
  expect(shareInAny(places, [])).toBe(0);
  expect(shareInAny({ east: [], north: [] }, zones)).toBe(0);
});
