import fc from "fast-check";
import { expect, test } from "vitest";
import {
  bayVolume,
  chargeCaveats,
  chargeForPressure,
  endForce,
  pressureForForce,
  pressureOfCharge,
  usualPressures,
} from "./ejection-charge.js";

const size = fc.double({ min: 0.01, max: 3, noNaN: true });
const amount = fc.double({ min: 1e-6, max: 1e6, noNaN: true });

test("pressureOfCharge() undoes chargeForPressure()", () => {
  fc.assert(
    fc.property(size, amount, (volume, pressure) => {
      const charge = chargeForPressure({ pressure, volume });
      expect(pressureOfCharge({ charge, volume }) / pressure).toBeCloseTo(1, 12);
    }),
  );
});

test("pressureForForce() undoes endForce()", () => {
  fc.assert(
    fc.property(size, amount, (diameter, pressure) => {
      const force = endForce({ pressure, diameter });
      expect(pressureForForce({ force, diameter }) / pressure).toBeCloseTo(1, 12);
    }),
  );
});

test("chargeForPressure() for one end force does not depend on the diameter: the tube cancels", () => {
  const charge = (diameter: number) =>
    chargeForPressure({
      pressure: pressureForForce({ force: 300, diameter }),
      volume: bayVolume({ diameter, length: 0.2 }),
    });
  expect(charge(0.15) / charge(0.05)).toBeCloseTo(1, 12);
});

test("usualPressures rise, and chargeCaveats ask for a ground test", () => {
  expect(usualPressures.least).toBeLessThan(usualPressures.usual);
  expect(usualPressures.usual).toBeLessThan(usualPressures.most);
  expect(chargeCaveats).toEqual(["constants-from-memory", "heat-loss-ignored", "leaks-ignored", "ground-test"]);
});
