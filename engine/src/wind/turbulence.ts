import { mixSeed } from "../math/mix-seed.js";
import type { Vec3 } from "../math/vec3.js";
import { type DrydenScales, drydenScales } from "./dryden.js";
import { DrydenSeries } from "./dryden-series.js";

/** Height at which the specification reads the wind, 20 ft [m]. */
const READING_HEIGHT = 6.096;

/** Where the series begin [scale lengths], so that a tail behind the start still finds air. */
const START = 4;

/** Turbulence frozen along the flight path. */
export interface Turbulence {
  /**
   * Growth of the way flown per metre of air, in scale lengths: of the horizontal components, then of the vertical one [1/m].
   *
   * @param z height above the pad [m]
   */
  readonly pace: (z: number, out: Float64Array) => void;
  /**
   * The gust after a way flown through the air.
   *
   * @param horizontal way flown in horizontal scale lengths, from 0 at the start; a little below it for the tail
   * @param vertical the same in vertical scale lengths
   * @param z height above the pad [m], which sets the intensities
   * @param out east, north and up, [m/s]; filled
   */
  readonly gust: (horizontal: number, vertical: number, z: number, out: Float64Array) => void;
}

/**
 * Dryden turbulence of one flight: filtered white noise over the way flown through the air, with scale lengths and intensities
 * that follow the height.
 *
 * Longitudinal is along the mean wind 20 ft up, lateral across it and vertical. Lengths and intensities are those of low
 * altitude, held above 1000 ft; ways are counted in the scale length where the rocket is, so that the filters stay stationary.
 * A calm makes none.
 *
 * @param seed any integer
 * @param windAt mean wind over height above the pad [m/s]
 * @source MIL-F-8785C (1980), 3.7.3.4; frozen field (Taylor's hypothesis)
 * @example
 * const gust = new Float64Array(3);
 * drydenTurbulence(1, () => [5, 0, 0]).gust(0, 0, 10, gust); // m/s
 */
export function drydenTurbulence(seed: number, windAt: (z: number) => Vec3): Turbulence {
  const [east, north] = windAt(READING_HEIGHT);
  const speed = Math.hypot(east, north);
  const [alongEast, alongNorth] = speed > 0 ? [east / speed, north / speed] : [1, 0];
  const along = new DrydenSeries(mixSeed(seed, 1), "longitudinal");
  const across = new DrydenSeries(mixSeed(seed, 2), "lateral");
  const vertical = new DrydenSeries(mixSeed(seed, 3), "lateral");
  // asked for at every part of the body, at one height
  let scales = drydenScales(0, speed, "8785C");
  let scalesAt = 0;
  const at = (z: number): DrydenScales => {
    if (z !== scalesAt) {
      scales = drydenScales(z, speed, "8785C");
      scalesAt = z;
    }
    return scales;
  };
  return {
    pace: (z, out) => {
      const { lengths } = at(z);
      out[0] = 1 / lengths.along;
      out[1] = 1 / lengths.vertical;
    },
    gust: (horizontal, up, z, out) => {
      const { intensities } = at(z);
      const u = intensities.along * along.at(START + horizontal);
      const v = intensities.across * across.at(START + horizontal);
      out[0] = u * alongEast - v * alongNorth;
      out[1] = u * alongNorth + v * alongEast;
      out[2] = intensities.vertical * vertical.at(START + up);
    },
  };
}
