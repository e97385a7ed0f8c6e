import { expect, test } from "vitest";
import { saturationPressure, virtualTemperature } from "./humidity.js";

test("saturationPressure() is the form's own constant at the ice point", () => {
  expect(saturationPressure(273.15)).toBe(611.2);
});

test("virtualTemperature() of dry air is its temperature, and grows with vapour", () => {
  const dry = { temperature: 300, pressure: 90_000, vapourPressure: 0 };
  expect(virtualTemperature(dry)).toBe(300);
  expect(virtualTemperature({ ...dry, vapourPressure: 2_000 })).toBeGreaterThan(300);
});
