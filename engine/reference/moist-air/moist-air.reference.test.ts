import { expect, test } from "vitest";
import { fieldAir } from "../../src/air/at-field.js";
import { DRY_AIR_GAS_CONSTANT } from "../../src/air/constants.js";
import { densityAltitude } from "../../src/air/density-altitude.js";
import { saturationPressure, virtualTemperature } from "../../src/air/humidity.js";

const off = (found: number, expected: number) => Math.abs(found / expected - 1);
const FOOT = 0.3048;
const latitude = 0.9;

test("saturationPressure() at 30 °C is WMO-No. 8's", () => {
  expect(off(saturationPressure(303.15), 4233.724)).toBeLessThan(1e-6);
});

test("virtualTemperature() and the density of damp air at 30 °C and 80 %", () => {
  const [temperature, pressure] = [303.15, 101_325];
  const vapourPressure = 0.8 * saturationPressure(temperature);
  const virtual = virtualTemperature({ temperature, pressure, vapourPressure });
  // 1e-5: the rows carry seven digits.
  expect(off(vapourPressure, 3386.979)).toBeLessThan(1e-5);
  expect(off(virtual, 307.0297)).toBeLessThan(1e-5);
  expect(off(pressure / (DRY_AIR_GAS_CONSTANT * virtual), 1.149672)).toBeLessThan(1e-5);
});

test("fieldAir() is 1.264 % thinner in that damp air than in dry air", () => {
  const field = { elevation: 0, latitude, temperature: 303.15, pressure: 101_325 };
  const dry = fieldAir(field)(0).density;
  const moist = fieldAir({ ...field, humidity: 0.8 })(0).density;
  expect(off(dry, 1.164386)).toBeLessThan(1e-5);
  expect(off(moist, 1.149672)).toBeLessThan(1e-5);
  // In per cent, to the last printed digit.
  expect(Math.abs(100 * (1 - moist / dry) - 1.264)).toBeLessThan(0.0005);
});

test("densityAltitude() at 845 hPa, 35 °C and a dew point of 10 °C", () => {
  const [temperature, pressure] = [308.15, 84_500];
  const vapourPressure = saturationPressure(283.15);
  const humidity = vapourPressure / saturationPressure(temperature);
  const { density } = fieldAir({ elevation: 1_505, latitude, temperature, pressure, humidity })(0);
  expect(off(vapourPressure, 1226.03)).toBeLessThan(1e-5);
  expect(off(virtualTemperature({ temperature, pressure, vapourPressure }), 309.8495)).toBeLessThan(1e-5);
  expect(off(density, 0.950044)).toBeLessThan(1e-5);
  expect(Math.abs(densityAltitude(density) - 2570.19)).toBeLessThan(0.05);
  expect(Math.abs(densityAltitude(density) / FOOT - 8432.4)).toBeLessThan(0.2);
  // The weather service's form rounds its constants: 0.16 % higher.
  expect(Math.abs(densityAltitude(density) / FOOT - 8446.09)).toBeLessThan(20);
});

test("densityAltitude() at 845 hPa and 35 °C, humidity ignored", () => {
  const { density } = fieldAir({ elevation: 1_505, latitude, temperature: 308.15, pressure: 84_500 })(0);
  expect(Math.abs(densityAltitude(density) - 2516.19)).toBeLessThan(0.05);
});
