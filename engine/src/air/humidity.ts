import { DRY_AIR_MOLAR_MASS } from "./constants.js";

/** Molar mass of water [kg/kmol]. */
const WATER_MOLAR_MASS = 18.015;

/**
 * Saturation pressure of water vapour over water, by the Magnus form. Of a dew point it is the vapour pressure itself.
 *
 * Valid about 228…333 K (-45…60 °C).
 *
 * @param temperature [K]
 * @returns [Pa]
 * @source WMO-No. 8, Guide to Instruments and Methods of Observation, vapour-pressure annex
 * @example
 * saturationPressure(303.15); // 4233.724
 */
export function saturationPressure(temperature: number): number {
  const celsius = temperature - 273.15;
  return 611.2 * Math.exp((17.62 * celsius) / (243.12 + celsius));
}

/**
 * Temperature at which dry air of the same pressure would be as thin as this moist air.
 *
 * @param air temperature [K], pressure [Pa] and vapourPressure [Pa], 0 ≤ vapourPressure < pressure
 * @returns virtual temperature [K], ≥ temperature
 * @source Dalton's law for two ideal gases of molar masses 18.015 and 28.9644 kg/kmol
 * @example
 * virtualTemperature({ temperature: 303.15, pressure: 101_325, vapourPressure: 3386.979 }); // 307.0297
 */
export function virtualTemperature(air: { temperature: number; pressure: number; vapourPressure: number }): number {
  return air.temperature / (1 - (air.vapourPressure / air.pressure) * (1 - WATER_MOLAR_MASS / DRY_AIR_MOLAR_MASS));
}
