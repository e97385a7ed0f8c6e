import { expect, test } from "vitest";
import { normalQuantile } from "../math/normal.js";
import { type Density, densityOf } from "./density.js";

const normal = (count: number, mean: number, sd: number): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => mean + sd * normalQuantile((i + 0.5) / count));

const integral = ({ step, values }: Density): number => step * values.reduce((a, b) => a + b, 0);

test("densityOf() of normal values is the normal density, widened by the kernel as Silverman's rule says", () => {
  const count = 10_000;
  const density = densityOf(normal(count, 11, 0.8))!;
  const { from, step, values } = density;
  expect(values).toHaveLength(60);
  expect(Math.abs(integral(density) - 1)).toBeLessThan(1e-3);
  // the kernel's variance is added to the sample's
  const sd = Math.hypot(0.8, 0.9 * 0.8 * count ** -0.2);
  values.forEach((value, i) => {
    const z = (from + i * step - 11) / sd;
    const exact = Math.exp(-0.5 * z * z) / (sd * Math.sqrt(2 * Math.PI));
    // of a peak of 0.5: evenly placed values have no scatter, only their ends are missing
    expect(Math.abs(value - exact), `at ${from + i * step}`).toBeLessThan(2e-3);
  });
});

test("densityOf() keeps its integral within 1 % with few values, two heaps, ties and values far out", () => {
  const heaps = Float64Array.of(...normal(500, 5, 0.1), ...normal(500, 9, 0.2));
  const outlier = Float64Array.of(...normal(2000, 5, 0.1), 12, 30);
  const ties = Float64Array.from({ length: 100 }, (_, i) => (i < 90 ? 4 : i / 10));
  for (const sample of [normal(16, 3, 1), normal(256, 10, 0.7), heaps, outlier, ties]) {
    const density = densityOf(sample)!;
    expect(Math.abs(integral(density) - 1)).toBeLessThan(0.01);
    expect(Math.min(...density.values)).toBeGreaterThanOrEqual(0);
  }
});

test("densityOf() is null where nothing varies, and for a handful of values; it leaves the sample in its order", () => {
  expect(densityOf(new Float64Array(100).fill(7.3))).toBeNull();
  expect(densityOf(normal(15, 0, 1))).toBeNull();
  const sample = Float64Array.from(normal(40, 0, 1)).reverse();
  const before = [...sample];
  densityOf(sample);
  expect([...sample]).toEqual(before);
});
