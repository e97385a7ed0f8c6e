import { expect, test } from "vitest";
import { dynamicViscosity } from "./viscosity.js";

test("dynamicViscosity() grows with temperature", () => {
  for (let temperature = 200; temperature < 330; temperature += 10) {
    expect(dynamicViscosity(temperature + 10)).toBeGreaterThan(dynamicViscosity(temperature));
  }
});
