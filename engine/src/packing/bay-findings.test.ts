import { expect, test } from "vitest";
import { bayFindings } from "./bay-findings.js";
import { bayVolume, pressureOfCharge, usualPressures } from "./ejection-charge.js";
import { shearPin } from "./shear-pins.js";

const bay = { diameter: 0.072, length: 0.25 };
const pins = [{ size: "2-56", count: 2 }];
const twoPins = 2 * shearPin("2-56")!.load.stress;

test("bayFindings() holds the bay with pins at their stress area and friction together", () => {
  const holding = (held: object) => bayFindings({ ...bay, ...held }, {}).separation?.holding;
  expect(holding({ pins })).toBeCloseTo(twoPins, 9);
  expect(holding({ pins, friction: 30 })).toBeCloseTo(twoPins + 30, 9);
  expect(holding({ friction: 30 })).toBe(30);
  expect(holding({ friction: 0 })).toBe(0);
});

test("bayFindings() knows no separation without a holding force, nor with a pin of unknown size", () => {
  for (const held of [{}, { pins: [] }])
    expect(bayFindings({ ...bay, ...held }, {})).toMatchObject({ separation: null, pins: null });
  const unknown = bayFindings({ ...bay, pins: [{ size: "M3", count: 1 }], friction: 30 }, {});
  expect(unknown.separation).toBeNull();
  expect(unknown.pins?.unknown).toEqual(["M3"]);
  expect(unknown.needed.basis).toBe("usual");
});

test("bayFindings() gives the charges of the usual pressures", () => {
  const { usualCharges, volume } = bayFindings(bay, {});
  expect(volume).toBe(bayVolume(bay));
  for (const key of ["least", "usual", "most"] as const)
    expect(pressureOfCharge({ charge: usualCharges[key], volume }) / usualPressures[key]).toBeCloseTo(1, 12);
});

test("bayFindings() hands the margin to separation and motor's charge", () => {
  const found = bayFindings({ ...bay, pins }, { margin: 3, motorCharge: { mass: 0.00085 } });
  expect(found.separation?.margin).toBe(3);
  expect(found.motorCharge?.factor).toBeGreaterThan(1.5);
  expect(found.motorCharge?.findings.map(({ code }) => code)).toContain("separates-below-margin");
  expect(bayFindings(bay, {}).motorCharge).toBeNull();
});

test("bayFindings() adds the pins' caveats where there are pins", () => {
  expect(bayFindings(bay, {}).caveats).toHaveLength(4);
  expect(bayFindings({ ...bay, pins }, {}).caveats).toHaveLength(6);
});
