import { expect, test } from "vitest";
import { bruteJudge, openingAt } from "../../test/brute-judge.js";
import { adjustableMotor, plan } from "../../test/plan.js";
import { descend } from "../flight/descent.js";
import { DrawnValues, setDraw } from "../flight/fast/draw.js";
import { fastFlight } from "../flight/fast/fast-flight.js";
import { FastOutcome } from "../flight/fast/outcome.js";
import { fastTables } from "../flight/fast/tables.js";
import { FastWork } from "../flight/fast/work.js";
import { fly } from "../flight/fly.js";
import { prepareFlight } from "../flight/model.js";
import { normalQuantile } from "../math/normal.js";
import { drawnInputs } from "../spread/drawn-inputs.js";
import { drawnValues, noSpread } from "../spread/drawn-values.js";
import { drawNormals, drawSize } from "../spread/draws.js";
import { prepareEnsemble } from "../spread/ensemble.js";
import { APOGEE_HEIGHT, APOGEE_TIME, FLEW, flightSize, LANDING_EAST, LANDING_NORTH } from "../spread/ensemble-chunk.js";
import { drawTolerance } from "../spread/fly-draw.js";
import { GROUNDED, HOLDS, judgedSize, sampleSize } from "../spread/outcomes.js";
import {
  descentPoints,
  type FlightSampleSpec,
  joinFlightSamples,
  openingOutcomes,
  prepareFlightSample,
  unopenedPoints,
} from "./flight-sample.js";
import { flightSampleSpec } from "./flight-sample-spec.js";
import type { DecisionInputs } from "./inputs.js";

const dual: DecisionInputs = {
  ...plan,
  recovery: {
    ...plan.recovery,
    drogue: { canopy: { shape: "conical", diameter: 0.3 } },
    main: { ...plan.recovery.main, opensAt: 150 },
  },
};
const fromIgnition: DecisionInputs = {
  ...plan,
  motor: { ...adjustableMotor, delay: { ...adjustableMotor.delay, clock: "ignition" } as typeof adjustableMotor.delay },
};
const strict: DecisionInputs = { ...plan, limits: { ...plan.limits, openingSpeed: 16, openingHeight: 700 } };

const setting = { delay: 12, delaySd: 1.2 };

test("prepareFlightSample() flies the ensemble's own draws and opens them as its judge samples them", () => {
  for (const inputs of [plan, fromIgnition, { ...plan, rocket: { ...plan.rocket, mass: 12 } }]) {
    const spec = flightSampleSpec(inputs, setting, { seed: 3 });
    const sample = prepareFlightSample(spec)(0, 64);
    const { flights, samples } = prepareEnsemble(spec.ensemble)(0, 64);
    for (let i = 0; i < 64; i++) {
      const o = i * flightSize;
      expect(flights[o + FLEW]).toBe(Number.isNaN(sample.top.time[i]) ? 0 : 1);
      if (flights[o + FLEW] !== 1) continue;
      expect(sample.top.time[i]).toBe(flights[o + APOGEE_TIME]);
      expect(sample.top.height[i]).toBe(flights[o + APOGEE_HEIGHT]);
      expect(sample.unopened.east[i]).toBe(flights[o + LANDING_EAST]);
      expect(sample.unopened.north[i]).toBe(flights[o + LANDING_NORTH]);
      expect(sample.opening.airspeed[i]).toBe(samples[i * sampleSize]);
      expect(sample.opening.height[i]).toBe(samples[i * sampleSize + 1]);
      if (!Number.isNaN(samples[i * sampleSize]))
        expect(sample.opening.time[i]! - sample.top.time[i]!).toBeCloseTo(samples[i * sampleSize + 2]!, 9);
    }
  }
});

