import { STANDARD_LAYERS } from "./column.js";
import { DRY_AIR_GAS_CONSTANT, STANDARD_GRAVITY } from "./constants.js";
import { standardAir } from "./standard.js";

const LAYERS = STANDARD_LAYERS.map((layer) => ({ ...layer, density: standardAir(layer.base).density }));

/**
 * Altitude at which the standard atmosphere has a given density: what the air feels like to wings, fins and canopies.
 *
 * Valid as `standardAir`; negative where the air is denser than the standard's at sea level.
 *
 * @param density [kg/m³], > 0
 * @returns geopotential altitude [m]
 * @source U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562), inverted in closed form within each layer
 * @example
 * densityAltitude(0.950044); // 2570.2
 */
export function densityAltitude(density: number): number {
  let layer = LAYERS[0]!;
  for (const above of LAYERS) if (density <= above.density) layer = above;
  const { base, temperature, lapse } = layer;
  const logRatio = Math.log(density / layer.density);
  if (lapse === 0) return base - ((DRY_AIR_GAS_CONSTANT * temperature) / STANDARD_GRAVITY) * logRatio;
  const exponent = 1 + STANDARD_GRAVITY / (DRY_AIR_GAS_CONSTANT * lapse);
  return base + (temperature / lapse) * Math.expm1(-logRatio / exponent);
}
