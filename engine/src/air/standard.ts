import { airColumn } from "./column.js";
import { GEOPOTENTIAL_RADIUS } from "./constants.js";
import type { Air } from "./field-air.js";

const standardColumn = airColumn({ shift: 0, virtualFactor: 1, anchorAltitude: 0, anchorPressure: 101_325 });

/**
 * Geopotential altitude of a geometric one.
 *
 * @param altitude geometric altitude above mean sea level [m], far above -6 356 766
 * @returns geopotential altitude [m]
 * @source U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562), eq. 18
 * @example
 * geopotential(11_000); // 10_981.0
 */
export function geopotential(altitude: number): number {
  return (GEOPOTENTIAL_RADIUS * altitude) / (GEOPOTENTIAL_RADIUS + altitude);
}

/**
 * The standard atmosphere at a geopotential altitude.
 *
 * Valid -5000…84 000 m. Below sea level the first layer goes on; above 84 852 m the temperature is held, a
 * continuation of our own.
 *
 * @param geopotentialAltitude above mean sea level [m]
 * @returns the still, dry standard air there
 * @source U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562)
 * @example
 * standardAir(2_000).density; // 1.0064896
 */
export function standardAir(geopotentialAltitude: number): Air {
  return standardColumn(geopotentialAltitude);
}

/**
 * The standard atmosphere at a geometric altitude. Valid as `standardAir`.
 *
 * @param altitude geometric altitude above mean sea level [m]
 * @returns the still, dry standard air there
 * @source U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562)
 * @example
 * standardAirAt(2_000).density; // 1.0065532
 */
export function standardAirAt(altitude: number): Air {
  return standardColumn(geopotential(altitude));
}
