import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { FlownHandle } from "./flown-handle.js";
import { placeMarks } from "./flown-labels.js";
import { FlownPlot, type FlownPlotProps } from "./flown-plot.js";
import { pointsOf } from "./flown-points.js";
import { clampedWindow, keyedTime, movedWindow, rangeOf, zoomedWindow } from "./flown-view.js";
import { textWidth } from "./place-labels.js";
import { scaleOf } from "./scale.js";

const whole = { from: -1, to: 59 };
const time = Array.from({ length: 61 }, (_, i) => i - 1);
const line = (value: (t: number) => number) => ({ time, value: time.map(value) });
const props: FlownPlotProps = {
  window: whole,
  height: { flown: line((t) => 600 - (t - 11) ** 2), predicted: line((t) => 580 - (t - 11) ** 2) },
  band: null,
  residual: { flown: line(() => 20), predicted: null },
  speed: { flown: line((t) => 22 - 2 * t), predicted: null },
  acceleration: null,
  marks: [
    { name: "apogee", word: "apogee", time: 11, predicted: 10.5 },
    { name: "opening", word: "opening", time: 12.5, predicted: 11 },
    { name: "main", word: "main", time: null, predicted: 30 },
  ],
  flaws: [{ from: 12.4, to: 12.9 }],
  chosen: "apogee",
  units: "metric",
  description: "It went to 600 m, where 580 m were predicted.",
};

describe("windows", () => {
  it("zoom about an event, move by a part of themselves, and never leave the record", () => {
    expect(zoomedWindow({ from: 0, to: 20 }, 0.5, whole, 11)).toEqual({ from: 5.5, to: 15.5 });
    expect(zoomedWindow({ from: 0, to: 20 }, 0.5, whole)).toEqual({ from: 5, to: 15 });
    expect(zoomedWindow({ from: 0, to: 20 }, 10, whole)).toEqual(whole);
    expect(movedWindow({ from: 40, to: 50 }, 0.5, whole)).toEqual({ from: 45, to: 55 });
    expect(movedWindow({ from: 50, to: 58 }, 1, whole)).toEqual({ from: 51, to: 59 });
    expect(clampedWindow({ from: -8, to: 2 }, whole)).toEqual({ from: -1, to: 9 });
    const small = zoomedWindow({ from: 10, to: 10.6 }, 0.1, whole);
    expect(small.to - small.from).toBeCloseTo(0.5, 12);
  });

  it("have the range of what lies in them, whatever is not a number", () => {
    expect(rangeOf([{ time: [0, 1, 2], value: [5, Number.NaN, 9] }, null], { from: 0, to: 1 })).toEqual([5, 5]);
    expect(rangeOf([{ time: [0], value: [5] }], { from: 1, to: 2 })).toBeNull();
  });
});

describe("pointsOf()", () => {
  const x = scaleOf(10, 12, 50, 250);
  const y = scaleOf(-100, 100, 300, 0);
  const place = ({ time: times, value }: { time: readonly number[]; value: readonly number[] }, i: number) => [
    x(times[i] ?? 0),
    y(value[i] ?? 0),
  ];

  it("leaves out what lies outside of the window, but for one point beyond each edge", () => {
    const steady = line((t) => t);
    expect(pointsOf(steady, { from: 10, to: 12 }, x, y)).toEqual([10, 11, 12, 13, 14].map((i) => place(steady, i)));
    expect(pointsOf(steady, { from: 70, to: 80 }, x, y)).toEqual([place(steady, 60)]);
    expect(pointsOf({ time: [], value: [] }, { from: 10, to: 12 }, x, y)).toEqual([]);
  });

  it("keeps every spike of a line with many points in a pixel, and few points for each", () => {
    const dense = Array.from({ length: 20_001 }, (_, i) => 10 + i / 10_000);
    const spiky = { time: dense, value: dense.map((_, i) => (i === 7_777 ? 90 : i === 12_345 ? -80 : Math.sin(i))) };
    const points = pointsOf(spiky, { from: 10, to: 12 }, x, y);
    expect(points.length).toBeLessThanOrEqual(4 * 201);
    expect(points).toContainEqual(place(spiky, 7_777));
    expect(points).toContainEqual(place(spiky, 12_345));
    const along = points.map(([at]) => at);
    expect(along).toEqual(along.toSorted((a, b) => a - b));
    expect([points[0], points.at(-1)]).toEqual([place(spiky, 0), place(spiky, 20_000)]);
  });

  it("goes on past what is not a number", () => {
    const torn = { time: [10, 10.5, 11], value: [1, Number.NaN, 3] };
    expect(pointsOf(torn, { from: 10, to: 12 }, x, y)).toEqual([place(torn, 0), place(torn, 2)]);
  });
});

