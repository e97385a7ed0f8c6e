import { padTemperature } from "../air/at-field.js";
import type { FlightResult } from "../flight/result.js";
import { choose } from "./choose.js";
import type { CutPlan } from "./cut-plan.js";
import type { DecisionInputs, WeatherRange } from "./inputs.js";
import { judgeSettings, type OddsOptions } from "./odds.js";
import { shiftTo } from "./weather-shift.js";
import { windNearGround } from "./wind-near-ground.js";

/** Draws for each corner of the weather: the home cut needs the order of settings, not their last percent. */
const cornerDraws = 96;

/** The range of weather that a cut at home must leave room for: the plan's, else one around today's (own default, no source). */
export function homeWeatherOf(inputs: DecisionInputs): WeatherRange {
  if (inputs.weatherRange !== undefined) return inputs.weatherRange;
  const wind = windNearGround(inputs);
  const temperature = padTemperature(inputs.air);
  return { wind: [0, Math.max(wind + 3, 1.5 * wind)], temperature: [temperature - 8, temperature + 8] };
}

/**
 * The longest setting that could be best somewhere in the stated range of weather: settings are judged at every corner of it.
 *
 * @param plans settings, longest delay first
 * @param flight today's nominal flight
 * @returns index of the setting
 */
export async function longestOfWeather(
  inputs: DecisionInputs,
  plans: readonly CutPlan[],
  flight: FlightResult,
  options: OddsOptions,
): Promise<number> {
  const range = homeWeatherOf(inputs);
  const winnerAt = async (speed: number, temperature: number): Promise<number> => {
    const { settings } = await judgeSettings(inputs, plans, {
      ...options,
      near: flight,
      shift: shiftTo(inputs, speed, temperature),
      draws: Math.min(cornerDraws, options.draws),
    });
    return choose(settings, inputs.limits, "longer").index;
  };
  const corners = range.wind.flatMap((speed) => range.temperature.map((temperature) => winnerAt(speed, temperature)));
  return Math.min(...(await Promise.all(corners)));
}

/**
 * The first, shallower cut to make at home: the longest setting that could still be best over the stated range of weather.
 *
 * @param plans settings, longest delay first
 * @param today index of today's best
 * @param ofWeather index of the longest setting that could be best in other weather
 * @returns null where it is today's own, or longer
 */
export function homeCutOf(plans: readonly CutPlan[], today: number, ofWeather: number): CutPlan | null {
  return ofWeather < today ? plans[ofWeather]! : null;
}
