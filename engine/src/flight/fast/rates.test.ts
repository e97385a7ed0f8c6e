import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { expect, test } from "vitest";
import { flightE, tableDrag } from "../../../reference/trajectories/inputs.js";
import { fastWork, flyDraw, veeringWind } from "../../../test/fast.js";
import { exampleRocket } from "../../rocket/example-rocket.js";
import * as plainAligned from "../aligned.js";
import { settledSwing } from "../bounds.js";
import * as plainGuide from "../guide.js";
import { swingLeft } from "../hand-over.js";
import type { FlightInputs } from "../inputs.js";
import { prepareFlight, type Stretch } from "../model.js";
import { type FlightOptions, resolveFlightOptions } from "../options.js";
import * as plainPitching from "../pitching.js";
import { alignedRates, coastRates, guideRates, pitchingRates } from "./rates.js";
import { handOver } from "./settle.js";
import * as at from "./slots.js";
import type { FastWork } from "./work.js";

const cases = {
  "constant drag": flightE,
  "table drag": { ...flightE, rocket: { ...flightE.rocket, drag: tableDrag } },
  "built-up drag": { ...flightE, rocket: exampleRocket },
  "winds aloft": { ...flightE, wind: veeringWind },
} satisfies Readonly<Record<string, FlightInputs>>;
type Case = keyof typeof cases;
const named = Object.entries(cases) as [Case, FlightInputs][];

/** A nominal stretch, as the fast flight loads it. */
function load(w: FastWork, stretch: Stretch): void {
  const c = w.slots;
  const { totalImpulse } = w.tables.model;
  c[at.STRETCH_FROM] = stretch.from;
  c[at.STRETCH_TO] = stretch.to;
  c[at.THRUST] = stretch.thrust;
  c[at.THRUST_SLOPE] = stretch.slope;
  c[at.SPENT0] = stretch.impulse / totalImpulse;
  c[at.SPENT1] = stretch.thrust / totalImpulse;
  c[at.SPENT2] = (0.5 * stretch.slope) / totalImpulse;
  c[at.THRUSTING] = stretch.thrusting ? 1 : 0;
}

type Random = (from: number, to: number) => number;

function randomFrom(seed: number): Random {
  const generator = xoroshiro128plus(seed);
  return (from, to) => from + (to - from) * uniformFloat64(generator);
}

const cross = (a: readonly number[], b: readonly number[]): [number, number, number] => [
  a[1]! * b[2]! - a[2]! * b[1]!,
  a[2]! * b[0]! - a[0]! * b[2]!,
  a[0]! * b[1]! - a[1]! * b[0]!,
];

/** A plain pitching state: rising at some angle, axis within 20 degrees of the path, swinging. */
function pitchingState(random: Random, swing = 0.35, height = 1500): Float64Array {
  const z = random(3, height);
  const speed = random(20, 300);
  const lean = random(0, 0.5);
  const toward = random(0, 2 * Math.PI);
  const path = [Math.sin(lean) * Math.sin(toward), Math.sin(lean) * Math.cos(toward), Math.cos(lean)];
  const rough = path.map((p) => p + random(-swing, swing));
  const axis = rough.map((a) => a / Math.hypot(...rough));
  const axisRate = cross(cross(axis, [random(-9, 9), random(-9, 9), random(-9, 9)]), axis).map((d) => d * swing);
  return Float64Array.of(0, 0, z, ...path.map((p) => p * speed), ...axis, ...cross(axis, axisRate));
}

/** Height, velocity, axis and its rate. */
function fastState(y: Float64Array): Float64Array {
  const axis = y.subarray(6, 9);
  return Float64Array.of(...y.subarray(2, 6), ...axis, ...cross([...y.subarray(9, 12)], [...axis]));
}

const length = (v: Iterable<number>): number => Math.hypot(...v);

/**
 * Difference of two vectors, over the length of the first.
 *
 * The plain functions evaluate the formulas, the fast ones read tables that are linear between their nodes: air (1e-6), wind at
 * some 200 nodes, drag and slopes every 0.005 of Mach, where the slope bends hardest near Mach 0.9 (1e-4). The bounds below are
 * those tables' errors, not rounding; with every table flat but the air's, 2e-6 is left.
 */
