import { expect, test } from "vitest";
import { randomOf } from "../../../test/random.js";
import { timeToFill } from "../../packing/canopy.js";
import type { FlightRecord } from "../flight-record.js";
import { lookAt } from "./look.js";
import { type MainFit, mainFit } from "./main-fit.js";

const GRAVITY = 9.80665;
const [opens, before, after, way, lag, rate] = [40, 18, 6, 10, 0.08, 20];
const guess = { time: opens + 0.4, from: opens - 2.6, to: opens + 4.4, before, after };

/** A fall under two canopies by Euler's plain method, as a bay of that lag and an accelerometer on a swinging rocket see it. */
function record(seed: number, hangs: { before: number; after: number } | null): FlightRecord {
  const random = randomOf(seed);
  const fill = timeToFill(way, before, GRAVITY);
  const [rows, step] = [56 * rate, 1e-3];
  const columns = { time: [] as number[], height: [] as number[], felt: [] as number[] };
  let [t, h, v] = [0, 700, -before];
  let bay = h + before * lag;
  for (let row = 0; row < rows; row++) {
    let felt = GRAVITY;
    for (; t < row / rate; t += step) {
      const grown = Math.min(1, Math.max(0, t - opens) / fill) ** 2;
      felt = (GRAVITY / before ** 2 + (GRAVITY / after ** 2 - GRAVITY / before ** 2) * grown) * v * v;
      h += v * step;
      v += (felt - GRAVITY) * step;
      bay += ((h - bay) * step) / lag;
    }
    const hang = t < opens ? hangs?.before : hangs?.after;
    columns.time.push(row / rate);
    columns.height.push(bay + 0.15 * random.normal());
    columns.felt.push((hang ?? 0) * felt * (1 + 0.25 * Math.sin(3 * t + seed)) - GRAVITY + 0.3 * random.normal());
  }
  return {
    time: Float64Array.from(columns.time),
    height: Float64Array.from(columns.height),
    speed: Float64Array.from(columns.time, (time) => (time < opens ? -before : -after)),
    heightError: 0.15,
    acceleration: hangs === null ? null : Float64Array.from(columns.felt),
    accelerationError: hangs === null ? null : 0.3,
    rate,
    flaws: [],
    marks: [],
    zero: 0,
  };
}

/** Fits of twelve falls; the plan takes the canopy to fill over so many times the true way. */
const fits = (hangs: { before: number; after: number } | null, factor = 1): MainFit[] =>
  Array.from({ length: 12 }, (_, seed) => {
    const look = lookAt(record(seed, hangs), { fillDistances: { main: factor * way } });
    return mainFit(look, guess, { time: 0.06, error: 0.03 })!;
  });
const misses = (found: readonly MainFit[]): number[] => found.map((f) => f.time - opens);
const worst = (found: readonly MainFit[]): number => Math.max(...misses(found).map(Math.abs));
const mean = (values: readonly number[]): number => values.reduce((sum, x) => sum + x, 0) / values.length;

const hanging = { before: 0.8, after: 0.7 };

test("mainFit() places line stretch by the felt pull closer than by heights alone, and says so", () => {
  const [felt, alone] = [fits(hanging), fits(null)];
  expect(worst(felt)).toBeLessThan(0.06);
  expect(Math.abs(mean(misses(felt)))).toBeLessThan(0.02);
  expect(worst(alone)).toBeLessThan(0.2);
  expect(mean(felt.map((f) => f.error))).toBeLessThan(0.6 * mean(alone.map((f) => f.error)));
});

test("mainFit() takes from the felt pull the way that the canopy needed to fill, where the plan is a third off", () => {
  for (const factor of [0.7, 1.4]) expect(worst(fits(hanging, factor))).toBeLessThan(0.08);
  // the heights alone cannot: they hang on the plan's
  expect(worst(fits(null, 1.4))).toBeGreaterThan(0.08);
});

test("mainFit() keeps to the heights where the rocket turns over as its main canopy opens", () => {
  const [turning, alone] = [fits({ before: 0.7, after: -0.6 }), fits(null)];
  turning.forEach((f, k) => {
    expect(Math.abs(f.time - opens)).toBeLessThan(3 * f.error);
    expect(f.error).toBeGreaterThan(0.8 * alone[k]!.error);
  });
});

test("mainFit() keeps to the heights where the pull tells of something else, a second and a half before", () => {
  const own = record(3, null);
  const felt = own.time.map((t) => (t > opens - 1.5 && t < opens - 1 ? 40 * (t - opens + 1.5) : 0));
  const struck = { ...own, acceleration: felt, accelerationError: 0.3 };
  const hints = { fillDistances: { main: way } };
  const known = { time: 0.06, error: 0.03 };
  const alone = mainFit(lookAt(own, hints), guess, known)!;
  const both = mainFit(lookAt(struck, hints), guess, known)!;
  expect(Math.abs(both.time - alone.time)).toBeLessThan(3 * alone.error);
});
