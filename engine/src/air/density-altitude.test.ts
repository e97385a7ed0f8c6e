import fc from "fast-check";
import { expect, test } from "vitest";
import { densityAltitude } from "./density-altitude.js";
import { standardAir } from "./standard.js";

test("densityAltitude() undoes the standard's density at every altitude", () => {
  fc.assert(
    fc.property(fc.double({ min: -3_000, max: 84_000, noNaN: true }), (altitude) => {
      // A micrometre per kilometre: rounding of the density over its scale height.
      expect(Math.abs(densityAltitude(standardAir(altitude).density) - altitude)).toBeLessThan(1e-6);
    }),
  );
});
