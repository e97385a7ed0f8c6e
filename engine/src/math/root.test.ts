import fc from "fast-check";
import { expect, test } from "vitest";
import { rootBetween } from "./root.js";

test("rootBetween() finds a root within its tolerance, whichever end comes first", () => {
  expect(Math.abs(rootBetween((x) => x * x - 2, 0, 2, 1e-12) - Math.SQRT2)).toBeLessThan(1e-12);
  expect(Math.abs(rootBetween((x) => x * x - 2, 2, 0, 1e-12) - Math.SQRT2)).toBeLessThan(1e-12);
});

test("rootBetween() returns an end that is a root itself", () => {
  expect(rootBetween((x) => x - 1, 1, 3, 1e-9)).toBe(1);
  expect(rootBetween((x) => x - 3, 1, 3, 1e-9)).toBe(3);
});

test("rootBetween() finds the root of any rising cubic, however steep, in a bounded number of calls", () => {
  const size = { noNaN: true, noDefaultInfinity: true };
  fc.assert(
    fc.property(
      fc.double({ min: -5, max: 5, ...size }),
      fc.double({ min: 1e-3, max: 1e3, ...size }),
      (root, steepness) => {
        let calls = 0;
        const f = (x: number) => {
          calls += 1;
          return steepness * (x - root) ** 3 + 1e-3 * (x - root);
        };
        expect(Math.abs(rootBetween(f, -6, 7, 1e-10) - root)).toBeLessThan(1e-10);
        // bisection every third call alone needs 3 log2(13 / 1e-10) = 111
        expect(calls).toBeLessThan(120);
      },
    ),
  );
});

test("rootBetween() copes with a jump", () => {
  expect(Math.abs(rootBetween((x) => (x < 0.3 ? -1 : 1), 0, 1, 1e-9) - 0.3)).toBeLessThan(1e-9);
});
