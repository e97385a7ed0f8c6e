import { expect, test } from "vitest";
import type { PackingInputs } from "./packing-inputs.js";
import { packingIssues } from "./packing-issues.js";

const canopy = { shape: "conical", diameter: 1, cd: 0.8 } as const;
const good: PackingInputs = {
  rocketLength: 1.5,
  mass: 2,
  recovery: {
    motorCharge: "primary",
    lineStretch: 0.5,
    main: { canopy, strength: 900 },
    drogue: { canopy, strength: 900 },
    harness: { length: 5, strength: 900 },
  },
  bay: { diameter: 0.07, length: 0.2, pressure: 1e5, friction: 0, pins: [{ size: "M3", count: 1 }] },
  motorCharge: { mass: 0, wellHolds: 0 },
  electronicsBay: { diameter: 0.07, length: 0.1 },
  fittingsStrength: 900,
  stillShut: [{ size: "2-56", count: 2 }],
  openings: [{ which: "drogue", airspeed: 20, density: 1.1, gravity: 9.8 }],
  landing: { density: 1.2, gravity: 9.8, speed: 0 },
  spillHole: 0,
  sections: [1, 1],
};
const options = { separationMargin: 1.5, landingSpeed: 5, energyLimit: 100 };

/** The same data with the value at a dotted path replaced. */
function changed<T>(data: T, path: string, value: unknown): T {
  const copy = structuredClone(data) as Record<string, unknown>;
  const keys = path.replaceAll("[", ".").replaceAll("]", "").split(".");
  const last = keys.pop()!;
  const holder = keys.reduce((at, key) => at[key] as Record<string, unknown>, copy);
  holder[last] = value;
  return copy as T;
}

const positive = [
  "rocketLength",
  "mass",
  "recovery.main.canopy.diameter",
  "recovery.main.canopy.cd",
  "recovery.main.strength",
  "recovery.drogue.canopy.diameter",
  "recovery.drogue.canopy.cd",
  "recovery.drogue.strength",
  "recovery.harness.length",
  "recovery.harness.strength",
  "bay.diameter",
  "bay.length",
  "bay.pressure",
  "electronicsBay.diameter",
  "electronicsBay.length",
  "fittingsStrength",
  "openings[0].airspeed",
  "openings[0].density",
  "openings[0].gravity",
  "landing.density",
  "landing.gravity",
  "sections[1]",
];
const notNegative = ["bay.friction", "motorCharge.mass", "motorCharge.wellHolds", "landing.speed", "spillHole"];
const counts = ["bay.pins[0].count", "stillShut[0].count"];

test("packingIssues() finds nothing in good inputs, zeros and a pin of unknown size among them", () => {
  expect(packingIssues(good, options)).toEqual([]);
});

test.each(positive)("packingIssues() wants %s above zero", (path) => {
  for (const value of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(packingIssues(changed(good, path, value))).toContainEqual(
      expect.objectContaining({ code: "not-positive", path: `packing.${path}`, found: value }),
    );
});

test.each(notNegative)("packingIssues() wants %s at zero or above", (path) => {
  for (const value of [-1e-9, Number.NaN, Number.POSITIVE_INFINITY])
    expect(packingIssues(changed(good, path, value))).toContainEqual(
      expect.objectContaining({ code: "negative", path: `packing.${path}`, found: value }),
    );
});

test.each(counts)("packingIssues() wants %s to be a count", (path) => {
  for (const value of [0, 1.5, Number.NaN])
    expect(packingIssues(changed(good, path, value))).toMatchObject([{ code: "not-a-count", path: `packing.${path}` }]);
});

test.each(["separationMargin", "landingSpeed", "energyLimit"])(
  "packingIssues() wants the option %s above zero",
  (name) => {
    expect(packingIssues(good, { ...options, [name]: 0 })).toMatchObject([
      { code: "not-positive", path: `packing.options.${name}`, found: 0 },
    ]);
  },
);

test("packingIssues() refuses a drogue's opening without a drogue, and a hole as large as its canopy", () => {
  const { drogue: _, ...recovery } = good.recovery;
  expect(packingIssues({ ...good, recovery })).toMatchObject([
    { code: "no-drogue", path: "packing.openings[0].which" },
  ]);
  expect(packingIssues({ ...good, spillHole: 1 })).toMatchObject([{ code: "hole-too-large", found: 1 }]);
  expect(packingIssues({ ...good, spillHole: 0.99 })).toEqual([]);
});

test("packingIssues() lists everything at once", () => {
  expect(packingIssues({ ...good, mass: 0, rocketLength: -1, sections: [0, 0] })).toHaveLength(4);
});