/** The draws of a spec, each opened at its own delay and judged by looking at it. */
function* bruteOutcomes({ ensemble }: FlightSampleSpec, count: number) {
  const { inputs, options, spread, opening, seed, top, topMach } = ensemble;
  const model = prepareFlight(inputs, options);
  const work = new FastWork(fastTables(model, top, topMach));
  const normals = new Float64Array(drawSize);
  const values = new DrawnValues();
  const flight = new FastOutcome();
  const { delay, sd } = opening.settings[0]!;
  for (let i = 0; i < count; i++) {
    drawnValues(spread, drawNormals(seed, i, normals), values);
    setDraw(work, values);
    fastFlight(work, values.totalImpulse, values.burnTime, drawTolerance, flight);
    const time = openingAt(opening, flight, model.burn.end, delay) + sd * normalQuantile(normals[drawSize - 1]!);
    yield bruteJudge(work, flight, opening)(time);
  }
}

test("prepareFlightSample() gives each opening the class that looking at it gives", () => {
  const seen = new Set<number>();
  const cases: [DecisionInputs, number][] = [
    [plan, 12],
    [plan, 8],
    [strict, 14],
    [strict, 18],
    [{ ...plan, limits: { ...plan.limits, openingSpeed: 12 } }, 12],
    [plan, 29],
    [plan, 33],
  ];
  for (const [inputs, delay] of cases) {
    const spec = flightSampleSpec(inputs, { delay, delaySd: 1.5 }, { seed: 5 });
    const sample = prepareFlightSample(spec)(0, 96);
    let i = 0;
    for (const { outcome, holds } of bruteOutcomes(spec, 96)) {
      expect(sample.outcome[i], `delay ${delay}, draw ${i}`).toBe(outcome);
      expect(sample.holds[i]).toBe(holds ? 1 : 0);
      seen.add(outcome);
      i += 1;
    }
    expect(i).toBe(96);
  }
  // every outcome has been met
  expect([...seen].sort()).toEqual(openingOutcomes.map((_, k) => k));
});

test("prepareFlightSample(): the outcomes are as frequent as the odds say", () => {
  const count = 2048;
  const spec = flightSampleSpec(plan, setting, { seed: 7 });
  const { outcome, holds } = prepareFlightSample(spec)(0, count);
  const { judged } = prepareEnsemble(spec.ensemble)(0, count);
  const odds = (k: number) =>
    Array.from({ length: count }, (_, i) => judged[i * judgedSize + k]!).reduce((a, b) => a + b) / count;
  openingOutcomes.forEach((name, k) => {
    const share = outcome.filter((o) => o === k).length / count;
    // three standard errors of a share of 2048 independent draws; quasi-random ones do better
    expect(Math.abs(share - odds(k)), name).toBeLessThan(3 * Math.sqrt(Math.max(odds(k), 1e-3) / count));
  });
  expect(Math.abs(holds.reduce((a, b) => a + b, 0) / count - odds(HOLDS))).toBeLessThan(0.03);
});

test("prepareFlightSample() agrees with the plain flight and descent of each draw", () => {
  for (const inputs of [plan, dual]) {
    const spec = flightSampleSpec(inputs, setting, { seed: 1 });
    const sample = prepareFlightSample(spec)(0, 12);
    for (let i = 0; i < 12; i++) {
      const flight = fly(drawnInputs(inputs, inputs.spread, 1, i), { tolerance: 1e-8 });
      const time = sample.opening.time[i]!;
      const now = flight.at(time);
      const { landing, at } = descend(flight.model, now, 1e-8);
      // draws fly from tables at a loose tolerance: heights and places within 1e-4 of 2 km, speeds within 1e-3
      expect(Math.abs(sample.opening.height[i]! - now.position[2])).toBeLessThan(0.2);
      expect(Math.abs(sample.opening.east[i]! - now.position[0])).toBeLessThan(0.3);
      expect(Math.abs(sample.opening.north[i]! - now.position[1])).toBeLessThan(0.3);
      expect(Math.abs(sample.opening.airspeed[i]! - now.airspeed)).toBeLessThan(0.02);
      expect(Math.abs(sample.opened.time[i]! - landing!.time)).toBeLessThan(0.05);
      // carried three kilometres by the wind
      expect(Math.abs(sample.opened.east[i]! - landing!.position[0])).toBeLessThan(0.5);
      expect(Math.abs(sample.opened.north[i]! - landing!.position[1])).toBeLessThan(0.5);
      expect(Math.abs(sample.opened.groundSpeed[i]! - landing!.groundSpeed)).toBeLessThan(0.02);
      expect(Math.abs(sample.opened.descentSpeed[i]! - landing!.descentSpeed)).toBeLessThan(0.01);
      sample.times.forEach((t, k) => {
        const height = t < flight.events.landing!.time ? flight.at(t).position[2] : 0;
        expect(Math.abs(sample.unopenedHeights[i * unopenedPoints + k]! - height), `at ${t} s`).toBeLessThan(0.2);
      });
      for (let k = 0; k < descentPoints; k++) {
        const row = i * descentPoints + k;
        const height = at(sample.descentTimes[row]!).position[2];
        expect(Math.abs(sample.descentHeights[row]! - height)).toBeLessThan(0.3);
        if (k > 0) expect(sample.descentTimes[row]!).toBeGreaterThan(sample.descentTimes[row - 1]!);
      }
    }
  }
});

