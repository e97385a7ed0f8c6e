import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { HeightOverTime, type HeightOverTimeProps } from "./height-over-time.js";
import { heightAt, panelsOf, splitOf, stretchOf } from "./height-panels.js";

/** A made-up flight: up on a parabola to 700 m at 12 s, down at 7 m/s from the opening on. */
const climbing = (time: number): number => Math.max(0, 700 - (700 * (time - 12) ** 2) / 144);
const times = Array.from({ length: 61 }, (_, i) => i * 2);
const opened = times.map((time) => (time <= 12 ? climbing(time) : Math.max(0, 700 - 7 * (time - 12))));
const fan = (from: number, to: number) => {
  const at = times.filter((time) => time >= from && time <= to);
  const scaled = (share: number) => at.map((time) => (opened[times.indexOf(time)] ?? 0) * share);
  return { times: at, p05: scaled(0.92), p25: scaled(0.97), p50: scaled(1), p75: scaled(1.03), p95: scaled(1.08) };
};
const props: HeightOverTimeProps = {
  climb: fan(0, 14),
  descent: fan(10, 120),
  openings: {
    time: [11, 12, 13, 13.4, 14, 12.5],
    height: [690, 700, 690, 680, 90, Number.NaN],
    outcome: [1, 0, 2, 3, 4, 5],
  },
  nominal: { time: times, height: opened, opening: 6 },
  unopened: { time: times.slice(0, 13), height: times.slice(0, 13).map(climbing) },
  burnout: { time: 2.07, height: 150 },
  top: { p05: 651, p50: 711, p95: 775, time: 12 },
  ceiling: 900,
  floor: 100,
  units: "metric",
  state: "settled",
};
const none = { time: [], height: [], outcome: [] };
const still = { time: [], height: [], opening: null };

describe("HeightOverTime", () => {
  const drawn = renderToStaticMarkup(<HeightOverTime {...props} />);

  it("points each opening's mark the way the rocket was going", () => {
    const slope = (kind: string): number => {
      const [, x1, y1, x2, y2] = new RegExp(
        `<line x1="([\\d.]+)" y1="([\\d.]+)" x2="([\\d.]+)" y2="([\\d.]+)" class="open-${kind}"`,
      )
        .exec(drawn)
        ?.map(Number) ?? [0, 0, 0, 0, 0];
      return ((y2 ?? 0) - (y1 ?? 0)) / ((x2 ?? 0) - (x1 ?? 0));
    };
    // y is down in a drawing
    expect(slope("early")).toBeCloseTo(-1, 6);
    expect(slope("late")).toBeCloseTo(1, 6);
    expect(slope("lean")).toBe(0);
    expect(drawn).toMatch(/<circle [^>]*class="open-low"/);
    // a grounded flight has no height to open at
    expect(drawn).not.toContain("open-grounded");
  });

  it("draws the ceiling to scale between the highest flight and the axis", () => {
    const limit = /<line x1="[\d.]+" y1="([\d.]+)" x2="[\d.]+" y2="[\d.]+" class="limit"/.exec(drawn);
    const floor = /<line x1="[\d.]+" y1="([\d.]+)" x2="[\d.]+" y2="[\d.]+" class="thin dash"/.exec(drawn);
    const base = /<line x1="[\d.]+" y1="([\d.]+)" x2="[\d.]+" y2="[\d.]+" class="axis"/.exec(drawn);
    const rise = (match: RegExpExecArray | null): number => Number(base?.[1]) - Number(match?.[1]);
    expect(rise(limit) / rise(floor)).toBeCloseTo(9, 6);
  });

  it("names a far ceiling instead of drawing it", () => {
    const far = renderToStaticMarkup(<HeightOverTime {...props} ceiling={4000} />);
    expect(far).not.toContain('class="limit"');
    expect(far).toContain("ceiling 4000\u202fm, above this picture");
  });

  it("says the figures in sentences", () => {
    expect(drawn).toContain("half of the flights go above 711\u202fm, 9 in 10 from 651\u202fm to 775\u202fm");
    expect(drawn).toContain("top: half above 711\u202fm");
    expect(drawn).toContain("clean 1, early fast 1, late fast 1, lean fast 1, low 1");
  });

  it.each<[string, Partial<HeightOverTimeProps>]>([
    ["without spread", { climb: null, descent: null }],
    ["where nothing opens", { openings: none, nominal: { ...props.unopened, opening: null }, descent: null }],
    [
      "where it never leaves the guide",
      { openings: none, nominal: still, unopened: still, climb: null, descent: null, burnout: null, top: null },
    ],
    ["with one opening", { openings: { time: [12], height: [700], outcome: [0] } }],
    [
      "with figures that are not finite",
      {
        openings: { time: [Number.NaN], height: [1], outcome: [0] },
        top: { p05: Number.NaN, p50: Number.NaN, p95: Number.NaN, time: Number.NaN },
      },
    ],
    ["in feet without a ceiling", { units: "imperial", ceiling: null, state: "stale" }],
  ])("is drawable %s", (_, change) => {
    expect(renderToStaticMarkup(<HeightOverTime {...props} {...change} />)).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe("splitOf", () => {
  it("ends the climb after the last opening and the way down with the last flight", () => {
    const { split, end } = splitOf(props.climb, props.descent, props.openings, [props.nominal, props.unopened], 12);
    expect(split).toBeGreaterThan(14);
    expect(split).toBeLessThan(20);
    expect(end).toBeGreaterThan(112);
    expect(panelsOf(split, end, 40, 600, 20).map(({ from, to }) => [from, to])).toEqual([
      [0, split],
      [split, end],
    ]);
  });

  it("needs one panel where the flight is soon over", () => {
    const { split, end } = splitOf(null, null, none, [{ time: [0, 10], height: [0, 0] }], 8);
    expect(panelsOf(split, end, 0, 100, 20)).toHaveLength(1);
  });
});

describe("stretchOf", () => {
  it("cuts a flight at the ends of a stretch", () => {
    const flown = { time: [0, 10, 20], height: [0, 100, 0] };
    expect(heightAt(flown, 5)).toBe(50);
    expect(stretchOf(flown, 5, 15)).toEqual([
      [5, 50],
      [10, 100],
      [15, 50],
    ]);
  });
});
