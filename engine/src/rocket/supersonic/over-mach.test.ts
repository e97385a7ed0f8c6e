import { expect, test } from "vitest";
import { MACH_NODES, overMach } from "./over-mach.js";

test("overMach() goes through its nodes, is smooth between and held beyond", () => {
  const law = (mach: number) => 4 / Math.sqrt(mach * mach - 1);
  const found = overMach(law);
  for (const mach of MACH_NODES) expect(found(mach)).toBeCloseTo(law(mach), 12);
  for (let mach = 1.25; mach < 3.7; mach += 0.01) {
    expect(Math.abs(found(mach) / law(mach) - 1), `Mach ${mach}`).toBeLessThan(0.03);
    const h = 1e-6;
    expect(Math.abs(found(mach + h) - 2 * found(mach) + found(mach - h)) / h).toBeLessThan(1e-3);
  }
  expect(found(1.1)).toBe(law(1.2));
  expect(found(5)).toBe(law(3.7));
});

test("overMach() asks for nothing before it must, and for each node once", () => {
  const asked: number[] = [];
  const found = overMach((mach) => {
    asked.push(mach);
    return mach;
  });
  expect(asked).toEqual([]);
  for (let mach = 1; mach < 1.2; mach += 0.01) found(mach);
  expect(asked).toEqual([1.2]);
  for (let mach = 1.21; mach < 1.27; mach += 0.01) found(mach);
  expect(asked.sort()).toEqual([1.2, 1.27, 1.38]);
});

test("overMach() keeps a rise and a fall monotone, also where they meet", () => {
  const hat = overMach((mach) => 1 - Math.abs(mach - 1.8));
  for (let mach = 1.2; mach < 1.79; mach += 0.01) expect(hat(mach + 0.01)).toBeGreaterThanOrEqual(hat(mach));
  for (let mach = 1.81; mach < 3.6; mach += 0.01) expect(hat(mach + 0.01)).toBeLessThanOrEqual(hat(mach));
});
