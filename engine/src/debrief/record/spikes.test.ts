import { expect, test } from "vitest";
import { spikesIn } from "./spikes.js";

const sigma = 0.3;
const time = Float64Array.from({ length: 400 }, (_, i) => 0.05 * i);
/** Free fall about a top at 10 s, with noise that repeats; a fixed pattern, no draw. */
const fall = (): Float64Array => time.map((t, i) => 500 - 4.9 * (t - 10) ** 2 + 0.4 * Math.sin(1.9 * i * i));

test("spikesIn() finds a transient by its first row and bridges it to within a few sigma", () => {
  for (const side of [1, -1]) {
    const height = fall();
    const clean = fall();
    [60, 40, 22, 12].forEach((jump, k) => {
      height[230 + k]! += side * jump;
    });
    const found = spikesIn(time, height, sigma);
    expect(found.length).toBe(1);
    expect(found[0]!.begin).toBe(230);
    expect(found[0]!.end).toBeGreaterThanOrEqual(233);
    const worst = Math.max(...height.map((h, i) => Math.abs(h - clean[i]!)));
    expect(worst).toBeLessThan(5 * sigma);
  }
});

test("spikesIn() says how long a transient took to stand out: its start lies within the row's spacing before that, evenly (closed form of a first-order lag)", () => {
  const spacing = 0.05;
  const [lag, fading] = [0.06, 0.17];
  const places = Array.from({ length: 50 }, (_, k) => {
    const start = 11.5 + (k / 50) * spacing;
    const height = fall().map((h, i) => {
      const since = time[i]! - start;
      return since < 0 || since > 0.5
        ? h
        : h + (60 * (Math.exp(-since / fading) - Math.exp(-since / lag)) * fading) / (fading - lag);
    });
    const { begin, rise } = spikesIn(time, height, sigma)[0]!;
    return (start - (time[begin]! - rise)) / spacing;
  });
  for (const place of places) expect(Math.abs(place + 0.5)).toBeLessThan(0.6);
  expect(places.reduce((sum, place) => sum + place, 0) / 50).toBeCloseTo(-0.5, 1);
});

test("spikesIn() leaves a flight without one alone, a hard boost too", () => {
  const height = fall();
  expect(spikesIn(time, height, sigma)).toEqual([]);
  const boost = time.map((t) => (t < 1 ? 0 : 0.5 * 150 * (t - 1) ** 2));
  expect(
    spikesIn(
      time.map((t) => t - 1),
      boost,
      sigma,
    ),
  ).toEqual([]);
});

test("spikesIn() takes a jump that does not come back for none", () => {
  const height = fall().map((h, i) => (i < 300 ? h : h + 80));
  const before = Float64Array.from(height);
  expect(spikesIn(time, height, sigma)).toEqual([]);
  expect(height).toEqual(before);
});

test("spikesIn() leaves out a gas that swings and dies away slowly until it is hidden by the noise", () => {
  const at = 11.5;
  const gas = time.map((t) => (t < at ? 0 : 110 * Math.exp(-(t - at) / 0.27) * Math.cos((2.5 * (t - at)) / 0.27)));
  const height = fall().map((h, i) => h + gas[i]!);
  const { end } = spikesIn(time, height, sigma)[0]!;
  expect(Math.abs(gas[end + 1]!)).toBeLessThan(0.3 * sigma);
  expect(time[end]! - at).toBeLessThan(4);
});

// before the gas, just after it began, and where it has died away
test.each([
  [11.05, 11.35],
  [11.85, 12.15],
  [12.05, 12.35],
])("spikesIn() finds a transient by its first row where rows from %d to %d s are missing", (from, to) => {
  const times = Float64Array.from({ length: 200 }, (_, i) => 0.1 * i).filter((t) => t < from || t > to);
  const at = 11.45;
  for (const size of [60, -150])
    for (const fading of [0.15, 0.25]) {
      const height = times.map((t, i) => {
        const gas = t < at ? 0 : size * Math.exp(-(t - at) / fading) * Math.cos((2.5 * (t - at)) / fading);
        return 500 - 4.9 * (t - 10) ** 2 + 0.4 * Math.sin(1.9 * i * i) + gas;
      });
      expect(spikesIn(times, height, sigma).map(({ begin }) => times[begin]!.toFixed(1))).toEqual(["11.5"]);
    }
});
