import fc from "fast-check";
import { expect, test } from "vitest";
import { quantilesOf } from "./quantiles.js";

/** The plain way: sort, then look. */
function bySorting(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below]!;
  return low + (place - below) * (sorted[Math.min(below + 1, sorted.length - 1)]! - low);
}

test("quantilesOf() is linear between sorted values", () => {
  expect(quantilesOf(Float64Array.of(8, 1, 4, 2), [0, 0.5, 0.75, 1])).toEqual(Float64Array.of(1, 3, 5, 8));
  expect(quantilesOf(Float64Array.of(7), [0.05, 0.9])).toEqual(Float64Array.of(7, 7));
});

test("quantilesOf() finds what sorting finds among many, however unevenly they lie", () => {
  const spread = fc.constantFrom(
    (u: number) => u,
    (u: number) => u ** 40,
    (u: number) => Math.round(4 * u),
    (u: number) => (u > 0.999 ? 1e12 : u),
    (u: number) => 1e-300 * u,
    (u: number) => (u > 0.99 ? Number.POSITIVE_INFINITY : -u),
    (u: number) => 1e9 + Math.floor(3 * u) * 2 ** -23,
  );
  const many = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 65, maxLength: 2000, size: "max" });
  const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(many, spread, shares, (drawn, lie, asked) => {
      const values = Float64Array.from(drawn, lie);
      const before = values.slice();
      const found = quantilesOf(values, asked);
      expect(Array.from(found, (q) => q + 0)).toEqual(asked.map((share) => bySorting([...values], share) + 0));
      expect(values).toEqual(before);
    }),
    { numRuns: 60 },
  );
});

test("quantilesOf() finds what sorting finds, ties and neighbouring shares included", () => {
  const number = fc.oneof(fc.integer({ min: -3, max: 3 }), fc.double({ min: -1e3, max: 1e3, noNaN: true }));
  const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(fc.array(number, { minLength: 1, maxLength: 300 }), shares, (values, asked) => {
      const rising = [...asked].sort((a, b) => a - b);
      const found = quantilesOf(Float64Array.from(values), rising);
      // adding zero makes one zero of both
      expect(Array.from(found, (q) => q + 0)).toEqual(rising.map((share) => bySorting(values, share) + 0));
    }),
  );
});
