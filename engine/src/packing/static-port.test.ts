import fc from "fast-check";
import { expect, test } from "vitest";
import { staticPortArea, staticPortDiameter } from "./static-port.js";

test("staticPortDiameter() of any number of holes has the same area together", () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-5, max: 0.1, noNaN: true }), fc.integer({ min: 1, max: 12 }), (volume, count) => {
      const area = (count * Math.PI * staticPortDiameter({ volume, count }) ** 2) / 4;
      expect(area / staticPortArea(volume)).toBeCloseTo(1, 12);
    }),
  );
});
