import { expect, test } from "vitest";
import { oneCosineGust } from "../../src/wind/gust.js";
import { logLawRatio, roughnessLengths } from "../../src/wind/log-law.js";
import { powerLawRatio, terrainExponents } from "../../src/wind/power-law.js";
import { windAt } from "../../src/wind/wind-at.js";
import { powerRows } from "./rows.js";

const off = (found: number, expected: number) => Math.abs(found / expected - 1);

test("powerLawRatio() gives the recomputed ratios", () => {
  expect(powerRows).toHaveLength(7);
  for (const [z, referenceHeight, exponent, ratio, tolerance] of powerRows) {
    expect(off(powerLawRatio(z, referenceHeight, exponent), ratio)).toBeLessThan(tolerance);
  }
});

test("windAt() of a power law gives the recomputed ratios", () => {
  for (const [z, referenceHeight, exponent, ratio, tolerance] of powerRows) {
    const profile = { kind: "power", east: 3, north: 4, referenceHeight, exponent, gradientHeight: 300 } as const;
    expect(off(Math.hypot(...windAt(profile)(z)), 5 * ratio)).toBeLessThan(tolerance);
  }
});

test("terrainExponents are the neutral Hellmann exponents", () => {
  expect(terrainExponents).toEqual({ water: 0.1, open: 1 / 7, rough: 0.2, wooded: 0.34 });
});

test("roughnessLengths are those of WMO/TD-No. 1555, Table 2.1", () => {
  expect(Object.values(roughnessLengths)).toEqual([0.0002, 0.005, 0.03, 0.1, 0.25, 0.5, 1]);
});

test("logLawRatio() gives the recomputed ratios from 10 m to 100 m", () => {
  const rows = [
    [0.0002, 1.212813],
    [0.005, 1.302936],
    [0.03, 1.396373],
    [0.1, 1.5],
    [0.25, 1.624196],
    [0.5, 1.768622],
  ] as const;
  expect(rows).toHaveLength(6);
  // 1e-6: the rows carry seven digits.
  for (const [roughness, ratio] of rows) expect(off(logLawRatio(100, 10, roughness), ratio)).toBeLessThan(1e-6);
});

test("oneCosineGust() of 3 m/s at a quarter and at half of its length", () => {
  // 1e-5: five digits are printed.
  expect(off(oneCosineGust({ speed: 3, length: 80, distance: 20 }), 0.43934)).toBeLessThan(1e-5);
  expect(off(oneCosineGust({ speed: 3, length: 80, distance: 40 }), 1.5)).toBeLessThan(1e-5);
});
