import { expect, test } from "vitest";
import { shearPin, shearPinCaveats, shearPins, shearPinsLoad } from "./shear-pins.js";

test("shearPins get stronger with size, and root below stress below dry", () => {
  shearPins.forEach(({ load, rootArea, stressArea, diameter }, i) => {
    expect(load.root).toBeLessThan(load.stress);
    expect(load.stress).toBeLessThan(load.dry);
    expect(stressArea).toBeLessThan((Math.PI * diameter ** 2) / 4);
    expect(rootArea).toBeLessThan(stressArea);
    if (i > 0) expect(load.root).toBeGreaterThan(shearPins[i - 1]!.load.root);
  });
});

test("shearPin() of an unknown size is undefined", () => {
  expect(shearPin("2-56 ")).toBeUndefined();
  expect(shearPin("M3")).toBeUndefined();
});

test("shearPinsLoad() of an unknown size has no total, and says which sizes are known", () => {
  expect(
    shearPinsLoad([
      { size: "M3", count: 2 },
      { size: "2-56", count: 2 },
      { size: "M3", count: 1 },
    ]),
  ).toEqual({ total: undefined, unknown: ["M3"], known: ["2-56", "4-40", "6-32"] });
});

test("shearPinsLoad() counts every pin", () => {
  const { load } = shearPin("4-40")!;
  const { total, unknown } = shearPinsLoad([
    { size: "4-40", count: 2 },
    { size: "4-40", count: 1 },
  ]);
  expect(unknown).toEqual([]);
  for (const key of ["root", "stress", "dry"] as const) expect(total![key]).toBeCloseTo(3 * load[key], 9);
  expect(shearPinsLoad([]).total).toEqual({ root: 0, stress: 0, dry: 0 });
});

test("shearPinCaveats say that neither drag separation nor the harness's jerk is computed", () => {
  expect(shearPinCaveats).toEqual(["drag-separation-not-computed", "harness-jerk-not-computed"]);
});
