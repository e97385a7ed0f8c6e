import { expect, test } from "vitest";
import { lagged } from "./lagged.js";

test("lagged() shows a climb from rest as v (t − τ (1 − exp(−t/τ))), closed form", () => {
  const [step, lag, speed] = [0.05, 0.12, 20];
  const times = Float64Array.from({ length: 40 }, (_, i) => (i - 10) * step);
  const shown = lagged(
    times.map((t) => 100 + speed * Math.max(0, t)),
    step,
    lag,
  );
  times.forEach((t, i) => {
    const risen = t > 0 ? speed * (t - lag * (1 - Math.exp(-t / lag))) : 0;
    expect(shown[i]!).toBeCloseTo(100 + risen, 10);
  });
});

test("lagged() is late by the lag on a steady fall from its first figure on", () => {
  const heights = Float64Array.from({ length: 20 }, (_, i) => 500 - 3 * i);
  const shown = lagged(heights, 0.2, 0.1);
  for (const [i, h] of heights.entries()) expect(shown[i]!).toBeCloseTo(h + 1.5, 10);
  expect(lagged(heights, 0.2, 0)).toEqual(heights);
});
