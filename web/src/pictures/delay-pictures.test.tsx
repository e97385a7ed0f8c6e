import type { SettingData } from "@delaywright/documents";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { labelEnds, labelsThatFit, type MiddleLabel, notchPlaces, wholeSeconds } from "./delay-axis.js";
import { OddsByDelay, type OddsByDelayProps } from "./odds-by-delay.js";
import { delayModel } from "./odds-model.js";
import { OpeningSpeed } from "./opening-speed.js";
import { besideLine } from "./plate.js";
import { scaleOf } from "./scale.js";
import { slicesOf } from "./stacked-bar.js";
import { Strip } from "./strip.js";
import { Thumbnail } from "./thumbnail.js";

const noSpeed = { p05: null, p50: null, p90: null, p95: null };

function setting(delay: number, more: Partial<SettingData> = {}): SettingData {
  const early = Math.min(0.9, Math.max(0, (10 - delay) / 8));
  return {
    delay,
    removed: 30 - delay,
    end: null,
    spacers: [],
    depth: (30 - delay) * 8e-4,
    odds: {
      clean: 0.95 - early,
      earlyFast: early,
      lateFast: 0.02,
      leanFast: 0.02,
      low: 0.01,
      grounded: 0,
      holds: 0.99,
      error: 0.03,
      holdsError: 0.01,
    },
    openingSpeed: { p05: 6, p50: 12, p90: 18, p95: 20 },
    openingHeight: { p05: 200, p10: 220, p50: 300 },
    secondsFromApogee: { p05: -1, p50: 0, p95: 1 },
    delaySd: 0.8,
    firesFirst: null,
    ...more,
  };
}

const comb = (count: number, from = 0, to = 30): readonly SettingData[] =>
  Array.from({ length: count }, (_, i) => setting(count === 1 ? from : from + ((to - from) * i) / (count - 1)));

const plain: OddsByDelayProps = {
  settings: comb(5, 6, 14),
  curve: Array.from({ length: 30 }, (_, i) => ({
    delay: i,
    odds: setting(i).odds,
    openingSpeed: i === 20 ? null : { p05: 8, p50: 14, p95: 40 },
  })),
  density: { from: 8.5, step: 0.1, values: [0.1, 0.5, 1, 1.5, 1, 0.5, 0.1] },
  coast: { p05: 8.5, p50: 8.9, p95: 9.2 },
  limits: { openingSpeed: 20, leastClean: 0.8 },
  chosen: 10,
  next: true,
  state: "settled",
  cutSoFar: null,
  units: "metric",
};

/** Numbers of one attribute of all elements of a kind that have a class. */
function attributes(markup: string, element: string, className: string, name: string): readonly number[] {
  return [...markup.matchAll(new RegExp(`<${element}[^>]*class="${className}"[^>]*>`, "g"))].map((found) =>
    Number(new RegExp(` ${name}="([^"]*)"`).exec(found[0])?.[1]),
  );
}

