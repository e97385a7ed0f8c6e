import { expect, test } from "vitest";
import { drawNormals, drawSize } from "../spread/draws.js";
import { spreadEllipse } from "./landings.js";

/**
 * Upper critical values of the chi-squared distribution with two degrees of freedom, as tables of it print them
 * (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4; memory).
 */
const chiSquaredTwo = [
  [0.9, 4.605],
  [0.95, 5.991],
  [0.975, 7.378],
  [0.99, 9.21],
  [0.999, 13.816],
] as const;

/** Four corners: variances a² and b², no covariance. */
const corners = (a: number, b: number) => ({ east: [-a, a, -a, a], north: [-b, -b, b, b] });

test("spreadEllipse() squared half axes are the chi-squared distribution's critical values times the variances", () => {
  expect(chiSquaredTwo).toHaveLength(5);
  for (const [probability, critical] of chiSquaredTwo) {
    const ellipse = spreadEllipse(corners(3, 2), probability)!;
    // tables have three decimals
    expect(Math.abs((ellipse.major / 3) ** 2 - critical), `${probability}`).toBeLessThan(6e-4);
    expect(Math.abs((ellipse.minor / 2) ** 2 - critical), `${probability}`).toBeLessThan(6e-4);
  }
});

test("spreadEllipse() holds its share of a normal cloud", () => {
  const z = new Float64Array(drawSize);
  const draws = Array.from(
    { length: 4096 },
    (_, i) => Array.from(drawNormals(1, i, z).subarray(0, 2)) as [number, number],
  );
  const places = {
    east: draws.map(([a, b]) => 5 + 30 * a + 4 * b),
    north: draws.map(([a, b]) => -7 + 10 * a + 20 * b),
  };
  for (const probability of [0.25, 0.5, 0.9, 0.95, 0.99]) {
    const { east, north, major, minor, azimuth } = spreadEllipse(places, probability)!;
    const inside = places.east.filter((e, i) => {
      const [x, y] = [e - east, places.north[i]! - north];
      const along = x * Math.sin(azimuth) + y * Math.cos(azimuth);
      const across = x * Math.cos(azimuth) - y * Math.sin(azimuth);
      return (along / major) ** 2 + (across / minor) ** 2 <= 1;
    });
    // quasi-random draws: a share is good to better than half of 1 in √4096
    expect(Math.abs(inside.length / 4096 - probability), `${probability}`).toBeLessThan(0.008);
  }
});

test("spreadEllipse() leaves out rows without a number, and needs three places", () => {
  const { east, north } = corners(3, 2);
  const gaps = { east: Float64Array.of(Number.NaN, ...east, 1), north: Float64Array.of(4, ...north, Number.NaN) };
  expect(spreadEllipse(gaps, 0.5)).toEqual(spreadEllipse({ east, north }, 0.5));
  expect(spreadEllipse({ east: [1, 2], north: [1, 2] }, 0.5)).toBeNull();
});

test("spreadEllipse() of places on a line has no width, and lies along the line", () => {
  const ellipse = spreadEllipse({ east: [0, 1, 2, 3], north: [0, -1, -2, -3] }, 0.95)!;
  expect(ellipse.minor).toBeCloseTo(0, 7);
  expect(Math.tan(ellipse.azimuth)).toBeCloseTo(-1, 12);
});
