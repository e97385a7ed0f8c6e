import { expect, test } from "vitest";
import { type DelayConditions, delayScatter } from "./delay-scatter.js";

const spread = { seconds: 0.75, fraction: 0.1 };
const plain: DelayConditions = { depthError: 0, motorTemperature: 293.15, pressure: 101_325 };

test("delayScatter() takes the greater of a time and a share of the delay", () => {
  expect(delayScatter(5, spread, plain)).toEqual({ motor: 0.75, cut: 0, burningRate: 0, total: 0.75 });
  expect(delayScatter(7.5, spread, plain).motor).toBe(0.75);
  expect(delayScatter(14, spread, plain).motor).toBeCloseTo(1.4, 12);
});

test("delayScatter() turns the depth error into time where a depth per second is known", () => {
  const cut = delayScatter(10, spread, { ...plain, depthError: 0.2e-3, depthPerSecond: 0.8e-3 });
  expect(cut.cut).toBeCloseTo(0.25, 12);
  expect(cut.total).toBeCloseTo(Math.hypot(1, 0.25), 12);
  expect(delayScatter(10, spread, { ...plain, depthError: 0.2e-3 }).cut).toBe(0);
});

test("delayScatter() widens with the distance from the temperature and pressure of certification, either way", () => {
  const at = (change: Partial<DelayConditions>) => delayScatter(10, spread, { ...plain, ...change }).burningRate;
  // own numbers of the module: 0.1 % a kelvin, exponent 0.1 of pressure
  expect(at({ motorTemperature: 313.15 })).toBeCloseTo(10 * 0.02, 12);
  expect(at({ motorTemperature: 273.15 })).toBeCloseTo(10 * 0.02, 12);
  expect(at({ pressure: 70_000 })).toBeCloseTo(10 * 0.1 * Math.log(101_325 / 70_000), 12);
  expect(at({ motorTemperature: 313.15, pressure: 70_000 })).toBeGreaterThan(at({ pressure: 70_000 }));
});

test("delayScatter() is zero for a delay that is known exactly", () => {
  const hot = { ...plain, motorTemperature: 320, pressure: 80_000 };
  expect(delayScatter(10, { seconds: 0, fraction: 0 }, hot)).toEqual({ motor: 0, cut: 0, burningRate: 0, total: 0 });
});
