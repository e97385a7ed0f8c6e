import { expect, test } from "vitest";
import { prepareImpulse } from "./impulse.js";

test("prepareImpulse() is quadratic within a piece, 0 before the curve and the total after it", () => {
  const impulse = prepareImpulse({ times: [1, 2, 4], thrusts: [0, 100, 100] });
  expect(impulse.total).toBe(250);
  expect([0, 1, 1.5, 2, 3, 4, 9].map(impulse.at)).toEqual([0, 0, 12.5, 50, 150, 250, 250]);
});
