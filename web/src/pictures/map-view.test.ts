import { describe, expect, it } from "vitest";
import { ellipsePoints, holdsPad, mapView, niceBelow, scaleBar, towards, towardsInWords } from "./map-view.js";

const none = { left: 0, top: 0, right: 0, bottom: 0 };
const square = [
  { east: -400, north: -400 },
  { east: 400, north: 400 },
];

describe("mapView", () => {
  it("has north up and east right, at one scale", () => {
    const view = mapView(square, 400, 400, none);
    expect([view.x(0), view.y(0)]).toEqual([200, 200]);
    expect(view.y(100)).toBe(150);
    expect(view.x(100)).toBe(250);
    expect(view.pixels).toBe(0.5);
  });

  it("holds every place within its margins", () => {
    const places = [
      { east: 3000, north: 120 },
      { east: -90, north: -40 },
    ];
    const view = mapView(places, 384, 300, { left: 8, top: 50, right: 8, bottom: 28 });
    for (const { east, north } of places) {
      expect(view.x(east)).toBeGreaterThanOrEqual(8);
      expect(view.x(east)).toBeLessThanOrEqual(376);
      expect(view.y(north)).toBeGreaterThanOrEqual(50);
      expect(view.y(north)).toBeLessThanOrEqual(272);
    }
  });

  it("is finite with nothing to see, with one place and with places that are not finite", () => {
    for (const places of [[], [{ east: 7, north: 7 }], [{ east: Number.NaN, north: 0 }]]) {
      const view = mapView(places, 300, 300, none);
      expect(Number.isFinite(view.pixels) && Number.isFinite(view.x(0)) && Number.isFinite(view.y(0))).toBe(true);
    }
  });
});

describe("ellipsePoints", () => {
  it("reaches its half axes along and across its azimuth", () => {
    const azimuth = Math.PI / 2;
    const points = ellipsePoints({ east: 10, north: 20, major: 50, minor: 30, azimuth }, 4);
    const expected = [
      [60, 20],
      [10, -10],
      [-40, 20],
      [10, 50],
    ];
    expect(points).toHaveLength(expected.length);
    points.forEach(({ east, north }, i) => {
      expect(east).toBeCloseTo(expected[i]?.[0] ?? Number.NaN, 9);
      expect(north).toBeCloseTo(expected[i]?.[1] ?? Number.NaN, 9);
    });
  });
});

describe("scaleBar", () => {
  it("is as long as it says, in metres and in feet", () => {
    const metric = scaleBar(0.625, 80, 1);
    expect(metric.units).toBe(100);
    expect(metric.length).toBeCloseTo(62.5, 9);
    const imperial = scaleBar(0.625, 80, 0.3048);
    expect(imperial.units).toBe(200);
    expect(imperial.length).toBeCloseTo(200 * 0.3048 * 0.625, 9);
  });
});

describe("niceBelow", () => {
  it("is 1, 2 or 5 times a power of ten, not above", () => {
    expect([379, 200, 5, 0.09, 1].map(niceBelow)).toEqual([200, 200, 5, 0.05, 1]);
  });
});

describe("towards", () => {
  it("names all eight points", () => {
    const around = Array.from({ length: 8 }, (_, i) => ({
      east: Math.sin((i * Math.PI) / 4),
      north: Math.cos((i * Math.PI) / 4),
    }));
    expect(around.map(towards)).toEqual(["N", "NE", "E", "SE", "S", "SW", "W", "NW"]);
    expect(towardsInWords({ east: -1, north: 1 })).toBe("north-west");
  });
});

describe("holdsPad", () => {
  it("knows on which side of the edge the pad lies", () => {
    const ellipse = { east: 60, north: 0, major: 100, minor: 50, azimuth: Math.PI / 2 };
    expect(holdsPad(ellipse)).toBe(true);
    expect(holdsPad({ ...ellipse, azimuth: 0 })).toBe(false);
  });
});
