import { expect, test } from "vitest";
import { exampleRocket } from "../example-rocket.js";
import { cpOf, normalForceParts, slopeOf } from "./parts.js";
import { partsWithStatedCp } from "./stated-cp.js";

test("partsWithStatedCp() leaves the parts alone where nothing is stated", () => {
  expect(cpOf(partsWithStatedCp(exampleRocket), 0.6)).toBe(cpOf(normalForceParts(exampleRocket), 0.6));
});

test("partsWithStatedCp() brings the centre of pressure to where it is stated and keeps slope and Mach trend", () => {
  const parts = partsWithStatedCp({ ...exampleRocket, statedCp: 1.15 });
  const computed = normalForceParts(exampleRocket);
  expect(cpOf(parts, 0)).toBeCloseTo(1.15, 12);
  expect(slopeOf(parts, 0)).toBe(slopeOf(computed, 0));
  expect(cpOf(parts, 2) - cpOf(parts, 0)).toBeCloseTo(cpOf(computed, 2) - cpOf(computed, 0), 12);
});

test("partsWithStatedCp() implies fins where none were measured", () => {
  for (const statedCp of [0.5, 1.15, 1.45]) {
    const parts = partsWithStatedCp({ ...exampleRocket, finSets: [], statedCp });
    expect(cpOf(parts, 0)).toBeCloseTo(statedCp, 12);
    expect(parts.map((part) => part.kind)).toEqual(["nose", "fins"]);
    expect(parts[1]?.slope).toBeGreaterThan(0);
  }
});