function miss(plain: Iterable<number>, fast: Iterable<number>): number {
  const [a, b] = [[...plain], [...fast]];
  return length(a.map((v, i) => v - b[i]!)) / length(a);
}

function worstPitching(inputs: FlightInputs, options: FlightOptions): { velocity: number; turn: number } {
  const model = prepareFlight(inputs, resolveFlightOptions(options));
  const w = fastWork(inputs, options);
  const random = randomFrom(7);
  const plain = new Float64Array(12);
  const fast = new Float64Array(10);
  let [velocity, turn] = [0, 0];
  for (let i = 0; i < 300; i++) {
    const stretch = model.stretches[Math.floor(random(0, model.stretches.length))]!;
    load(w, stretch);
    const t = random(stretch.from, Math.min(stretch.to, stretch.from + 5));
    const y = pitchingState(random);
    plainPitching.pitchingRates(model, stretch)(t, y, plain);
    pitchingRates(w, t, fastState(y), fast, 0);
    expect(fast[0]).toBe(plain[2]);
    velocity = Math.max(velocity, miss(plain.subarray(3, 6), fast.subarray(1, 4)));
    expect(miss(plain.subarray(6, 9), fast.subarray(4, 7))).toBeLessThan(1e-12);
    // d = w × a, so dd/dt = dw/dt × a + w × (w × a)
    const axis = [...y.subarray(6, 9)];
    const spin = [...y.subarray(9, 12)];
    const bend = cross(spin, cross(spin, axis));
    const expected = cross([...plain.subarray(9, 12)], axis).map((v, k) => v + bend[k]!);
    turn = Math.max(turn, miss(expected, fast.subarray(7, 10)));
  }
  return { velocity, turn };
}

const still: FlightInputs = { ...flightE, wind: { ...flightE.wind, east: 0, north: 0 } as FlightInputs["wind"] };

test("pitchingRates() of the fast flight are those of the plain one to 2e-6 where only the air is a table", () => {
  const { velocity, turn } = worstPitching(still, { compressibility: false });
  expect(velocity).toBeLessThan(2e-6);
  expect(turn).toBeLessThan(2e-6);
});

test("pitchingRates() of the fast flight are those of the plain one, but for the tables' errors", () => {
  // a kink of the winds-aloft table lies inside one of the wind table's cells
  const bounds = { "constant drag": 3e-4, "table drag": 3e-4, "built-up drag": 3e-4, "winds aloft": 3e-3 };
  for (const [name, inputs] of named) {
    const { velocity, turn } = worstPitching(inputs, {});
    expect(velocity, name).toBeLessThan(bounds[name]);
    expect(turn, name).toBeLessThan(bounds[name]);
  }
});

test("alignedRates() of the fast flight are those of the plain one, with and without the settled trim", () => {
  // built-up drag bends hardest where the Reynolds number is lowest; at a kink of the winds aloft the shear jumps
  const bounds = { "constant drag": 5e-5, "table drag": 5e-5, "built-up drag": 3e-4, "winds aloft": 2e-2 };
  for (const [name, inputs] of named)
    for (const model of ["aligned", "pitching"] as const) {
      const plainModel = prepareFlight(inputs, resolveFlightOptions({ model }));
      const w = fastWork(inputs, { model });
      const random = randomFrom(8);
      const plain = new Float64Array(6);
      const fast = new Float64Array(4);
      let worst = 0;
      for (let i = 0; i < 300; i++) {
        const stretch = plainModel.stretches[Math.floor(random(0, plainModel.stretches.length))]!;
        load(w, stretch);
        const t = random(stretch.from, Math.min(stretch.to, stretch.from + 5));
        const y = pitchingState(random).subarray(0, 6);
        plainAligned.alignedRates(plainModel, stretch, model === "pitching")(t, y, plain);
        alignedRates(w, t, y.subarray(2, 6), fast, 0);
        worst = Math.max(worst, miss(plain.subarray(3, 6), fast.subarray(1, 4)));
      }
      expect(worst, `${name}, ${model}`).toBeLessThan(bounds[name]);
    }
});