test("joinFlightSamples() puts runs together whatever their order, and draws do not depend on how they are split", () => {
  const spec = flightSampleSpec(plan, setting, { seed: 2 });
  const whole = prepareFlightSample(spec)(0, 20);
  const run = prepareFlightSample(structuredClone(spec));
  const parts = [run(13, 20), run(0, 5), run(5, 13)].map((chunk) => structuredClone(chunk));
  expect(joinFlightSamples(parts)).toEqual(whole);
});

test("prepareFlightSample() of a rocket that cannot fly is grounded, with no number in any column", () => {
  const heavy = { ...plan, rocket: { ...plan.rocket, mass: 60 } };
  const sample = prepareFlightSample(flightSampleSpec(heavy, setting))(0, 4);
  expect(Array.from(sample.outcome)).toEqual([GROUNDED, GROUNDED, GROUNDED, GROUNDED]);
  for (const group of [sample.top, sample.opening, sample.opened, sample.unopened])
    for (const column of Object.values(group)) expect(column).toEqual(new Float64Array(4).fill(Number.NaN));
});

test("prepareFlightSample() tells a grounded draw by its unopened flight alone", () => {
  const sample = prepareFlightSample(flightSampleSpec(plan, { delay: 60, delaySd: 1 }))(0, 4);
  expect(Array.from(sample.outcome)).toEqual([GROUNDED, GROUNDED, GROUNDED, GROUNDED]);
  expect(sample.opened.time).toEqual(new Float64Array(4).fill(Number.NaN));
  expect(sample.descentHeights.every(Number.isNaN)).toBe(true);
  expect(sample.unopened.time.every((t) => t > 20)).toBe(true);
});

test("flightSampleSpec() where nothing varies flies the nominal flight", () => {
  const spec = flightSampleSpec({ ...plan, spread: noSpread }, { delay: 12, delaySd: 0 });
  const sample = prepareFlightSample(spec)(0, 3);
  const { events } = fly(plan);
  for (let i = 0; i < 3; i++) {
    // tables stand between: a part in 1e5 of the height
    expect(Math.abs(sample.top.height[i]! - events.apogee!.position[2])).toBeLessThan(0.02);
    expect(sample.opening.time[i]).toBe(sample.opening.time[0]);
    expect(Math.abs(sample.opening.time[i]! - (events.burnout!.time + 12.5))).toBeLessThan(1e-9);
  }
});

test("flightSampleSpec() takes a flight that is known already, and its model", () => {
  const flight = fly(plan, { model: "aligned" });
  const spec = flightSampleSpec(plan, setting, { flight });
  expect(spec.ensemble.options).toBe(flight.options);
  const other = flightSampleSpec(plan, setting, { model: "aligned" });
  expect(other.ensemble.options.model).toBe("aligned");
  expect(Math.abs(other.until / spec.until - 1)).toBeLessThan(1e-3);
});
