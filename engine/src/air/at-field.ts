import { airColumn } from "./column.js";
import type { Air, FieldAir } from "./field-air.js";
import { saturationPressure, virtualTemperature } from "./humidity.js";
import { geopotential, standardAirAt } from "./standard.js";

/**
 * Air temperature at the pad: the measured one, else the standard's at the elevation.
 *
 * @param field the air measured at the field
 * @returns [K]
 * @example
 * padTemperature({ elevation: 0, latitude: 0.9 }); // 288.15
 */
export function padTemperature(field: FieldAir): number {
  return field.temperature ?? standardAirAt(field.elevation).temperature;
}

/**
 * The air over a field: the standard atmosphere shifted to what was measured at the pad.
 *
 * The measured temperature moves the standard's whole temperature profile by a constant; the measured station pressure
 * anchors the hydrostatic integration of that profile. Humidity is held aloft as a constant mixing ratio, so virtual
 * over true temperature is the same at every height; density, pressure and speed of sound use the virtual temperature,
 * viscosity the true one. Without measurements this is the standard atmosphere itself, to 1e-12.
 *
 * Valid from a little below the pad to 84 km above sea level; above, the standard's continuation holds.
 *
 * @param field the air measured at the field
 * @returns a function of the geometric height above the pad [m] that gives the air there
 * @source U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562); shift and constant mixing ratio are choices of our own
 * @example
 * fieldAir({ elevation: 210, latitude: 0.913, temperature: 285.15, pressure: 98_700 })(0).density; // 1.2058
 */
export function fieldAir(field: FieldAir): (z: number) => Air {
  const { elevation } = field;
  const standard = standardAirAt(elevation);
  const temperature = padTemperature(field);
  const pressure = field.pressure ?? standard.pressure;
  const vapourPressure = (field.humidity ?? 0) * saturationPressure(temperature);
  const column = airColumn({
    shift: temperature - standard.temperature,
    virtualFactor: virtualTemperature({ temperature, pressure, vapourPressure }) / temperature,
    anchorAltitude: geopotential(elevation),
    anchorPressure: pressure,
  });
  return (z) => column(geopotential(elevation + z));
}

/**
 * The same field with another air temperature, at the same station pressure and the same water in the air.
 *
 * The vapour pressure is kept, so the relative humidity moves the other way (and may pass 1 when a damp field cools).
 *
 * @param field the air measured at the field
 * @param change added to the pad's temperature [K]
 * @returns the field with the changed temperature
 * @example
 * warmedField({ elevation: 0, latitude: 0.9 }, 5).temperature; // 293.15
 */
export function warmedField(field: FieldAir, change: number): FieldAir {
  const before = padTemperature(field);
  const temperature = before + change;
  if (field.humidity === undefined) return { ...field, temperature };
  const humidity = (field.humidity * saturationPressure(before)) / saturationPressure(temperature);
  return { ...field, temperature, humidity };
}
