import type { WindowEnd } from "@delaywright/engine";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { textWidth } from "./place-labels.js";
import { cellTone, columnOf, edgeLine, WeatherWindow } from "./weather-window.js";
import { WindGauge } from "./wind-gauge.js";

const limits = { leastClean: 0.8, leastHolds: 0.99 };
const winds = [0, 2, 4, 6, 8];
const sample = {
  delay: 10,
  winds,
  tilts: [0, 0.1],
  clean: [
    [0.9, 0.88, 0.82, 0.6, 0.3],
    [0.85, 0.8, 0.7, 0.4, 0.1],
  ],
  holds: [winds.map(() => 0.999), winds.map(() => 0.999)],
  ends: [4.4, 2].map((wind) => ({ wind, beyond: false, by: "clean" as const, check: null })),
};
const none = { wind: null, beyond: false, by: "clean", check: null } as const;

describe("cellTone", () => {
  it("follows the least odds, and never calls good what does not hold", () => {
    expect(cellTone(0.8, 0.99, limits)).toBe("good");
    expect(cellTone(0.9, 0.9, limits)).toBe("bad");
    expect(cellTone(0.65, 0.99, limits)).toBe("worse");
    expect(cellTone(0.1, 0.99, limits)).toBe("worst");
  });
});

describe("columnOf", () => {
  it("finds a wind between the columns, and stays in the table", () => {
    expect(columnOf(5, winds)).toBe(2.5);
    expect(columnOf(-9, winds)).toBe(-0.5);
    expect(columnOf(99, winds)).toBe(4.5);
    expect(columnOf(5, [])).toBe(0);
  });
});

describe("edgeLine", () => {
  it("goes on by half a row at either end, within the table", () => {
    const table = { top: 0, row: 40, from: 0, to: 200 };
    expect(edgeLine([100, 60], table)).toEqual([
      [120, 0],
      [100, 20],
      [60, 60],
      [40, 80],
    ]);
    expect(edgeLine([190, 60], table)[0]).toEqual([200, 0]);
    expect(edgeLine([], table)).toEqual([]);
  });
});

describe("WeatherWindow", () => {
  it("shows the edge of the least tilt in words", () => {
    const markup = renderToStaticMarkup(
      <WeatherWindow
        window={sample}
        limits={limits}
        today={{ wind: 2, doubt: 0.5, tilt: 0 }}
        windHeight={2}
        units="metric"
      />,
    );
    expect(markup).toContain("good up to 4\u202fm/s");
    expect(markup.replace(/\s/gu, " ")).toContain("Past it clean is below 80 %.");
    expect(markup).not.toMatch(/NaN|Infinity|undefined/);
  });

  it("keeps the edge's words inside the picture, below what today is drawn in", () => {
    const check = {
      id: "landing-inside",
      code: "landing-inside",
      verdict: "stop",
      value: 0.6,
      limit: 0.5,
      sense: "most",
    };
    const byRule = { wind: 2.8, beyond: false, by: "rule", check: { ...check, unit: "odds" } } as unknown as WindowEnd;
    const markup = renderToStaticMarkup(
      <WeatherWindow
        window={{ ...sample, ends: [byRule, byRule] }}
        limits={limits}
        today={{ wind: 3, doubt: 0.5, tilt: 0 }}
        windHeight={2}
        units="imperial"
      />,
    );
    const [, width, height] = (/viewBox="0 0 (\S+) (\S+)"/.exec(markup) ?? []).map(Number);
    const lines = [...markup.matchAll(/class="limit-word" x="(\S+)" y="(\S+)">([^<]+)</g)];
    expect(lines.map(([, , , words]) => words).join(" ")).toMatch(/^good up to .* most 50.%$/u);
    const arrow = Number(/class="solid" d="M\S+ (\S+?)l/.exec(markup)?.[1]);
    for (const [, x, y, words] of lines) {
      expect(Number(x) + textWidth(words ?? "", 13, true)).toBeLessThanOrEqual(width ?? 0);
      expect(Number(y)).toBeGreaterThan(arrow + 13);
      expect(Number(y)).toBeLessThan(height ?? 0);
    }
  });

  it("has no attribute that is not a number, even where no wind is good or nothing is known", () => {
    const markup = renderToStaticMarkup(
      <>
        <WeatherWindow
          window={{ ...sample, ends: [none, none], clean: [[Number.NaN]] }}
          limits={limits}
          today={null}
          windHeight={2}
          units="imperial"
        />
        <WeatherWindow
          window={{ delay: 0, winds: [], tilts: [], clean: [], holds: [], ends: [] }}
          limits={limits}
          today={{ wind: Number.NaN, doubt: Number.NaN, tilt: 0 }}
          unopened={{ direction: "north", within: [null] }}
          windHeight={2}
          units="metric"
        />
      </>,
    );
    expect(markup).not.toMatch(/"[^"]*(NaN|Infinity|undefined)[^"]*"/);
  });
});

describe("WindGauge", () => {
  it("says in words up to which wind it is good", () => {
    expect(
      renderToStaticMarkup(<WindGauge now={2.2} doubt={0.7} edge={4.5} max={8} units="metric" stale={null} />),
    ).toContain("Good up to 4.5\u202fm/s.");
    expect(
      renderToStaticMarkup(<WindGauge now={2.2} doubt={0.7} edge={null} max={8} units="metric" stale={null} />),
    ).toContain("no wind is good");
  });

  it("names the unit with the reading and with the edge, whatever was typed", () => {
    const markup = renderToStaticMarkup(
      <WindGauge now={4} doubt={0.7} edge={2.75} max={8} units="imperial" stale={null} />,
    );
    expect(markup).toContain(">now 9\u202fmph<");
    expect(markup).toContain(">edge 6\u202fmph<");
  });

  it("has no attribute that is not a number", () => {
    for (const now of [Number.NaN, -3, 0, 40, Number.POSITIVE_INFINITY])
      for (const edge of [null, Number.NaN, 0, 99])
        expect(
          renderToStaticMarkup(
            <WindGauge now={now} doubt={now} edge={edge} max={Number.NaN} units="imperial" stale="2 h ago" />,
          ),
        ).not.toMatch(/"[^"]*(NaN|Infinity|undefined)[^"]*"/);
  });
});
