import { expect, test } from "vitest";
import { windVelocity } from "./from-azimuth.js";

test.each([
  ["north", 0, 0, -5],
  ["east", 90, -5, 0],
  ["south", 180, 0, 5],
  ["west", 270, 5, 0],
  ["south-west", 225, 5 * Math.SQRT1_2, 5 * Math.SQRT1_2],
])("windVelocity() from the %s goes the other way", (_, degrees, east, north) => {
  const [foundEast, foundNorth] = windVelocity(5, (degrees * Math.PI) / 180);
  expect(foundEast).toBeCloseTo(east, 12);
  expect(foundNorth).toBeCloseTo(north, 12);
});
