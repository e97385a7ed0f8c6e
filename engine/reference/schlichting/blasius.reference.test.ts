import { expect, test } from "vitest";
import { laminarFriction, skinFriction, smoothFriction } from "../../src/rocket/drag/friction.js";
import { blasiusConstant } from "./blasius.js";

test("blasiusConstant() is 1.32823, as printed everywhere", () => {
  expect(Math.abs(blasiusConstant() - 1.32823)).toBeLessThan(1e-5);
});

test("laminarFriction() is Blasius' solution within 2e-4: its constant is rounded to 1.328", () => {
  for (const reynolds of [1e4, 1e5, 5e5])
    expect(Math.abs((laminarFriction(reynolds) * Math.sqrt(reynolds)) / blasiusConstant() - 1)).toBeLessThan(2e-4);
});

test("skinFriction() in the limit of no flow: the coefficient is held, so that the force ends with the square of the speed", () => {
  // creeping flow (Stokes) would leave a force in proportion to the speed; at 0.1 m/s over 1.5 m it is below 1e-4 N on 0.3 m² either way
  const force = (speed: number) =>
    0.5 * 1.225 * speed ** 2 * 0.3 * skinFriction(Number.POSITIVE_INFINITY)((speed * 1.5) / 1.46e-5, 0);
  expect(force(0.1)).toBeLessThan(1e-4);
  expect(force(1e-6)).toBeLessThan(1e-13);
  expect(smoothFriction(1)).toBe(smoothFriction(1e4));
  expect(smoothFriction(2e4)).toBe(laminarFriction(2e4));
});
