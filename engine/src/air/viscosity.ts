/**
 * Dynamic viscosity of air by Sutherland's law.
 *
 * Valid about 100…1900 K at ordinary pressures.
 *
 * @param temperature [K], > 0
 * @returns [Pa s]
 * @source U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562): β = 1.458e-6 kg/(s m K^½), S = 110.4 K
 * @example
 * dynamicViscosity(288.15); // 1.789380e-5
 */
export function dynamicViscosity(temperature: number): number {
  return (1.458e-6 * temperature * Math.sqrt(temperature)) / (temperature + 110.4);
}
