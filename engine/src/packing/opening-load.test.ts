import fc from "fast-check";
import { expect, test } from "vitest";
import { ballisticParameter, forceReduction, openingLoad, strengthSpeed } from "./opening-load.js";
import type { Canopy } from "./recovery.js";

const canopy: Canopy = { shape: "hemispherical", diameter: 1.1 };
const growths = fc.constantFrom<1 | 2>(1, 2);

test("forceReduction() is the greatest of q · area while the mass slows down (brute force)", () => {
  for (const growth of [1, 2] as const)
    for (const ballistic of [0.05, 0.3, 1, 4, 50]) {
      // dv/ds = −v² s^j/A in units of filling time and line-stretch speed: v = 1/(1 + s^(j+1)/(A (j+1)))
      let greatest = 0;
      for (let i = 0; i <= 100_000; i++) {
        const s = i / 100_000;
        const speed = 1 / (1 + s ** (growth + 1) / (ballistic * (growth + 1)));
        greatest = Math.max(greatest, s ** growth * speed * speed);
      }
      expect(forceReduction(ballistic, growth)).toBeCloseTo(greatest, 8);
    }
});

test("forceReduction() grows with the ballistic parameter from 0 to 1", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), growths, (ballistic, growth) => {
      const reduction = forceReduction(ballistic, growth);
      expect(reduction).toBeGreaterThan(0);
      expect(reduction).toBeLessThan(1);
      expect(forceReduction(ballistic * 1.01, growth)).toBeGreaterThan(reduction);
    }),
  );
});

test("ballisticParameter() does not depend on the speed: the filling distance is fixed", () => {
  const opening = { mass: 1.6, density: 1.1, canopy };
  expect(openingLoad(opening, 10).ballistic).toBe(openingLoad(opening, 40).ballistic);
  expect(ballisticParameter({ mass: 1, dragArea: 2, density: 1, fillDistance: 4 })).toBe(0.25);
});

test("strengthSpeed() is where openingLoad() equals the strength", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.3, max: 20, noNaN: true }),
      fc.double({ min: 0.6, max: 1.3, noNaN: true }),
      fc.double({ min: 200, max: 5000, noNaN: true }),
      (mass, density, strength) => {
        const speed = strengthSpeed({ mass, density, canopy, strength, gravity: 9.8 });
        expect(openingLoad({ mass, density, canopy }, speed).force / strength).toBeCloseTo(1, 9);
      },
    ),
  );
});

test("strengthSpeed() is zero where the weight alone is too much", () => {
  expect(strengthSpeed({ mass: 2, density: 1.2, canopy, strength: 19, gravity: 9.8 })).toBe(0);
});
