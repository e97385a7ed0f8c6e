import { expect, test } from "vitest";
import { drawNormals, drawSize } from "../spread/draws.js";
import { type EnsembleChunk, FLEW, flightSize, LANDING_EAST, LANDING_NORTH } from "../spread/ensemble-chunk.js";
import { spreadEllipse } from "./landings.js";
import { unopenedPlaces } from "./unopened.js";

function chunkOf(landings: readonly (readonly [east: number, north: number])[], flew = 1): EnsembleChunk {
  const flights = new Float64Array(landings.length * flightSize);
  landings.forEach(([east, north], i) => {
    flights[i * flightSize + LANDING_EAST] = east;
    flights[i * flightSize + LANDING_NORTH] = north;
    flights[i * flightSize + FLEW] = flew;
  });
  return { from: 0, to: landings.length, flights, judged: new Float64Array(), samples: new Float64Array() };
}

/** A cloud of landings with sigma 30 m along an azimuth, 10 m across, about (200, -50). */
function cloud(azimuth: number): (readonly [number, number])[] {
  const z = new Float64Array(drawSize);
  return Array.from({ length: 4096 }, (_, i) => {
    drawNormals(1, i, z);
    const [along, across] = [30 * z[0]!, 10 * z[1]!];
    return [
      200 + along * Math.sin(azimuth) + across * Math.cos(azimuth),
      -50 + along * Math.cos(azimuth) - across * Math.sin(azimuth),
    ] as const;
  });
}

test("unopenedPlaces() keep their cloud: its ellipse finds centre, axes and azimuth of a normal cloud, and holds 95 % of it", () => {
  for (const azimuth of [0, 0.5, 1.2, -0.9]) {
    const landings = cloud(azimuth);
    const ellipse = spreadEllipse(unopenedPlaces(chunkOf(landings)), 0.95);
    if (ellipse === null) throw new Error("no ellipse");
    // quasi-random draws: moments good to a part in a thousand
    expect(Math.abs(ellipse.east - 200)).toBeLessThan(0.1);
    expect(Math.abs(ellipse.north + 50)).toBeLessThan(0.1);
    // a normal cloud in two dimensions: 95 % lie within sqrt(-2 ln 0.05) = 2.4477468 sigma
    expect(Math.abs(ellipse.major / (30 * 2.4477468) - 1)).toBeLessThan(0.01);
    expect(Math.abs(ellipse.minor / (10 * 2.4477468) - 1)).toBeLessThan(0.01);
    expect(Math.abs(Math.sin(ellipse.azimuth - azimuth))).toBeLessThan(0.01);
    const inside = landings.filter(([e, n]) => {
      const [x, y] = [e - ellipse.east, n - ellipse.north];
      const along = x * Math.sin(ellipse.azimuth) + y * Math.cos(ellipse.azimuth);
      const across = x * Math.cos(ellipse.azimuth) - y * Math.sin(ellipse.azimuth);
      return (along / ellipse.major) ** 2 + (across / ellipse.minor) ** 2 <= 1;
    });
    expect(Math.abs(inside.length / landings.length - 0.95)).toBeLessThan(0.005);
  }
});

test("unopenedPlaces() leaves out flights that did not fly", () => {
  expect(unopenedPlaces(chunkOf(cloud(0), 0))).toEqual({ east: [], north: [] });
  expect(unopenedPlaces(chunkOf([[1, 2]]))).toEqual({ east: [1], north: [2] });
});
