import { expect, test } from "vitest";
import { flightD } from "../../reference/trajectories/inputs.js";
import { openingOf } from "../../test/opening.js";
import { pickFreeze } from "../../test/pick-freeze.js";
import { scrambled } from "../../test/scrambled.js";
import { DrawnValues, setDraw } from "../flight/fast/draw.js";
import { fastFlight } from "../flight/fast/fast-flight.js";
import { FastOutcome } from "../flight/fast/outcome.js";
import { fastTables } from "../flight/fast/tables.js";
import { FastWork } from "../flight/fast/work.js";
import { prepareFlight } from "../flight/model.js";
import { resolveFlightOptions } from "../flight/options.js";
import { normalQuantile } from "../math/normal.js";
import { drawnValues, noSpread } from "../spread/drawn-values.js";
import { flightInputsDrawn } from "../spread/draws.js";
import { type EnsembleSpec, prepareEnsemble } from "../spread/ensemble.js";
import { drawTolerance } from "../spread/fly-draw.js";
import { judgeFlight } from "../spread/judge.js";
import { JudgeWork } from "../spread/judge-work.js";
import { judgedSize } from "../spread/outcomes.js";
import { mixSeed } from "../spread/scramble.js";
import { sobolInteger } from "../spread/sobol.js";
import type { Spread } from "../spread/spread.js";
import { delayScatter } from "./delay-scatter.js";
import { driversOf } from "./drivers.js";

const spread: Spread = {
  ...noSpread,
  dragScale: 0.03,
  windSpeed: 0.2,
  guideTilt: Math.PI / 180,
  totalImpulse: 0.03,
  windFloor: 0.7,
  delay: { seconds: 0.75, fraction: 0.1 },
};

const scatter = delayScatter(12, spread.delay, {
  depthError: 0.2e-3,
  depthPerSecond: 0.79375e-3,
  motorTemperature: 293.15,
  pressure: 95_000,
});

const spec: EnsembleSpec = {
  inputs: flightD,
  options: resolveFlightOptions({}),
  spread,
  opening: openingOf([12], 0, () => scatter.total),
  seed: 1,
  top: 3000,
  topMach: 1.6,
};

/** Coast time, time of apogee and odds of a clean opening of one flight, from its normal values. */
function figuresOf() {
  const model = prepareFlight(spec.inputs, spec.options);
  const work = new FastWork(fastTables(model, spec.top, spec.topMach));
  const judge = new JudgeWork(spec.opening);
  const values = new DrawnValues();
  const flight = new FastOutcome();
  const judged = new Float64Array(judgedSize);
  return (z: Float64Array) => {
    drawnValues(spread, z, values);
    setDraw(work, values);
    fastFlight(work, values.totalImpulse, values.burnTime, drawTolerance, flight);
    judgeFlight(judge, work, flight, model.burn.end, 0.5, judged, 0, new Float64Array(), 0);
    return { coast: flight.apogeeTime - flight.burnout, clean: judged[0]! };
  };
}

test("driversOf() agrees with picking and freezing, for the coast and for the odds", () => {
  const chunk = prepareEnsemble(spec)(0, 2000);
  const { drivers } = driversOf(chunk, spread, 1, 0, scatter, "burnout");
  const names = ["dragScale", "windSpeed", "guideTilt", "totalImpulse", "windFloor"] as const;
  const groupOf: Readonly<Record<string, number>> = {
    dragScale: 0,
    windSpeed: 1,
    guideTiltEast: 2,
    guideTiltNorth: 2,
    totalImpulse: 3,
    windFloorEast: 4,
    windFloorNorth: 4,
  };
  const groups = flightInputsDrawn.map((name) => groupOf[name] ?? -1);
  const moving = groups.flatMap((group, i) => (group >= 0 ? [i] : []));
  const rows = (seed: number, from: number) =>
    Array.from({ length: 1024 }, (_, n) => {
      const z = new Float64Array(flightInputsDrawn.length);
      moving.forEach((i, k) => {
        z[i] = normalQuantile((scrambled(sobolInteger(n, from + k), mixSeed(seed, k)) + 0.5) / 2 ** 32);
      });
      return z;
    });
  const [a, b] = [rows(11, 0), rows(12, 7)];
  const figures = figuresOf();
  for (const figure of ["coast", "clean"] as const) {
    const judged = pickFreeze((z) => figures(z)[figure], a, b, groups, names.length);
    names.forEach((name, i) => {
      const driver = drivers.find((d) => d.input === name)!;
      const share = figure === "coast" ? driver.coast! : driver.odds!;
      const what = `${figure}, ${name}: ${share.first} ${share.total}, ${judged.first[i]} ${judged.total[i]}`;
      expect(Math.abs(share.first - judged.first[i]!), what).toBeLessThan(0.03);
      expect(Math.abs(share.total - judged.total[i]!), what).toBeLessThan(0.03);
    });
  }
});

test("driversOf() sorts by the timing, in which delay and cut take their part", () => {
  const chunk = prepareEnsemble(spec)(0, 1000);
  const { drivers, delayShareOfOdds } = driversOf(chunk, spread, 1, 0, scatter, "burnout");
  expect(drivers).toHaveLength(7);
  for (let i = 1; i < drivers.length; i++)
    expect(drivers[i]!.timing.total).toBeLessThanOrEqual(drivers[i - 1]!.timing.total);
  const share = (name: string) => drivers.find((d) => d.input === name)!.timing.first;
  const coasts = Float64Array.from({ length: 1000 }, (_, i) => chunk.flights[8 * i]!);
  const mean = coasts.reduce((a, c) => a + c, 0) / 1000;
  const variance = coasts.reduce((a, c) => a + (c - mean) ** 2, 0) / 1000;
  const whole = variance + scatter.total ** 2;
  expect(share("delay")).toBeCloseTo((scatter.motor ** 2 + scatter.burningRate ** 2) / whole, 9);
  expect(share("cutDepth")).toBeCloseTo(scatter.cut ** 2 / whole, 9);
  const drag = drivers.find((d) => d.input === "dragScale")!;
  expect(drag.timing.first).toBeCloseTo((drag.coast!.first * variance) / whole, 9);
  expect(delayShareOfOdds).toBeGreaterThan(0);
  expect(delayShareOfOdds).toBeLessThan(1);
});

test("driversOf() counted from ignition explains the time of apogee, to which the burn time adds", () => {
  const moved = { ...spread, burnTime: 0.1 };
  const chunk = prepareEnsemble({ ...spec, spread: moved })(0, 1000);
  const by = (clock: "burnout" | "ignition") =>
    driversOf(chunk, moved, 1, 0, scatter, clock).drivers.find((d) => d.input === "burnTime")!;
  expect(by("ignition").timing.first).not.toBeCloseTo(by("burnout").timing.first, 3);
  expect(by("ignition").coast!.first).toBe(by("burnout").coast!.first);
});
