import type { PlaceColumns } from "../packing/landing-zone.js";
import type { FlightSampleChunk } from "./flight-sample.js";

/** An ellipse on the ground. */
export interface GroundEllipse {
  /** Its centre, from the pad [m]. */
  readonly east: number;
  readonly north: number;
  /** Half axes [m]. */
  readonly major: number;
  readonly minor: number;
  /** Azimuth of the longer half axis [rad], clockwise from north. */
  readonly azimuth: number;
}

/**
 * Ellipse that holds a share of a normal cloud of places, from the mean and the covariance of a sample of it.
 *
 * In two dimensions the squared distance in units of sigma is exponential, so the factor on one sigma is √(−2 ln(1 − p)). A
 * cloud that is not normal has more or less than `probability` in it: the ellipse is a drawing of its spread, not a bound.
 *
 * @param places at least three, else there is no ellipse
 * @param probability share inside, above 0 and below 1
 * @returns half axes [m] and azimuth [rad], −π/2…π/2; null for fewer than three places
 * @source chi-squared distribution with two degrees of freedom
 * @example
 * spreadEllipse({ east: [-1, 1, -1, 1], north: [-2, -2, 2, 2] }, 0.5)?.major; // 2.3548200
 */
export function spreadEllipse(places: PlaceColumns, probability: number): GroundEllipse | null {
  const { east: easts, north: norths } = places;
  let count = 0;
  let east = 0;
  let north = 0;
  for (let i = 0; i < easts.length; i++) {
    if (Number.isNaN(easts[i]!) || Number.isNaN(norths[i]!)) continue;
    count += 1;
    east += easts[i]!;
    north += norths[i]!;
  }
  if (count < 3) return null;
  east /= count;
  north /= count;
  let ee = 0;
  let nn = 0;
  let en = 0;
  for (let i = 0; i < easts.length; i++) {
    if (Number.isNaN(easts[i]!) || Number.isNaN(norths[i]!)) continue;
    const e = easts[i]! - east;
    const n = norths[i]! - north;
    ee += e ** 2 / count;
    nn += n ** 2 / count;
    en += (e * n) / count;
  }
  const middle = 0.5 * (ee + nn);
  const half = Math.hypot(0.5 * (ee - nn), en);
  const factor = Math.sqrt(-2 * Math.log1p(-probability));
  return {
    east,
    north,
    major: factor * Math.sqrt(middle + half),
    minor: factor * Math.sqrt(Math.max(0, middle - half)),
    azimuth: half > 0 ? 0.5 * Math.atan2(2 * en, nn - ee) : 0,
  };
}

/** Ellipses of a sample that hold half and 95 % of its landings; null with fewer than three. */
export interface EllipsePair {
  readonly p50: GroundEllipse | null;
  readonly p95: GroundEllipse | null;
}

/**
 * Ellipses of where a sample's flights come down.
 *
 * @returns opened (grounded flights left out) and unopened
 * @example
 * landingEllipses(sample).opened.p95?.major; // [m]
 */
export function landingEllipses({ opened, unopened }: FlightSampleChunk): {
  readonly opened: EllipsePair;
  readonly unopened: EllipsePair;
} {
  return { opened: ellipsePair(opened), unopened: ellipsePair(unopened) };
}

/** Ellipses that hold half and 95 % of some places. */
export function ellipsePair(places: PlaceColumns): EllipsePair {
  return { p50: spreadEllipse(places, 0.5), p95: spreadEllipse(places, 0.95) };
}
