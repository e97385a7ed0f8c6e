import { expect, test } from "vitest";
import { scrambleCount } from "../spread/draws.js";
import type { EnsembleChunk } from "../spread/ensemble-chunk.js";
import { openingsOf, samplingError } from "./summary.js";

test("samplingError() is three standard errors of the scrambles' means", () => {
  // draws of scramble s have the mean s: variance of 0 … 15 is 272/12 = 22.667
  const error = samplingError(scrambleCount * 10, (draw) => (draw % scrambleCount) + (draw < 80 ? 1 : -1));
  expect(error).toBeCloseTo(3 * Math.sqrt((scrambleCount * (scrambleCount + 1)) / 12 / scrambleCount), 12);
  expect(samplingError(320, () => 0.25)).toBe(0);
  expect(samplingError(1, () => 0.25)).toBe(0);
});

test("openingsOf() gives quantiles of one setting, grounded openings left out, and none where all are", () => {
  const draws = 11;
  const [settingCount, samples] = [2, 1];
  // the second setting opens at 0, 1 … 10 m/s, at ten times that height, that many seconds after the top; the first never
  const rows = Array.from({ length: draws }, (_, d) => [
    [Number.NaN, Number.NaN, Number.NaN],
    [d, 10 * d, -d],
  ]);
  const chunk: EnsembleChunk = {
    from: 0,
    to: draws,
    flights: new Float64Array(),
    judged: new Float64Array(),
    samples: Float64Array.from(rows.flat(2)),
  };
  const { openingSpeed, openingHeight, secondsFromApogee } = openingsOf(chunk, settingCount, 1, samples);
  expect(openingSpeed).toEqual({ p05: 0.5, p50: 5, p90: 9, p95: 9.5 });
  expect(openingHeight).toEqual({ p05: 5, p10: 10, p50: 50 });
  expect(secondsFromApogee).toEqual({ p05: -9.5, p50: -5, p95: -0.5 });
  expect(openingsOf(chunk, settingCount, 0, samples).openingSpeed).toBeNull();
});
