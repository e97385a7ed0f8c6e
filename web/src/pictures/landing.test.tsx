import type { FieldZones } from "@delaywright/documents";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Landing, type LandingProps } from "./landing.js";
import type { MapLandings } from "./map-words.js";
import { PadMap } from "./pad-map.js";

const ellipse = (east: number, north: number, major: number, minor: number, azimuth: number) => ({
  east,
  north,
  major,
  minor,
  azimuth,
});
const opened: MapLandings = {
  east: [150, 120, 180],
  north: [-100, -80, -130],
  ellipse50: ellipse(150, -100, 54, 32, 2.16),
  ellipse95: ellipse(150, -100, 113, 66, 2.16),
  outside: 0,
  keepOff: [0],
};
const unopened: MapLandings = {
  east: [-50, -60, -40],
  north: [30, 40, 25],
  ellipse50: ellipse(-53, 33, 27, 18, -1),
  ellipse95: ellipse(-53, 33, 56, 37, -1),
  outside: 0,
  keepOff: [0.02],
};
const zones: FieldZones = {
  origin: { east: 0, north: 0 },
  boundary: { kind: "circle", east: 0, north: 0, radius: 400 },
  keepOff: [
    {
      name: "cars",
      points: [
        { east: -330, north: -150 },
        { east: -240, north: -190 },
        { east: -205, north: -115 },
      ],
    },
  ],
  people: [
    {
      name: "",
      points: [
        { east: -190, north: -230 },
        { east: 20, north: -330 },
      ],
    },
  ],
};
const props: LandingProps = {
  opened,
  unopened,
  zones,
  wind: { speed: 2.2, from: (300 * Math.PI) / 180 },
  units: "metric",
  state: "settled",
};
const nothing: MapLandings = { east: [], north: [], ellipse50: null, ellipse95: null };

function points(path: string | undefined): readonly (readonly [number, number])[] {
  return [...(path ?? "").matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}

describe("Landing", () => {
  const drawn = renderToStaticMarkup(<Landing {...props} />);
  const pathOf = (kind: string) => points(new RegExp(`<path d="([^"]*)" class="${kind}"`).exec(drawn)?.[1]);
  const circle = /<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)" class="field"/.exec(drawn);
  const [x, y, r] = [Number(circle?.[1]), Number(circle?.[2]), Number(circle?.[3])];

  it("has north up and east right: opened landings lie to the lower right of the pad, unopened ones to the upper left", () => {
    const mean = (kind: string): readonly [number, number] => {
      const all = pathOf(kind);
      return [all.reduce((sum, p) => sum + p[0], 0) / all.length, all.reduce((sum, p) => sum + p[1], 0) / all.length];
    };
    const [east, south] = mean("zone-opened");
    expect(east).toBeCloseTo(x + (150 / 400) * r, 0);
    expect(south).toBeCloseTo(y + (100 / 400) * r, 0);
    const [west, north] = mean("zone-unopened map-unopened");
    expect(west).toBeLessThan(x);
    expect(north).toBeLessThan(y);
  });

  it("draws the axes of its ellipses to the scale of the field", () => {
    const outline = pathOf("zone-opened");
    const [middleX, middleY] = [x + (150 / 400) * r, y + (100 / 400) * r];
    const reach = outline.map(([px, py]) => Math.hypot(px - middleX, py - middleY));
    expect(outline).toHaveLength(64);
    // paths are written to a tenth of a pixel
    expect(Math.max(...reach)).toBeCloseTo((113 / 400) * r, 0);
    expect(Math.min(...reach)).toBeCloseTo((66 / 400) * r, 0);
  });

  it("has a scale bar as long as it says", () => {
    const bar = /map-scale"><line x1="([\d.]+)" y1="[\d.]+" x2="([\d.]+)"/.exec(drawn);
    const said = /map-scale">.*?>(\d+)\u202fm<\/text>/.exec(drawn);
    expect(Number(bar?.[2]) - Number(bar?.[1])).toBeCloseTo((Number(said?.[1]) / 400) * r, 6);
  });

  it("blows with the wind: from the north-west its arrow points to the lower right", () => {
    const arrow = /<line x1="([\d.]+)" y1="([\d.]+)" x2="([\d.]+)" y2="([\d.]+)" class="wind"/.exec(drawn);
    expect(Number(arrow?.[3])).toBeGreaterThan(Number(arrow?.[1]));
    expect(Number(arrow?.[4])).toBeGreaterThan(Number(arrow?.[2]));
  });

  it("says what it shows in sentences, unopened first", () => {
    const said = /<desc[^>]*>([^<]*)</.exec(drawn)?.[1] ?? "";
    expect(said).toMatch(/^North is up\. Wind 2\.2/);
    expect(said.indexOf("Unopened")).toBeLessThan(said.indexOf("Opened,"));
    expect(said).toContain("2\u202f% on cars");
    expect(said).toContain("180\u202fm south-east of the pad");
  });

  it.each<[string, Partial<LandingProps>]>([
    ["without field", { zones: null }],
    ["without landings", { opened: nothing, unopened: nothing }],
    ["with nothing known at all", { opened: null, unopened: null, zones: null, wind: null }],
    [
      "with one point each",
      { opened: { ...nothing, east: [3], north: [4] }, unopened: { ...nothing, east: [0], north: [0] } },
    ],
    ["with no spread", { opened: { ...opened, ellipse95: ellipse(1, 1, 0, 0, 0), ellipse50: null } }],
    ["with figures that are not finite", { opened: { ...nothing, east: [Number.NaN, 5], north: [1, Number.NaN] } }],
    ["far away", { opened: { ...opened, ellipse95: ellipse(3e4, 2e4, 900, 10, 1), east: [3e4], north: [2e4] } }],
    ["in feet, in a calm, settling", { units: "imperial", wind: { speed: 0, from: null }, state: "settling" }],
  ])("is drawable %s", (_, change) => {
    for (const markup of [
      renderToStaticMarkup(<Landing {...props} {...change} />),
      renderToStaticMarkup(<PadMap {...props} {...change} />),
    ]) {
      expect(markup).not.toMatch(/NaN|Infinity|undefined/);
      expect(markup).toContain('role="img"');
    }
  });
});

describe("PadMap", () => {
  it("says how far beside the map, without dots on it", () => {
    const drawn = renderToStaticMarkup(<PadMap {...props} />);
    expect(drawn).toContain("<b>180\u202fm SE</b>");
    expect(drawn).toMatch(/<b>1\d0\u202fm NW<\/b>/);
    expect(drawn).not.toContain("open-clean");
  });
});
