import { expect, test } from "vitest";
import { certificationLevel, isHighPowerMotor, isHighPowerRocket } from "../../src/motor/high-power.js";

/** The largest model motor: every figure at its limit. */
const model = { totalImpulse: 160, averageThrust: 80, propellantMass: 0.0625 };

test("isHighPowerMotor() is true above any one of 160 N s, 80 N and 62.5 g, and for sparks", () => {
  expect(isHighPowerMotor(model)).toBe(false);
  const over = [{ totalImpulse: 160.01 }, { averageThrust: 80.1 }, { propellantMass: 0.0626 }, { sparking: true }];
  expect(over).toHaveLength(4);
  for (const change of over) expect(isHighPowerMotor({ ...model, ...change }), JSON.stringify(change)).toBe(true);
});

test("isHighPowerRocket() is true above 1500 g, or on a high-power motor", () => {
  expect(isHighPowerRocket({ liftOffMass: 1.5, motor: model })).toBe(false);
  expect(isHighPowerRocket({ liftOffMass: 1.501, motor: model })).toBe(true);
  expect(isHighPowerRocket({ liftOffMass: 0.9, motor: { ...model, averageThrust: 90 } })).toBe(true);
});

test("isHighPowerRocket() is true above 125 g of propellant or 320 N s", () => {
  expect(isHighPowerRocket({ liftOffMass: 1, motor: { ...model, propellantMass: 0.1251 } })).toBe(true);
  expect(isHighPowerRocket({ liftOffMass: 1, motor: { ...model, totalImpulse: 320.01 } })).toBe(true);
});

test("certificationLevel() is 1 for H and I, 2 for J to L, 3 for M to O", () => {
  const rows = { 1: "HI", 2: "JKL", 3: "MNO" };
  expect(Object.values(rows).join("")).toHaveLength(8);
  for (const [level, classes] of Object.entries(rows)) {
    for (const name of classes) expect(certificationLevel(name), name).toBe(Number(level));
  }
});