test("coastRates() of the fast flight are its alignedRates() once the motor is out", () => {
  for (const [name, inputs] of named)
    for (const model of ["aligned", "pitching"] as const) {
      const w = fastWork(inputs, { model });
      // a flight fills in the mass that stays
      flyDraw(w);
      const stretch = w.tables.model.stretches.at(-1)!;
      load(w, stretch);
      const random = randomFrom(11);
      const rates = new Float64Array(8);
      for (let i = 0; i < 200; i++) {
        const y = pitchingState(random).subarray(2, 6);
        alignedRates(w, stretch.from + 1, y, rates, 0);
        coastRates(w, y, rates, 4);
        // the same sums in another order
        expect(miss(rates.subarray(0, 4), rates.subarray(4)), `${name}, ${model}`).toBeLessThan(1e-12);
      }
    }
});

test("guideRates() of the fast flight are those of the plain one, the air at the pad taken for all of the guide", () => {
  for (const [name, inputs] of named) {
    const model = prepareFlight(inputs, resolveFlightOptions({}));
    const w = fastWork(inputs);
    const random = randomFrom(9);
    const plain = new Float64Array(2);
    const fast = new Float64Array(2);
    let worst = 0;
    for (let i = 0; i < 300; i++) {
      const stretch = model.stretches[Math.floor(random(0, 3))]!;
      load(w, stretch);
      const t = random(stretch.from, stretch.to);
      const y = Float64Array.of(random(0, 2), random(0, 40));
      plainGuide.guideRates(model, stretch)(t, y, plain);
      guideRates(w, t, y, fast, 0);
      expect(fast[0]).toBe(plain[0]);
      worst = Math.max(worst, Math.abs(fast[1]! - plain[1]!));
    }
    // density falls by 2e-4 in two metres, of some 2 m/s² of drag; the rockets push with 200 m/s²
    expect(worst, name).toBeLessThan(1e-3);
  }
});

test("handOver() of the fast flight decides as swingLeft() does and adds the same impulse", () => {
  const bounds = { "constant drag": 1e-3, "table drag": 1e-3, "built-up drag": 1e-3, "winds aloft": 1e-2 };
  for (const [name, inputs] of named) {
    const model = prepareFlight(inputs, resolveFlightOptions({}));
    const w = fastWork(inputs);
    const random = randomFrom(10);
    let [handed, kept, worst, largest] = [0, 0, 0, 0];
    for (let i = 0; i < 600; i++) {
      const stretch = model.stretches[Math.floor(random(1, model.stretches.length))]!;
      load(w, stretch);
      const t = random(stretch.from, Math.min(stretch.to, stretch.from + 5));
      const y = pitchingState(random, 0.02);
      const wind = model.windAt(y[2]!);
      // a swing about the airflow, not about the path
      const through = [y[3]! - wind[0], y[4]! - wind[1], y[5]!];
      const leaned = [0, 1, 2].map((j) => through[j]! / length(through) + random(-0.01, 0.01));
      y.set(
        leaned.map((a) => a / length(leaned)),
        6,
      );
      const { amplitude, impulse } = swingLeft(model, stretch, t, y);
      // the tables' nearest node below stands for the air and the slopes: only a swing right at the bound may be judged otherwise
      if (Math.abs(amplitude / settledSwing - 1) < 0.03) continue;
      w.y.set(fastState(y));
      const did = handOver(w, t);
      expect(did, `${name}: ${amplitude}`).toBe(amplitude < settledSwing);
      if (!did) {
        kept += 1;
        expect(w.y).toEqual(fastState(y));
        continue;
      }
      handed += 1;
      const added = [1, 2, 3].map((k) => w.y[k]! - y[k + 2]!);
      worst = Math.max(worst, length(added.map((v, k) => v - impulse[k]!)));
      largest = Math.max(largest, length(impulse));
    }
    expect(Math.min(handed, kept), name).toBeGreaterThan(100);
    expect(largest, name).toBeGreaterThan(0.1);
    expect(worst, name).toBeLessThan(bounds[name]);
  }
});