describe("placeMarks()", () => {
  it("keeps words apart, also of events within half a second", () => {
    const marks = [0, 0.2, 0.4, 1.8, 11, 12.5].map((at) => ({
      name: `${at}`,
      word: "guide exit",
      time: at,
      predicted: null,
    }));
    const { placed, rows } = placeMarks(marks, whole, scaleOf(whole.from, whole.to, 46, 382), 1);
    expect(placed).toHaveLength(6);
    expect(rows).toBeLessThanOrEqual(6);
    for (const one of placed)
      for (const other of placed) {
        if (one === other || one.row !== other.row) continue;
        const apart = Math.abs(one.x - other.x);
        expect(apart).toBeGreaterThan(textWidth(one.x < other.x ? one.words : other.words, 12, true));
      }
  });
});

describe("FlownPlot", () => {
  it("draws flown over predicted in each panel that there is, and the marks that were found", () => {
    const drawn = renderToStaticMarkup(<FlownPlot {...props} />);
    expect(drawn.match(/class="flown-line"/g)).toHaveLength(3);
    expect(drawn.match(/class="flown-predicted"/g)).toHaveLength(1);
    expect(drawn.match(/class="flown-foretold"/g)).toHaveLength(3);
    expect(drawn).toContain("apogee 11.0");
    expect(drawn).not.toContain(">main ");
    expect(drawn).toContain("It went to 600 m, where 580 m were predicted.");
    expect(drawn).not.toMatch(/NaN|undefined|Infinity/);
  });

  it("draws the band of predicted heights behind the lines, and makes room for it", () => {
    const band = { time, low: time.map((t) => 500 - (t - 11) ** 2), high: time.map((t) => 1650 - (t - 11) ** 2) };
    const drawn = renderToStaticMarkup(<FlownPlot {...props} band={band} />);
    expect(drawn.indexOf('class="veil"')).toBeLessThan(drawn.indexOf('class="flown-line"'));
    expect(drawn.match(/class="veil"/g)).toHaveLength(2);
    expect(drawn).toContain("9 in 10 predicted flights");
    expect(drawn).toContain(">1500<");
    expect(renderToStaticMarkup(<FlownPlot {...props} />)).not.toContain("9 in 10");
  });

  it("is drawable in feet, zoomed in, and with nothing to draw", () => {
    const nothing = { flown: { time: [], value: [] }, predicted: null };
    const empty = renderToStaticMarkup(
      <FlownPlot {...props} height={nothing} speed={null} residual={null} marks={[]} />,
    );
    const feet = renderToStaticMarkup(<FlownPlot {...props} units="imperial" window={{ from: 10, to: 12 }} />);
    for (const drawn of [empty, feet]) expect(drawn).not.toMatch(/NaN|undefined|Infinity/);
    expect(feet).toContain("height, ft");
    expect(feet).toContain("apogee 11.00");
  });
});

describe("FlownHandle", () => {
  it("is a slider with its time in words, and goes by keys within its range", () => {
    const range = { from: 9, to: 12 };
    const drawn = renderToStaticMarkup(
      <FlownHandle
        label="Apogee"
        window={whole}
        time={11}
        range={range}
        words="11.00 s, 600 m"
        step={0.01}
        onMove={() => undefined}
        onDone={() => undefined}
      />,
    );
    expect(drawn).toMatch(/role="slider"[^>]*aria-label="Apogee"/);
    expect(drawn).toMatch(/aria-valuemin="9"[^>]*aria-valuemax="12"[^>]*aria-valuenow="11"/);
    const key = (name: string, shiftKey = false) => keyedTime({ key: name, shiftKey }, 11, 0.01, range);
    expect(key("ArrowLeft")).toBeCloseTo(10.99, 12);
    expect(key("ArrowRight", true)).toBeCloseTo(11.1, 12);
    expect(key("PageDown")).toBeCloseTo(10.9, 12);
    expect([key("Home"), key("End"), key("Tab")]).toEqual([9, 12, null]);
  });
});
