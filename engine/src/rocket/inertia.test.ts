import { expect, test } from "vitest";
import { estimateInertia, inertiaFromSwing } from "./inertia.js";

test("inertiaFromSwing() gives the check value of the pitching flight (closed form, 1e-7)", () => {
  const found = inertiaFromSwing({ mass: 1.95, gravity: 9.80665, apart: 0.8, strings: 1.2, period: 1.9 });
  expect(Math.abs(found / 0.23315326 - 1)).toBeLessThan(1e-7);
});

test("estimateInertia() is a uniform rod's about its middle", () => {
  expect(estimateInertia({ mass: 1.2, length: 1, balance: 0.5, diameter: 0 })).toBeCloseTo(0.1, 12);
});

test("estimateInertia() equals slices of a rod whose density varies evenly", () => {
  const [mass, length, balance] = [2, 1.5, 0.85];
  const tilt = (12 * (balance - length / 2)) / length;
  const slices = 10_000;
  let inertia = 0;
  for (let i = 0; i < slices; i++) {
    const s = (i + 0.5) / slices;
    inertia += (mass / slices) * (1 + tilt * (s - 0.5)) * (s * length - balance) ** 2;
  }
  expect(estimateInertia({ mass, length, balance, diameter: 0 })).toBeCloseTo(inertia, 7);
});

test("estimateInertia() stays positive however odd the balance point", () => {
  for (const balance of [0, 1.5])
    expect(estimateInertia({ mass: 1, length: 1.5, balance, diameter: 0.05 })).toBeGreaterThan(0);
});
