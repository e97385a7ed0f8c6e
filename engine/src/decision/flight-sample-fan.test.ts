import { expect, test } from "vitest";
import { plan } from "../../test/plan.js";
import { descend } from "../flight/descent.js";
import { fly } from "../flight/fly.js";
import { noSpread } from "../spread/drawn-values.js";
import { prepareFlightSample } from "./flight-sample.js";
import { type FanPart, type HeightFan, heightFan } from "./flight-sample-fan.js";
import { flightSampleSpec } from "./flight-sample-spec.js";

const parts: readonly FanPart[] = ["climb", "descent", "unopened"];
const bands = ["p05", "p25", "p50", "p75", "p95"] as const;
const sample = prepareFlightSample(flightSampleSpec(plan, { delay: 12, delaySd: 1.2 }))(0, 128);

const least = (column: Float64Array) => Math.min(...column);
const most = (column: Float64Array) => Math.max(...column);

test("heightFan() bands lie in order, over the times that each part spans", () => {
  for (const part of parts) {
    const fan = heightFan(sample, part);
    expect(fan.times).toHaveLength(96);
    for (let k = 0; k < 96; k++)
      for (let b = 1; b < 5; b++) expect(fan[bands[b]!][k]!).toBeGreaterThanOrEqual(fan[bands[b - 1]!][k]!);
  }
  const span = (part: FanPart) => [heightFan(sample, part).times[0], heightFan(sample, part).times[95]];
  expect(span("climb")).toEqual([0, most(sample.opening.time)]);
  expect(span("descent")).toEqual([least(sample.opening.time), most(sample.opened.time)]);
  expect(span("unopened")).toEqual([0, most(sample.unopened.time)]);
});

test("heightFan() is the share of flights below: half of them below its middle, one in twenty below its lowest band", () => {
  const fan = heightFan(sample, "unopened", 60);
  for (const k of [5, 15, 25, 35]) {
    const time = fan.times[k]!;
    const { times } = sample;
    const after = times.findIndex((t) => t > time);
    const share = (time - times[after - 1]!) / (times[after]! - times[after - 1]!);
    const heights = Array.from({ length: 128 }, (_, i) => {
      const row = sample.unopenedHeights.subarray(i * times.length);
      return row[after - 1]! + share * (row[after]! - row[after - 1]!);
    });
    const below = (height: number) => heights.filter((h) => h < height).length;
    expect(below(fan.p50[k]!)).toBe(64);
    expect(below(fan.p05[k]!)).toBe(7);
  }
});

/** Largest distance of a fan's middle from a height over time. */
function miss(fan: HeightFan, heightAt: (time: number) => number): number {
  return Math.max(...Array.from(fan.times, (t, k) => Math.abs(fan.p50[k]! - heightAt(t))));
}

test("heightFan() without spread is one line: the nominal flight, opened and unopened", () => {
  const one = prepareFlightSample(flightSampleSpec({ ...plan, spread: noSpread }, { delay: 12, delaySd: 0 }))(0, 2);
  const flight = fly(plan, { tolerance: 1e-7 });
  const opens = one.opening.time[0]!;
  const descent = descend(flight.model, flight.at(opens), 1e-7);
  const unopened = (time: number) => (time < flight.events.liftOff!.time ? 0 : flight.at(time).position[2]);
  // straight between points: a (0.2 s)²/8 at the thrust's 270 m/s², g (0.7 s)²/8 on the way down
  expect(miss(heightFan(one, "climb"), unopened)).toBeLessThan(2);
  expect(miss(heightFan(one, "unopened"), unopened)).toBeLessThan(2);
  expect(miss(heightFan(one, "descent"), (time) => descent.at(time).position[2])).toBeLessThan(2);
  for (const part of parts) {
    const fan = heightFan(one, part);
    for (const band of bands) expect(fan[band]).toEqual(fan.p50);
  }
});

test("heightFan() follows flights that outlast the common times down to their own landing", () => {
  const spec = flightSampleSpec({ ...plan, spread: noSpread }, { delay: 12, delaySd: 0 });
  const whole = heightFan(prepareFlightSample(spec)(0, 2), "unopened");
  const cut = heightFan(prepareFlightSample({ ...spec, until: 0.9 * whole.times[95]! })(0, 2), "unopened");
  expect(cut.times).toEqual(whole.times);
  // straight over the last four seconds, in which it falls ever faster: g (3.5 s)²/8, less the drag
  expect(Math.max(...cut.p50.map((height, k) => Math.abs(height - whole.p50[k]!)))).toBeLessThan(15);
});

test("heightFan() climb and descent are two views of the same flights", () => {
  const climb = heightFan(sample, "climb", 400);
  const descent = heightFan(sample, "descent", 400);
  for (let k = 0; k < 400; k++) {
    const time = descent.times[k]!;
    if (time > climb.times[399]!) break;
    const place = (time / climb.times[399]!) * 399;
    const cell = Math.min(398, Math.floor(place));
    const there = climb.p50[cell]! + (place - cell) * (climb.p50[cell + 1]! - climb.p50[cell]!);
    expect(Math.abs(descent.p50[k]! - there)).toBeLessThan(0.5);
  }
});

test("heightFan() counts landed flights as on the ground and lets grounded ones fall", () => {
  expect(heightFan(sample, "descent").p95[95]).toBe(0);
  const grounded = prepareFlightSample(flightSampleSpec(plan, { delay: 60, delaySd: 1 }))(0, 8);
  const fall = heightFan(grounded, "unopened");
  expect(heightFan(grounded, "climb")).toEqual(fall);
  expect(heightFan(grounded, "descent")).toEqual(fall);
});

test("heightFan() of a sample in which nothing flew has no rows", () => {
  const heavy = { ...plan, rocket: { ...plan.rocket, mass: 60 } };
  const fan = heightFan(prepareFlightSample(flightSampleSpec(heavy, { delay: 12, delaySd: 1 }))(0, 4), "climb");
  for (const column of Object.values(fan)) expect(column).toHaveLength(0);
});
