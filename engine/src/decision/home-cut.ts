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
 * The first, shallower cut to make at home: the longest setting that could still be best over the stated range of weather.
 *
 * The settings are judged at every corner of the range; the longest of the winners, or today's if that is longer.
 *
 * @param plans settings, longest delay first
 * @param today index of today's best
 * @param flight today's nominal flight
 * @returns null where it is today's own
 */
export async function homeCutOf(
  inputs: DecisionInputs,
  plans: readonly CutPlan[],
  today: number,
  flight: FlightResult,
  options: OddsOptions,
): Promise<CutPlan | null> {
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
  const longest = Math.min(today, ...(await Promise.all(corners)));
  return longest < today ? plans[longest]! : null;
}
