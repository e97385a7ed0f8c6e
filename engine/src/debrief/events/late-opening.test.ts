import { expect, test } from "vitest";
import type { FlightRecord } from "../flight-record.js";
import { descentSteps } from "./descent-steps.js";
import { fellSteadily } from "./fell-steadily.js";
import { lookAt } from "./look.js";

const rate = 20;
const [top, drogue, main, slow, slower] = [15, 17, 60, 23, 7] as const;

/** Top at 15 s, a fall that steadies at 23 m/s from 17 s on and at 7 m/s from 60 s on; `bump` metres are off in the 59th second. */
function record(bump: number): FlightRecord {
  const heightAt = (t: number): number => {
    const fallen = 1300 - 4.9 * (Math.min(t, drogue) - top) ** 2;
    return fallen - slow * Math.max(0, Math.min(t, main) - drogue) - slower * Math.max(0, t - main);
  };
  const time = Float64Array.from({ length: 75 * rate }, (_, i) => i / rate);
  const height = time.map((t, i) => heightAt(t) + 0.3 * Math.sin(i * i) + (t > 57.5 && t < 58.1 ? bump : 0));
  const none = { acceleration: null, accelerationError: null, flaws: [], marks: [], zero: 0 };
  return { time, height, speed: new Float64Array(time.length), heightError: 0.3, rate, ...none };
}

test("descentSteps() finds the second slowing after figures that are off, as over a gap", () => {
  for (const bump of [0, 4]) {
    const found = descentSteps(lookAt(record(bump), {}), top, 200, slower).main;
    expect(Math.abs(found!.time - main)).toBeLessThan(1.5);
    expect(found!.before).toBeCloseTo(slow, -0.5);
  }
});

test("fellSteadily() doubts a late opening into a steady fall, and no opening into a free one", () => {
  const look = lookAt(record(0), {});
  expect(fellSteadily(look, main, top)).toBe(true);
  expect(fellSteadily(look, drogue, top)).toBe(false);
  // a free fall that lasts: no canopy, seven seconds after the top
  const { time, ...rest } = record(0);
  const free = { ...rest, time, height: time.map((t) => 1300 - 4.9 * (t - top) ** 2) };
  expect(fellSteadily(lookAt(free, {}), top + 7, top)).toBe(false);
});
