import fc from "fast-check";
import { expect, test } from "vitest";
import { openingLoad } from "./opening-load.js";
import type { Canopy } from "./recovery.js";
import { openingCaveats, openingStrength, type Rating, weakestOf } from "./weakest-part.js";

const canopy: Canopy = { shape: "hemispherical", diameter: 1.1 };
const opening = { mass: 2, density: 1.1, canopy, airspeed: 20, gravity: 9.8 };

test("weakestOf() is the lowest rating, wherever it stands, the first of equals", () => {
  const ratings: Rating[] = [
    { part: "canopy", strength: 1100 },
    { part: "harness", strength: 900 },
    { part: "fittings", strength: 900 },
    { part: "pins", strength: 950 },
  ];
  expect(weakestOf(ratings)).toEqual({ part: "harness", strength: 900 });
  expect(weakestOf([...ratings].reverse())).toEqual({ part: "fittings", strength: 900 });
  expect(weakestOf([{ part: "pins", strength: 0.5 }, ...ratings])?.part).toBe("pins");
  expect(weakestOf([])).toBeNull();
});

test("openingStrength() has a margin below 1 exactly above the strength speed", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 4000, noNaN: true }),
      fc.double({ min: 1, max: 80, noNaN: true }),
      (strength, airspeed) => {
        const found = openingStrength({ ...opening, airspeed }, [{ part: "harness", strength }]);
        fc.pre(Math.abs(airspeed - found.strengthSpeed!) > 1e-6 && Math.abs(strength - 19.6) > 1e-6);
        expect(found.margin! < 1).toBe(airspeed > found.strengthSpeed!);
      },
    ),
  );
});

test("openingStrength() gives the opening's load, and its margin against the weakest part", () => {
  const found = openingStrength(opening, [
    { part: "canopy", strength: 800 },
    { part: "fittings", strength: 300 },
  ]);
  const { mass, density } = opening;
  expect(found.load).toEqual(openingLoad({ mass, density, canopy }, 20));
  expect(found.greatest).toBe(found.load.force);
  expect(found.weakest).toEqual({ part: "fittings", strength: 300 });
  expect(found.margin).toBeCloseTo(300 / found.load.force, 12);
});

test("openingStrength() of a slow opening counts the hanging weight", () => {
  const found = openingStrength({ ...opening, airspeed: 0.5 }, [{ part: "harness", strength: 39.2 }]);
  expect(found.load.force).toBeLessThan(19.6);
  expect(found.greatest).toBeCloseTo(19.6, 12);
  expect(found.margin).toBeCloseTo(2, 12);
  expect(openingStrength(opening, [{ part: "harness", strength: 19 }]).strengthSpeed).toBe(0);
});

test("openingStrength() of unrated parts claims no margin", () => {
  expect(openingStrength(opening, [])).toMatchObject({ weakest: null, margin: null, strengthSpeed: null });
  expect(openingCaveats).toHaveLength(3);
});
