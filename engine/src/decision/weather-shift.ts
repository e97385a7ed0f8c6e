import { padTemperature } from "../air/at-field.js";
import type { WeatherShift } from "../spread/fly-draw.js";
import type { DecisionInputs } from "./inputs.js";
import { windNearGround } from "./wind-near-ground.js";

/**
 * Other weather as a shift from the plan's: the wind at all heights grows alike; a calm is made to blow from the west.
 *
 * @param speed of the wind at the height of the reading [m/s], ≥ 0
 * @param temperature of the air at the pad [K]
 */
export function shiftTo(inputs: DecisionInputs, speed: number, temperature: number): WeatherShift {
  const now = windNearGround(inputs);
  return {
    temperature: temperature - padTemperature(inputs.air),
    windSpeed: now > 0 ? speed / now : 1,
    windEast: now > 0 ? 0 : speed,
  };
}
