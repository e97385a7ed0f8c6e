import fc from "fast-check";
import { expect, test } from "vitest";
import { canopyData, canopyDragArea, fillDistance, fillTime, fillTimeAtConstantSpeed, nominalArea } from "./canopy.js";
import type { Canopy } from "./recovery.js";

const canopy: Canopy = { shape: "hemispherical", diameter: 1.1 };

test("canopyDragArea() takes the handbook's coefficient unless the canopy has its own", () => {
  expect(canopyDragArea(canopy)).toBe(nominalArea(canopy) * canopyData.hemispherical.cd);
  expect(canopyDragArea({ ...canopy, cd: 1.5 })).toBe(nominalArea(canopy) * 1.5);
});

test("fillTime() covers the filling distance with speed and gravity, and is never longer than at constant speed", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 200, noNaN: true }), (speed) => {
      const time = fillTime(canopy, speed, 9.8);
      expect(speed * time + 4.9 * time * time).toBeCloseTo(fillDistance(canopy), 9);
      expect(time).toBeLessThanOrEqual(fillTimeAtConstantSpeed(canopy, speed));
    }),
  );
});

test("fillTime() tends to n D/v at speed and stays finite at rest", () => {
  expect(fillTime(canopy, 1000, 9.8) / fillTimeAtConstantSpeed(canopy, 1000)).toBeCloseTo(1, 4);
  expect(fillTime(canopy, 0, 9.8)).toBeCloseTo(Math.sqrt((2 * fillDistance(canopy)) / 9.8), 12);
});