describe("slicesOf", () => {
  it("adds up to 1 where the odds do", () => {
    for (const { odds } of comb(31)) {
      const slices = slicesOf(odds);
      expect(slices.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      slices.forEach(({ from }, i) => {
        const before = slices[i - 1];
        expect(from).toBeCloseTo(before ? before.from + before.share : 0, 9);
      });
    }
  });

  it("keeps within the bar whatever it is given", () => {
    const slices = slicesOf({ clean: 0.9, earlyFast: 0.9, lateFast: Number.NaN, leanFast: -1, low: 7, grounded: 0 });
    expect(slices.map(({ share }) => share)).toEqual([0.9, expect.closeTo(0.1, 9)]);
  });
});

describe("notchPlaces", () => {
  it("puts each setting on the scale, and no notch touches another, from 1 to 60 settings", () => {
    for (let count = 1; count <= 60; count += 1)
      for (const width of [340, 784]) {
        const { x, settings, places } = delayModel({ ...plain, settings: comb(count) }, width, 1);
        places.forEach(({ mid, notch, bar }, i) => {
          expect(mid).toBeCloseTo(x(settings[i]?.delay ?? Number.NaN), 9);
          expect(notch).toBeGreaterThanOrEqual(bar);
          const before = places[i - 1];
          if (before) expect(mid - notch / 2).toBeGreaterThan(before.mid + before.notch / 2);
        });
      }
  });

  it("leaves the bar its full width where there is room", () => {
    expect(notchPlaces([2, 8], scaleOf(0, 10, 0, 700), 30).map(({ bar }) => bar)).toEqual([30, 30]);
  });
});

describe("labelsThatFit", () => {
  const labels = (count: number): readonly MiddleLabel[] =>
    Array.from({ length: count }, (_, i) => ({ mid: (340 * (i + 0.5)) / count, words: `${i / 2}`, size: 18 }));

  it("writes the first choice, and no two that touch, from 1 to 60 labels", () => {
    for (let count = 1; count <= 60; count += 1) {
      const row = labels(count);
      const first = Math.floor(count / 3);
      const written = labelsThatFit(row, first, 4);
      expect(written[first]).toBe(true);
      const ends = row.filter((_, i) => written[i]).map(labelEnds);
      ends.forEach(([from], i) => {
        const before = ends[i - 1];
        if (before) expect(from).toBeGreaterThanOrEqual(before[1] + 4);
      });
    }
  });

  it("writes all where all fit", () => {
    expect(labelsThatFit(labels(5), 2, 4)).toEqual([true, true, true, true, true]);
  });
});

describe("wholeSeconds", () => {
  it("leaves the room asked for", () => {
    expect(wholeSeconds(scaleOf(4.5, 10.5, 0, 600), 22)).toEqual([5, 6, 7, 8, 9, 10]);
    expect(wholeSeconds(scaleOf(0, 30, 0, 300), 22)).toEqual([0, 5, 10, 15, 20, 25, 30]);
  });
});

describe("OddsByDelay", () => {
  it("stacks bars whose slices fill the height, whatever the number of settings", () => {
    for (const count of [1, 2, 5, 17, 33, 60]) {
      const markup = renderToStaticMarkup(<OddsByDelay {...plain} settings={comb(count)} curve={null} />);
      const slices = attributes(markup, "rect", "part", "height");
      expect(slices.reduce((sum, height) => sum + height, 0)).toBeCloseTo(count * 190, 3);
    }
  });

  it("draws the accent only where the notch is the next act", () => {
    expect(renderToStaticMarkup(<OddsByDelay {...plain} />).match(/class="next"/g)).toHaveLength(1);
    expect(renderToStaticMarkup(<OddsByDelay {...plain} next={false} />)).not.toContain('class="next"');
  });

  it("marks what is gone, and fills the notch of a motor as it was read", () => {
    const markup = renderToStaticMarkup(
      <OddsByDelay
        {...plain}
        settings={[setting(6), setting(8.3)]}
        chosen={8.3}
        next={false}
        cutSoFar={5.7}
        gone={[10, 12]}
      />,
    );
    expect(markup.match(/class="lost"/g)).toHaveLength(2);
    expect(attributes(markup, "rect", "solid", "height")).toEqual([9]);
    expect(markup).toContain("Gone for good: 10");
  });

  it("draws the sampling error only while the odds settle", () => {
    expect(renderToStaticMarkup(<OddsByDelay {...plain} state="settling" />).match(/class="whisker"/g)).toHaveLength(5);
    expect(renderToStaticMarkup(<OddsByDelay {...plain} />)).not.toContain('class="whisker"');
  });

  it("has a title, a description with the figures and ids of its own", () => {
    const markup = renderToStaticMarkup(
      <>
        <OddsByDelay {...plain} withSpeed />
        <OpeningSpeed {...plain} />
      </>,
    );
    const ids = [...markup.matchAll(/ id="([^"]*)"/g)].map((found) => found[1]);
    expect(new Set(ids).size).toBe(ids.length);
    expect(markup.match(/role="img"/g)).toHaveLength(2);
    expect(markup).toContain("least odds of a clean opening 80\u202f%");
    expect(markup).toContain("half open below 12.0\u202fm/s");
  });

  it("moves the time to the top onto the clock of a delay that counts from ignition", () => {
    const { top, x } = delayModel({ ...plain, clock: { from: "ignition", burnEnd: 2 } }, 784, 1);
    expect(top?.p50).toBeCloseTo(10.9, 9);
    expect(x.to).toBeGreaterThan(11.2);
  });
});

const nan = Number.NaN;
const badOdds = {
  clean: nan,
  earlyFast: nan,
  lateFast: nan,
  leanFast: nan,
  low: nan,
  grounded: nan,
  holds: nan,
  error: nan,
  holdsError: nan,
};
const hostile: readonly (readonly [string, Partial<OddsByDelayProps>])[] = [
  ["no settings", { settings: [], chosen: null }],
  ["no settings and nothing else", { settings: [], chosen: null, curve: null, density: null, coast: null }],
  ["odds that are no numbers", { settings: comb(4).map((each) => ({ ...each, odds: badOdds })) }],
  [
    "odds all 0",
    {
      settings: comb(4).map((each) => ({
        ...each,
        odds: { ...each.odds, clean: 0, earlyFast: 0, lateFast: 0, leanFast: 0, low: 0 },
      })),
    },
  ],
  ["no opening at any setting", { settings: comb(4).map((each) => ({ ...each, openingSpeed: noSpeed })), curve: null }],
  [
    "opening speeds that are no numbers",
    {
      settings: comb(4).map((each) => ({
        ...each,
        openingSpeed: { p05: nan, p50: nan, p90: nan, p95: Number.POSITIVE_INFINITY },
      })),
    },
  ],
  [
    "a delay that is no number",
    { settings: [setting(nan), setting(Number.POSITIVE_INFINITY), setting(6)], chosen: nan },
  ],
  ["two settings at one delay", { settings: [setting(6), setting(6)] }],
  ["a chosen delay that is none of them", { chosen: 11.11 }],
  ["a delay of 0 alone", { settings: [setting(0)], chosen: 0, coast: { p05: 0, p50: 0, p95: 0 } }],
  [
    "a top that is no number",
    { coast: { p05: nan, p50: nan, p95: nan }, density: { from: nan, step: nan, values: [nan] } },
  ],
  ["a density that is 0", { density: { from: 1, step: 0.1, values: [0, 0, 0] } }],
  ["no spread of the delay", { settings: comb(3).map((each) => ({ ...each, delaySd: 0 })) }],
  ["limits that are no numbers", { limits: { openingSpeed: nan, leastClean: nan } }],
  ["a limit of 0", { limits: { openingSpeed: 0, leastClean: 0 } }],
  [
    "a curve that is no curve",
    { curve: [{ delay: nan, odds: badOdds, openingSpeed: { p05: nan, p50: nan, p95: nan } }] },
  ],
  ["gone delays that are no numbers", { cutSoFar: nan, gone: [nan, 9, 9.1, 9.2, 29] }],
];

describe("pictures of the delay", () => {
  for (const [words, props] of hostile)
    it(`has no attribute that is not a number: ${words}`, () => {
      for (const width of [800, 390]) {
        const data = { ...plain, ...props };
        const markup = renderToStaticMarkup(
          <>
            <OddsByDelay {...data} withSpeed withTable />
            <OddsByDelay {...data} state="settling" units="imperial" />
            <OpeningSpeed {...data} />
            <Thumbnail
              settings={data.settings}
              least={data.limits.leastClean}
              chosen={data.chosen}
              density={data.density}
              coast={data.coast}
            />
            {data.settings.map(({ odds }, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: hostile settings have no key of their own
              <Strip key={i} odds={odds} height={width / 50} />
            ))}
          </>,
        );
        expect(markup).not.toMatch(/(NaN|Infinity|undefined)/);
        expect(markup).not.toMatch(/(width|height)="-/);
      }
    });
});

describe("besideLine", () => {
  it("moves a label off the line to the nearer side, and leaves others alone", () => {
    expect(besideLine(50, 12, 100)).toBe(50);
    expect(besideLine(99, 12, 100)).toBeLessThan(96);
    expect(besideLine(110, 12, 100)).toBe(115);
  });
});
