import { expect, test } from "vitest";
import { bridgeOverMach } from "./compressibility.js";

const subsonic = (mach: number) => 1 + mach * mach;
const supersonic = (mach: number) => 4 / mach;

test("bridgeOverMach() keeps both rules outside the bridge, and meets both in value and slope", () => {
  const joined = bridgeOverMach(subsonic, supersonic);
  expect(joined(0.5)).toBe(1.25);
  expect(joined(2)).toBe(2);
  const h = 1e-6;
  for (const edge of [0.9, 1.2]) {
    expect(Math.abs(joined(edge - 1e-9) - joined(edge + 1e-9)), `Mach ${edge}`).toBeLessThan(1e-7);
    const [before, after] = [joined(edge) - joined(edge - h), joined(edge + h) - joined(edge)];
    expect(Math.abs(before - after) / h, `Mach ${edge}`).toBeLessThan(1e-3);
  }
});

test("bridgeOverMach() does not ask the supersonic rule before a Mach number needs it, nor below the bridge's end", () => {
  const asked: number[] = [];
  const joined = bridgeOverMach(subsonic, (mach) => {
    asked.push(mach);
    return supersonic(mach);
  });
  joined(0.9);
  expect(asked).toEqual([]);
  joined(1);
  joined(1.1);
  expect(asked).toHaveLength(2);
  expect(Math.min(...asked)).toBe(1.2);
});

test("bridgeOverMach() of a rise from nothing to a falling law stays positive", () => {
  const rise = bridgeOverMach(
    () => 0,
    (mach) => 0.1 / mach ** 4,
  );
  for (let mach = 0.901; mach < 1.2; mach += 0.001) expect(rise(mach)).toBeGreaterThan(0);
});
