import fc from "fast-check";
import { expect, test } from "vitest";
import { thinned } from "./thinned.js";

const x = Float64Array.from({ length: 10_000 }, (_, i) => i / 100);

test("thinned() keeps the highest and the lowest point, rising times and at most the points wanted", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 9998 }), fc.integer({ min: 4, max: 900 }), (at, most) => {
      const y = x.map((t, i) => Math.sin(t) + (i === at ? 40 : 0) - (i === 5000 ? 30 : 0));
      const few = thinned(x, y, 0, 100, most);
      expect(few.x.length).toBeLessThanOrEqual(most);
      expect(Math.max(...few.y)).toBe(Math.max(...y));
      expect(Math.min(...few.y)).toBe(Math.min(...y));
      for (let i = 1; i < few.x.length; i++) expect(few.x[i]!).toBeGreaterThan(few.x[i - 1]!);
    }),
  );
});

test("thinned() of a short stretch gives every point in it and one beyond each edge", () => {
  const few = thinned(x, x, 10.005, 10.045, 100);
  expect([...few.x]).toEqual([10, 10.01, 10.02, 10.03, 10.04, 10.05]);
});

test("thinned() leaves out what is no number, and gives nothing of nothing", () => {
  expect([...thinned(Float64Array.of(0, 1, 2), Float64Array.of(1, Number.NaN, 3), 0, 2, 10).x]).toEqual([0, 2]);
  expect(thinned(new Float64Array(0), new Float64Array(0), 0, 1, 10).x.length).toBe(0);
});
