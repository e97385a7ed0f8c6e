import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { expect, test } from "vitest";
import { flightD } from "../../reference/trajectories/inputs.js";
import { bruteJudge, openingAt } from "../../test/brute-judge.js";
import { fastWork, flyDraw } from "../../test/fast.js";
import { openingOf } from "../../test/opening.js";
import { usualSpread } from "../../test/plan.js";
import { oddsOf } from "../decision/summary.js";
import { DrawnValues } from "../flight/fast/draw.js";
import { resolveFlightOptions, type TurningModel } from "../flight/options.js";
import { normalQuantile } from "../math/normal.js";
import { drawnValues } from "./drawn-values.js";
import { flightInputsDrawn } from "./draws.js";
import { type EnsembleSpec, prepareEnsemble } from "./ensemble.js";
import { chunkBytes, chunkIn, joinChunks, memoryOf, partOf, putChunk } from "./ensemble-chunk.js";
import { HOLDS } from "./outcomes.js";

const delays = [6, 8, 10, 12, 14];

function specOf(seed: number, model: TurningModel = "pitching"): EnsembleSpec {
  return {
    inputs: flightD,
    options: resolveFlightOptions({ model }),
    spread: usualSpread,
    opening: openingOf(delays, 2),
    seed,
    top: 3000,
    topMach: 1.6,
  };
}

test("prepareEnsemble() gives the same figures however the draws are split, and in repeated runs", () => {
  const whole = prepareEnsemble(specOf(1))(0, 200);
  expect(prepareEnsemble(specOf(1))(0, 200)).toEqual(whole);
  for (const edges of [
    [0, 100, 200],
    [0, 50, 100, 150, 200],
    [0, 1, 17, 199, 200],
  ]) {
    const runs = edges.slice(1).map((to, i) => [edges[i]!, to] as const);
    // every run in memory of its own, as workers have it, handed in backwards
    const apart = runs.map(([from, to]) => prepareEnsemble(specOf(1))(from, to)).reverse();
    expect(joinChunks(apart)).toEqual(whole);
    // and one after another in the same memory
    const same = prepareEnsemble(specOf(1));
    expect(joinChunks(runs.reverse().map(([from, to]) => same(from, to)))).toEqual(whole);
  }
  expect(prepareEnsemble(specOf(2))(0, 200).judged).not.toEqual(whole.judged);
});

test("prepareEnsemble() flies into memory that had other draws in it as into new memory", () => {
  const spec = specOf(1);
  const whole = prepareEnsemble(spec)(0, 60);
  const memory = new ArrayBuffer(chunkBytes(spec.opening, 60) + 64);
  new Uint8Array(memory).fill(0xff);
  const room = chunkIn(spec.opening, 0, 60, memory);
  const fly = prepareEnsemble(spec);
  fly(20, 60, partOf(room, 20, 60));
  putChunk(room, fly(0, 20));
  expect(room).toEqual(whole);
  expect(memoryOf(room)).toEqual([memory]);
});

test("prepareEnsemble() leaves nothing of an older draw where one does not fly", () => {
  const spec = specOf(1);
  const weak = { ...spec, inputs: { ...flightD, rocket: { ...flightD.rocket, mass: 1000 } } };
  const fresh = prepareEnsemble(weak)(0, 8);
  expect(fresh.flights.every((number) => number === 0)).toBe(true);
  const room = chunkIn(spec.opening, 0, 8);
  prepareEnsemble(spec)(0, 8, room);
  expect(prepareEnsemble(weak)(0, 8, room)).toEqual(fresh);
});

test("prepareEnsemble(): the default model is not the aligned one, whose odds in wind are visibly other", () => {
  const byDefault = prepareEnsemble({ ...specOf(1), options: resolveFlightOptions({}) })(0, 512);
  const pitching = prepareEnsemble(specOf(1, "pitching"))(0, 512);
  const aligned = prepareEnsemble(specOf(1, "aligned"))(0, 512);
  expect(byDefault).toEqual(pitching);
  const clean = (chunk: typeof pitching) => delays.map((_, s) => oddsOf(chunk, delays.length, s).odds.clean);
  const differences = clean(pitching).map((c, s) => Math.abs(c - clean(aligned)[s]!));
  expect(Math.max(...differences)).toBeGreaterThan(0.1);
});

test("oddsOf(): the six outcomes sum to 1 to 1e-12 over an ensemble", () => {
  const chunk = prepareEnsemble(specOf(5))(0, 700);
  delays.forEach((_, s) => {
    const { clean, earlyFast, lateFast, leanFast, low, grounded, holds } = oddsOf(chunk, delays.length, s).odds;
    expect(Math.abs(clean + earlyFast + lateFast + leanFast + low + grounded - 1)).toBeLessThan(1e-12);
    expect(holds).toBeGreaterThanOrEqual(clean);
  });
});

test("oddsOf(): the error from the scrambles covers what seeds differ by", () => {
  const seeds = Array.from({ length: 24 }, (_, i) => 100 + i);
  const runs = seeds.map((seed) => prepareEnsemble(specOf(seed))(0, 256));
  delays.forEach((delay, s) => {
    const odds = runs.map((chunk) => oddsOf(chunk, delays.length, s).odds);
    const mean = odds.reduce((sum, o) => sum + o.clean, 0) / odds.length;
    const variance = odds.reduce((sum, o) => sum + (o.clean - mean) ** 2, 0) / (odds.length - 1);
    const claimed = odds.reduce((sum, o) => sum + (o.error / 3) ** 2, 0) / odds.length;
    // ratio of two variances with 23 and 24 × 15 degrees of freedom: 0.36 … 2.3 holds 99.8 % of it
    expect(variance / claimed, `${delay} s`).toBeGreaterThan(0.36);
    expect(variance / claimed, `${delay} s`).toBeLessThan(2.3);
  });
});

test("prepareEnsemble() agrees with a plain Monte Carlo of random flights, the delay drawn too", () => {
  const draws = 4000;
  const spec = specOf(1);
  const chunk = prepareEnsemble(spec)(0, 2048);
  const generator = xoroshiro128plus(2026);
  const normal = () => normalQuantile(uniformFloat64(generator));
  const work = fastWork(flightD);
  const z = new Float64Array(flightInputsDrawn.length);
  const values = new DrawnValues();
  const counts = delays.map(() => new Float64Array(HOLDS + 1));
  for (let i = 0; i < draws; i++) {
    for (let d = 0; d < z.length; d++) z[d] = normal();
    const flight = flyDraw(work, drawnValues(usualSpread, z, values));
    const open = bruteJudge(work, flight, spec.opening);
    spec.opening.settings.forEach(({ delay, sd }, s) => {
      const { outcome, holds } = open(openingAt(spec.opening, flight, 0, delay) + sd * normal());
      counts[s]![outcome]! += 1 / draws;
      if (holds) counts[s]![HOLDS]! += 1 / draws;
    });
  }
  delays.forEach((delay, s) => {
    const { odds } = oddsOf(chunk, delays.length, s);
    const ours = [odds.clean, odds.earlyFast, odds.lateFast, odds.leanFast, odds.low, odds.grounded, odds.holds];
    ours.forEach((p, k) => {
      // three standard errors of both: of a count of random flights, and ours as stated (1e-3 where it states none)
      const own = k === 0 ? odds.error : k === HOLDS ? odds.holdsError : 1e-3;
      const allowed = Math.hypot(3 * Math.sqrt((p * (1 - p)) / draws), own);
      expect(Math.abs(p - counts[s]![k]!), `${delay} s, figure ${k}: ${p}`).toBeLessThan(allowed + 1e-9);
    });
  });
});
