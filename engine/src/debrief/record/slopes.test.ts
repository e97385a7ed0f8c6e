import { expect, test } from "vitest";
import { localSlopes } from "./slopes.js";

/** Uneven times. */
const time = Float64Array.from({ length: 80 }, (_, i) => 0.05 * i + 0.013 * Math.sin(7 * i));

test("localSlopes() is exact on a quadratic at uneven times, at the ends too", () => {
  const slopes = localSlopes(
    time,
    time.map((t) => 3 - 2 * t + 4.9 * t * t),
    0.3,
    [],
  );
  slopes.forEach((slope, i) => {
    expect(slope).toBeCloseTo(-2 + 9.8 * time[i]!, 9);
  });
});

test("localSlopes() smears nothing over a break: both sides keep their own slope", () => {
  const values = time.map((t) => (t < 2 ? 0 : 50 * (t - 2)));
  const across = localSlopes(time, values, 0.3, []);
  const kept = localSlopes(time, values, 0.3, [2]);
  kept.forEach((slope, i) => {
    expect(slope).toBeCloseTo(time[i]! < 2 ? 0 : 50, 9);
  });
  expect(Math.max(...across.map((slope, i) => Math.abs(slope - kept[i]!)))).toBeGreaterThan(10);
});

test("localSlopes() of few rows needs no window", () => {
  const slopes = localSlopes(Float64Array.of(0, 1, 2), Float64Array.of(0, 1, 4), 0.1, []);
  [0, 2, 4].forEach((slope, i) => {
    expect(slopes[i]).toBeCloseTo(slope, 12);
  });
});
