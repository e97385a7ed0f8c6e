import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { TrendCalibration } from "./trend-calibration.js";
import { TrendDelays } from "./trend-delays.js";
import { TrendFactors } from "./trend-factors.js";

const flight = (key: string, factor: number, excluded = false) => ({
  key,
  label: key,
  name: `Flight ${key}`,
  factor,
  low: factor * 0.9,
  high: factor * 1.1,
  excluded,
});

describe("TrendFactors", () => {
  it("says and draws each flight with its interval, what was left out hollow and off the line", () => {
    const drawn = renderToStaticMarkup(
      <TrendFactors
        name="drag"
        title="Drag"
        of="drag"
        factors={[flight("1", 1.2), flight("2", 3, true), flight("3", 1.1)]}
      />,
    );
    expect(drawn).toContain("Flight 1: 1.20, 9 in 10 from 1.08 to 1.32.");
    expect(drawn).toContain("Flight 2: 3.00, 9 in 10 from 2.70 to 3.30, left out.");
    expect(drawn.match(/class="trend-in"/g)).toHaveLength(2);
    expect(drawn.match(/class="trend-out"/g)).toHaveLength(1);
    // the line joins two points
    expect(drawn).toMatch(/d="M[\d.,]+L[\d.,]+" class="trend-path"/);
  });

  it("is drawable with none, and with many", () => {
    for (const factors of [[], Array.from({ length: 60 }, (_, i) => flight(`2026-05-${i}`, 1))]) {
      const drawn = renderToStaticMarkup(<TrendFactors name="d" title="D" of="drag" factors={factors} />);
      expect(drawn).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});

describe("TrendDelays", () => {
  it("tells a delay that was seen from a bound", () => {
    const seen = { key: "a", name: "First", set: 10, flown: 9.4, low: 9.2, high: 9.6, excluded: false };
    const least = {
      key: "b",
      name: "Second",
      set: 8,
      flown: 7,
      low: 7,
      high: Number.POSITIVE_INFINITY,
      excluded: true,
    };
    const drawn = renderToStaticMarkup(<TrendDelays name="delays" title="Delays" delays={[seen, least]} />);
    expect(drawn).toContain("First: set to 10\u202fs, flown 9.4\u202fs, 9 in 10 from 9.2\u202fs to 9.6\u202fs.");
    expect(drawn).toContain("Second: set to 8\u202fs, flown at least 7.0\u202fs, left out.");
    expect(drawn).not.toMatch(/NaN|undefined/);
    expect(drawn.match(/="[^"]*Infinity/)).toBeNull();
  });
});

describe("TrendCalibration", () => {
  it("has a stroke for each bin that has flights, and says what came", () => {
    const bins = [
      { from: 0.8, to: 0.9, flights: 0, times: 0, given: null, interval: [0, 1] as const },
      { from: 0.9, to: 1, flights: 10, times: 9, given: 0.92, interval: [0.6, 0.98] as const },
    ];
    const drawn = renderToStaticMarkup(<TrendCalibration bins={bins} sentence="10 flights prove little." />);
    expect(drawn.match(/class="trend-in"/g)).toHaveLength(1);
    expect(drawn).toContain("10 flights prove little. Given 92\u202f%: 9 of 10 came clean");
    expect(drawn).toContain(">9 of 10<");
  });
});
