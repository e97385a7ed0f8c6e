import { expect, test } from "vitest";
import type { Zone } from "../packing/landing-zone.js";
import { landedOf } from "./landed.js";

const places = {
  east: Float64Array.of(0, 10, 60, 300, Number.NaN),
  north: Float64Array.of(0, 0, 0, 0, Number.NaN),
};
const circle = (east: number, radius: number): Zone => ({ kind: "circle", east, north: 0, radius });

test("landedOf() counts what came down, beyond the edge and in each zone", () => {
  const landed = landedOf(places, {
    boundary: circle(0, 100),
    keepOff: [circle(0, 20), circle(10, 5), circle(-90, 5)],
  });
  expect(landed).toMatchObject({ draws: 4, outside: 0.25, keepOff: 0.5, zones: [0.5, 0.25, 0] });
  expect(landed.p95!.major).toBeGreaterThan(landed.p50!.major);
});

test("landedOf() keeps how many could not be followed beside the shares of the others", () => {
  const counted = landedOf({ ...places, notFollowed: 1 }, { boundary: circle(0, 100) });
  expect(counted).toMatchObject({ draws: 4, notFollowed: 1, outside: 0.25 });
  expect(landedOf(places, {}).notFollowed).toBe(0);
});

test("landedOf() tells apart what is not known and what is nowhere", () => {
  expect(landedOf(places, {})).toMatchObject({ outside: null, keepOff: null, zones: [] });
  expect(landedOf(places, { keepOff: [] })).toMatchObject({ keepOff: null, zones: [] });
  expect(landedOf(places, { keepOff: [circle(-90, 5)] })).toMatchObject({ keepOff: 0 });
  expect(landedOf({ east: [], north: [] }, { boundary: circle(0, 9) })).toMatchObject({
    draws: 0,
    p50: null,
    p95: null,
  });
});
