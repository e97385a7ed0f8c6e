import { expect, test } from "vitest";
import { flightsIn, type LogSamples } from "../index.js";

/** Height of one flight of 12 s to its top, then 6 m/s down; 0 before and after. */
function flown(t: number): number {
  if (t < 0) return 0;
  if (t < 2) return 40 * t * t;
  if (t < 12) return 160 + 160 * (t - 2) - 8 * (t - 2) ** 2;
  return Math.max(0, 960 - 6 * (t - 12));
}

/** Rows at a rate, flights at the times given; a noise that repeats, and a slow drift of the weather. */
function rows(rate: number, seconds: number, flights: readonly number[]): LogSamples {
  const n = Math.floor(rate * seconds);
  const time = Float64Array.from({ length: n }, (_, i) => i / rate);
  const height = time.map((t, i) => {
    const up = flights.reduce((sum, at) => sum + flown(t - at), 0);
    return up + 0.4 * Math.sin(1.9 * i * i) + 4 * Math.sin(t / 700);
  });
  return { time, height, marks: [] };
}

const near = (samples: LogSamples): number[] => flightsIn(samples).map((f) => f.liftOff);

test("flightsIn() finds a flight after an hour on the pad, at 5 and at 100 samples a second", () => {
  for (const rate of [5, 100]) {
    const [flight, ...more] = flightsIn(rows(rate, 3900, [3600]));
    expect(more).toEqual([]);
    expect(Math.abs(flight!.liftOff - 3600)).toBeLessThan(0.8);
    expect(Math.abs(flight!.top - 960)).toBeLessThan(10);
    expect(flight!.to - flight!.from).toBeLessThan(rate * 260);
  }
});

test("flightsIn() finds several flights in one file, each with its own rows", () => {
  const spans = flightsIn(rows(20, 1200, [60, 400, 800]));
  expect(spans.length).toBe(3);
  [60, 400, 800].forEach((at, i) => {
    expect(Math.abs(spans[i]!.liftOff - at)).toBeLessThan(0.8);
    if (i > 0) expect(spans[i]!.from).toBeGreaterThanOrEqual(spans[i - 1]!.to - 20 * 30);
  });
});

test("flightsIn() starts anew where the clock goes back, and takes one misread time for none", () => {
  const once = rows(20, 300, [60]);
  const twice: LogSamples = {
    time: Float64Array.of(...once.time.subarray(0, 500), ...once.time),
    height: Float64Array.of(...once.height!.subarray(0, 500), ...once.height!),
    marks: [],
  };
  const spans = flightsIn(twice);
  expect(spans.length).toBe(1);
  expect(spans[0]!.from).toBeGreaterThanOrEqual(500);
  const misread = Float64Array.from(once.time);
  misread[2000] = 1e6;
  misread[2400] = 0;
  expect(flightsIn({ ...once, time: misread }).length).toBe(1);
});

test("flightsIn() tells flights from pressure, and from acceleration alone", () => {
  const { time } = rows(20, 400, []);
  // U.S. Standard Atmosphere 1976, check values section 15
  const pressure = time.map((t) => 101_325 * (1 - flown(t - 100) / 44330.76923) ** 5.25587611);
  expect(near({ time, pressure, marks: [] }).length).toBe(1);
  const acceleration = time.map((t) => {
    const s = t - 100;
    if (s < 0 || s > 175) return 9.81;
    return s < 2 ? 90 : s < 12 ? -1 : 9.81 + 3 * Math.sin(5 * s);
  });
  const spans = flightsIn({ time, acceleration, marks: [] });
  expect(spans.length).toBe(1);
  expect(Math.abs(spans[0]!.liftOff - 100)).toBeLessThan(0.8);
});

test("flightsIn() finds none where nothing flies: drift, gusts, one wild row, all equal, no numbers, no rows", () => {
  const still = rows(20, 3600, []);
  expect(flightsIn(still)).toEqual([]);
  expect(flightsIn({ ...still, height: still.height!.map((h, i) => (i % 900 === 0 ? 500 : h)) })).toEqual([]);
  expect(flightsIn({ ...still, height: still.height!.map(() => 7) })).toEqual([]);
  expect(flightsIn({ ...still, height: still.height!.map(() => Number.NaN) })).toEqual([]);
  expect(flightsIn({ time: new Float64Array(0), height: new Float64Array(0), marks: [] })).toEqual([]);
  expect(flightsIn({ time: still.time.map(() => 0), height: still.height!, marks: [] })).toEqual([]);
  expect(flightsIn({ ...still, height: still.height!.map((_, i) => (i % 2 ? 1e308 : -1e308)) }).length).toBeLessThan(2);
});
