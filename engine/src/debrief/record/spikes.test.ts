import { expect, test } from "vitest";
import { spikesIn } from "./spikes.js";

const sigma = 0.3;
const time = Float64Array.from({ length: 400 }, (_, i) => 0.05 * i);
/** Free fall about a top at 10 s, with noise that repeats; a fixed pattern, no draw. */
const fall = (): Float64Array => time.map((t, i) => 500 - 4.9 * (t - 10) ** 2 + 0.4 * Math.sin(1.9 * i * i));

test("spikesIn() finds a transient by its first row and bridges it to within a few sigma", () => {
  for (const side of [1, -1]) {
    const height = fall();
    const clean = fall();
    [60, 40, 22, 12].forEach((jump, k) => {
      height[230 + k]! += side * jump;
    });
    const found = spikesIn(time, height, sigma);
    expect(found.length).toBe(1);
    expect(found[0]![0]).toBe(230);
    expect(found[0]![1]).toBeGreaterThanOrEqual(233);
    const worst = Math.max(...height.map((h, i) => Math.abs(h - clean[i]!)));
    expect(worst).toBeLessThan(5 * sigma);
  }
});

test("spikesIn() leaves a flight without one alone, a hard boost too", () => {
  const height = fall();
  expect(spikesIn(time, height, sigma)).toEqual([]);
  const boost = time.map((t) => (t < 1 ? 0 : 0.5 * 150 * (t - 1) ** 2));
  expect(
    spikesIn(
      time.map((t) => t - 1),
      boost,
      sigma,
    ),
  ).toEqual([]);
});

test("spikesIn() takes a jump that does not come back for none", () => {
  const height = fall().map((h, i) => (i < 300 ? h : h + 80));
  const before = Float64Array.from(height);
  expect(spikesIn(time, height, sigma)).toEqual([]);
  expect(height).toEqual(before);
});
