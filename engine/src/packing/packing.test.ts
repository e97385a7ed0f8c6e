import { expect, test } from "vitest";
import { InputError } from "../issues.js";
import { bayFindings } from "./bay-findings.js";
import { descentSpeed } from "./canopy.js";
import { canopySizes } from "./canopy-size.js";
import { bayVolume } from "./ejection-charge.js";
import { landingEnergyLimit } from "./landing-energy.js";
import { openingFindings } from "./opening-findings.js";
import { defaultPackingOptions, packingOf } from "./packing.js";
import type { PackingInputs } from "./packing-inputs.js";
import { staticPortArea, staticPortDiameter } from "./static-port.js";

const canopy = { shape: "flat circular", diameter: 0.9144, cd: 0.75 } as const;
const bay = { diameter: 0.072, length: 0.25, pins: [{ size: "2-56", count: 2 }], friction: 20 };
const inputs: PackingInputs = {
  rocketLength: 1.5,
  mass: 1.35,
  recovery: {
    motorCharge: "primary",
    lineStretch: 0.5,
    main: { canopy, strength: 800 },
    harness: { length: 5, strength: 600 },
  },
  bay,
  motorCharge: { mass: 0.001, wellHolds: 0.0014 },
  openings: [{ which: "main", airspeed: 15, density: 1.1, gravity: 9.8 }],
  landing: { density: 1.225, gravity: 9.80665 },
};
const bare: PackingInputs = {
  rocketLength: 1.5,
  mass: 1.35,
  recovery: { motorCharge: "primary", lineStretch: 0.5, main: { canopy } },
  openings: [],
  landing: { density: 1.225, gravity: 9.80665 },
};

test("packingOf() says what its parts say", () => {
  const found = packingOf(inputs);
  expect(found.bay).toEqual(bayFindings(bay, { motorCharge: inputs.motorCharge, margin: 1.5 }));
  expect(found.openings).toEqual(openingFindings(inputs).openings);
  expect(found.openings[0]!.weakest?.part).toBe("harness");
  expect(found.stillShut).toBeNull();
  expect(found.harness).toEqual({ usual: { least: 4.5, most: 7.5 }, length: 5, code: "usual" });
  expect(found.options).toEqual(defaultPackingOptions);
});

test("packingOf() guesses nothing that was not given", () => {
  expect(packingOf(bare)).toMatchObject({
    bay: null,
    staticPorts: null,
    openings: [],
    stillShut: null,
    harness: { length: null, code: null },
  });
  expect(packingOf({ ...bare, bay }).bay?.motorCharge).toBeNull();
});

test("packingOf() makes the static ports for the electronics' bay, else for the charge's", () => {
  const electronicsBay = { diameter: 0.07, length: 0.1 };
  for (const [of, size, given] of [
    ["bay", bay, inputs],
    ["electronicsBay", electronicsBay, { ...inputs, electronicsBay }],
  ] as const) {
    const volume = bayVolume(size);
    expect(packingOf(given).staticPorts).toEqual({
      of,
      volume,
      area: staticPortArea(volume),
      holes: [1, 3, 4].map((count) => ({ count, diameter: staticPortDiameter({ volume, count }) })),
    });
  }
});

test("packingOf() descends as descentSpeed() does, faster with a spill hole", () => {
  const { canopy: whole } = packingOf(inputs);
  expect(whole.descentSpeed).toBe(descentSpeed({ mass: 1.35, density: 1.225, gravity: 9.80665, canopy }));
  const holed = packingOf({ ...inputs, spillHole: 0.1524 }).canopy;
  expect(holed.descentSpeed / whole.descentSpeed).toBeCloseTo(1 / Math.sqrt(0.9722222), 6);
  expect(holed.diameterForSpeed / whole.diameterForSpeed).toBeCloseTo(1 / Math.sqrt(0.9722222), 6);
});

test("packingOf() sizes the main's own type by its own coefficient, and every type in three numbers", () => {
  const { canopy: found } = packingOf(inputs, { landingSpeed: 6 });
  const own = { ...canopy, diameter: found.diameterForSpeed };
  expect(descentSpeed({ mass: 1.35, density: 1.225, gravity: 9.80665, canopy: own })).toBeCloseTo(6, 12);
  expect(found.sizes).toHaveLength(45);
  const aim = { mass: 1.35, density: 1.225, gravity: 9.80665, speed: 6 };
  expect(found.sizes).toEqual(([1, 2, 3] as const).flatMap((count) => canopySizes(aim, count)));
  const { cd: _, ...handbook } = canopy;
  const unstated = packingOf({ ...inputs, recovery: { ...inputs.recovery, main: { canopy: handbook } } }).canopy;
  expect(unstated.diameterForSpeed).toBeCloseTo(unstated.sizes[0]!.diameter, 12);
});

test("packingOf() lands the whole mass at the steady speed, or the given sections at the flown one", () => {
  const steady = packingOf(inputs);
  expect(steady.landing).toMatchObject({ of: "whole", speedFrom: "steady", speed: steady.canopy.descentSpeed });
  expect(steady.landing.limit).toBe(landingEnergyLimit);
  expect(steady.landing.sections.map(({ mass }) => mass)).toEqual([1.35]);
  const flown = packingOf(
    { ...inputs, landing: { ...inputs.landing, speed: 8 }, sections: [1, 0.35] },
    { energyLimit: 20 },
  );
  expect(flown.landing).toMatchObject({ of: "sections", speedFrom: "flown", speed: 8, limit: 20 });
  expect(flown.landing.sections.map(({ energy, aboveLimit }) => [energy, aboveLimit])).toEqual([
    [32, true],
    [expect.closeTo(11.2, 9), false],
  ]);
  expect(packingOf({ ...inputs, sections: [] }).landing).toMatchObject({ of: "whole", sections: [{ mass: 1.35 }] });
});

test("packingOf() hands its margin on", () => {
  expect(packingOf(inputs, { separationMargin: 2 }).bay?.separation?.margin).toBe(2);
});

test("packingOf() gives plain data: nothing is lost when it is written as JSON", () => {
  const found = packingOf(inputs);
  expect(JSON.parse(JSON.stringify(found))).toEqual(found);
});

test("packingOf() refuses with every issue", () => {
  expect(() => packingOf({ ...inputs, mass: 0, rocketLength: Number.NaN })).toThrow(InputError);
  expect(() => packingOf({ ...inputs, mass: 0, rocketLength: Number.NaN })).toThrow(/rocketLength.*\n.*mass/);
  expect(() => packingOf(inputs, { landingSpeed: 0 })).toThrow(/landingSpeed/);
});
