import { GEOPOTENTIAL_RADIUS, STANDARD_GRAVITY } from "./constants.js";
import type { FieldAir } from "./field-air.js";

// WGS 84: semi-major axis [m], flattening, gravitational parameter [m³/s²], rotation [rad/s], gravity at equator and pole [m/s²].
const SEMI_MAJOR_AXIS = 6_378_137;
const FLATTENING = 1 / 298.257223563;
const GRAVITATIONAL_PARAMETER = 3.986004418e14;
const ROTATION = 7.292115e-5;
const EQUATOR_GRAVITY = 9.7803253359;
const POLE_GRAVITY = 9.8321849378;

const SEMI_MINOR_AXIS = SEMI_MAJOR_AXIS * (1 - FLATTENING);
const ECCENTRICITY_SQUARED = FLATTENING * (2 - FLATTENING);
const SOMIGLIANA = (SEMI_MINOR_AXIS * POLE_GRAVITY) / (SEMI_MAJOR_AXIS * EQUATOR_GRAVITY) - 1;
const CENTRIFUGAL_RATIO = (ROTATION ** 2 * SEMI_MAJOR_AXIS ** 2 * SEMI_MINOR_AXIS) / GRAVITATIONAL_PARAMETER;

/** Gravity on the ellipsoid at a latitude, and the two coefficients of its fall with height [1/m, 1/m²]. */
function gravityAtLatitude(latitude: number) {
  const s = Math.sin(latitude) ** 2;
  return {
    onEllipsoid: (EQUATOR_GRAVITY * (1 + SOMIGLIANA * s)) / Math.sqrt(1 - ECCENTRICITY_SQUARED * s),
    linear: (-2 / SEMI_MAJOR_AXIS) * (1 + FLATTENING + CENTRIFUGAL_RATIO - 2 * FLATTENING * s),
    quadratic: 3 / SEMI_MAJOR_AXIS ** 2,
  };
}

/**
 * Normal gravity of the WGS 84 ellipsoid: Somigliana's closed form, and a second-order fall with height.
 *
 * Heights above mean sea level stand for heights above the ellipsoid: at most 110 m apart, 4e-5 of gravity.
 *
 * @param latitude geodetic [rad], -π/2…π/2
 * @param altitude [m], up to about 100 km
 * @returns [m/s²]
 * @source NIMA TR8350.2, 3rd ed.; NGA.STND.0036 (2014), eq. 4-1 to 4-3
 * @example
 * normalGravity(Math.PI / 4, 1_000); // 9.8031129
 */
export function normalGravity(latitude: number, altitude: number): number {
  const { onEllipsoid, linear, quadratic } = gravityAtLatitude(latitude);
  return onEllipsoid * (1 + linear * altitude + quadratic * altitude * altitude);
}

/**
 * Gravity of the standard atmosphere: the inverse square over its own earth radius, at 45.5 degrees of latitude.
 *
 * @param altitude geometric altitude above mean sea level [m]
 * @returns [m/s²]
 * @source U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562), eq. 17
 * @example
 * standardGravityAt(1_000); // 9.8035653
 */
export function standardGravityAt(altitude: number): number {
  return STANDARD_GRAVITY * (GEOPOTENTIAL_RADIUS / (GEOPOTENTIAL_RADIUS + altitude)) ** 2;
}

/** Gravity over a field. */
export interface FieldGravity {
  /** At the pad [m/s²]. */
  readonly surface: number;
  /**
   * @param z height above the pad [m]
   * @returns [m/s²]
   */
  at(z: number): number;
}

/**
 * Normal gravity over a field, prepared for many calls. Valid as `normalGravity`.
 *
 * @param field its latitude [rad] and elevation [m]
 * @returns gravity at the pad and over it
 * @source NIMA TR8350.2, 3rd ed.; NGA.STND.0036 (2014), eq. 4-1 to 4-3
 * @example
 * fieldGravity({ latitude: Math.PI / 4, elevation: 500 }).at(500); // 9.8031129
 */
export function fieldGravity(field: Pick<FieldAir, "latitude" | "elevation">): FieldGravity {
  const { elevation, latitude } = field;
  const { onEllipsoid, linear, quadratic } = gravityAtLatitude(latitude);
  const at = (z: number) => {
    const altitude = elevation + z;
    return onEllipsoid * (1 + altitude * (linear + quadratic * altitude));
  };
  return { surface: at(0), at };
}
