import { expect, test } from "vitest";
import { openingFindings } from "./opening-findings.js";
import type { OpeningPoint } from "./packing-inputs.js";
import type { Recovery } from "./recovery.js";
import { shearPin } from "./shear-pins.js";
import { openingStrength } from "./weakest-part.js";

const main = { canopy: { shape: "hemispherical", diameter: 1.5 }, strength: 1100 } as const;
const drogue = { canopy: { shape: "cross", diameter: 0.4 }, strength: 700 } as const;
const single: Recovery = { motorCharge: "primary", lineStretch: 0.5, main, harness: { strength: 900 } };
const dual: Recovery = { ...single, drogue };
const at = (which: "drogue" | "main", airspeed = 20): OpeningPoint => ({ which, airspeed, density: 1.1, gravity: 9.8 });
const stillShut = [{ size: "4-40", count: 3 }];

test("openingFindings() judges each opening by its own canopy", () => {
  const { openings, stillShut: shut } = openingFindings({
    mass: 3,
    recovery: dual,
    openings: [at("drogue", 25), at("main", 18)],
  });
  expect(shut).toBeNull();
  expect(openings.map(({ which, airspeed }) => [which, airspeed])).toEqual([
    ["drogue", 25],
    ["main", 18],
  ]);
  for (const [i, part] of [drogue, main].entries()) {
    const { ratings, airspeed, load } = openings[i]!;
    const expected = openingStrength({ mass: 3, density: 1.1, gravity: 9.8, canopy: part.canopy, airspeed }, ratings);
    expect(load).toEqual(expected.load);
    expect(openings[i]!.margin).toBe(expected.margin);
    expect(ratings).toEqual([
      { part: "canopy", strength: part.strength },
      { part: "harness", strength: 900 },
    ]);
  }
  expect(openings.map(({ weakest }) => weakest?.part)).toEqual(["canopy", "harness"]);
});

test("openingFindings() loads the pins that must hold at the first opening alone, at their root", () => {
  const found = openingFindings({ mass: 3, recovery: dual, stillShut, openings: [at("drogue"), at("main")] });
  const pins = { part: "pins", strength: expect.closeTo(3 * shearPin("4-40")!.load.root, 9) };
  expect(found.openings[0]!.ratings).toContainEqual(pins);
  expect(found.openings[0]!.weakest).toEqual(pins);
  expect(found.openings[1]!.ratings.map(({ part }) => part)).toEqual(["canopy", "harness"]);
  const alone = openingFindings({ mass: 3, recovery: single, stillShut, openings: [at("main")] });
  expect(alone.openings[0]!.weakest).toEqual(pins);
});

test("openingFindings() of pins of unknown size rates them not, and says so", () => {
  const found = openingFindings({
    mass: 3,
    recovery: dual,
    stillShut: [{ size: "M3", count: 2 }],
    openings: [at("drogue")],
  });
  expect(found.stillShut?.unknown).toEqual(["M3"]);
  expect(found.openings[0]!.ratings.map(({ part }) => part)).not.toContain("pins");
});

test("openingFindings() counts rated fittings and leaves unrated parts out", () => {
  const bare: Recovery = { motorCharge: "primary", lineStretch: 0.5, main: { canopy: main.canopy } };
  const of = (fittings: object) =>
    openingFindings({ mass: 3, recovery: bare, ...fittings, openings: [at("main")] }).openings[0]!;
  expect(of({ fittingsStrength: 500 }).weakest).toEqual({ part: "fittings", strength: 500 });
  expect(of({})).toMatchObject({ ratings: [], weakest: null, margin: null });
  expect(openingFindings({ mass: 3, recovery: bare, openings: [at("drogue")] }).openings).toEqual([]);
});
