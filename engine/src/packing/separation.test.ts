import { expect, test } from "vitest";
import { bayVolume, chargeForPressure, endForce, usualPressures } from "./ejection-charge.js";
import { neededCharge, separationOf } from "./separation.js";

const bay = { diameter: 0.072, length: 0.25 };
const area = (Math.PI * 0.072 ** 2) / 4;
/** Holding force that the margin 1.5 turns into a pressure. */
const held = (pressure: number) => separationOf({ bay, holding: (pressure * area) / 1.5 });

test("separationOf() pushes with the margin times the holding force", () => {
  for (const margin of [1, 2.5]) {
    const { pressure, charge, holding } = separationOf({ bay, holding: 250, margin });
    expect(endForce({ pressure, diameter: bay.diameter })).toBeCloseTo(250 * margin, 9);
    expect(charge).toBe(chargeForPressure({ pressure, volume: bayVolume(bay) }));
    expect(holding).toBe(250);
  }
  expect(separationOf({ bay, holding: 250 }).margin).toBe(1.5);
});

test("neededCharge() keeps to the flyer's pressure unless it does not part the bay", () => {
  const stated = { ...bay, pressure: 60_000 };
  expect(neededCharge(stated, null)).toMatchObject({ basis: "stated", pressure: 60_000 });
  expect(neededCharge(stated, held(59_000))).toMatchObject({ basis: "stated", pressure: 60_000 });
  const { basis, pressure } = neededCharge(stated, held(61_000));
  expect(basis).toBe("separation");
  expect(pressure).toBeCloseTo(61_000, 6);
});

test("neededCharge() without an own pressure takes the usual one, or the range's low end where the holding force is known", () => {
  expect(neededCharge(bay, null)).toMatchObject({ basis: "usual", pressure: usualPressures.usual });
  const { least } = usualPressures;
  expect(neededCharge(bay, held(least - 100))).toMatchObject({ basis: "least-usual", pressure: least });
  expect(neededCharge(bay, held(least + 100)).basis).toBe("separation");
});

test("neededCharge() gives charge and end force of its pressure", () => {
  const { pressure, charge, endForce: force } = neededCharge(bay, held(90_000));
  expect(charge).toBe(chargeForPressure({ pressure, volume: bayVolume(bay) }));
  expect(force).toBeCloseTo(pressure * area, 9);
});
