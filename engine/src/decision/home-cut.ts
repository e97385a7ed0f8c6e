import { padTemperature } from "../air/at-field.js";
import type { FlightResult } from "../flight/result.js";
import type { WindProfile } from "../wind/profile.js";
import { windNearGround } from "./checks.js";
import { choose } from "./choose.js";
import type { CutPlan } from "./cut-plan.js";
import type { DecisionInputs, WeatherRange } from "./inputs.js";
import { judgeSettings, type OddsOptions } from "./odds.js";

/** Draws for each corner of the weather: the home cut needs the order of settings, not their last percent. */
const cornerDraws = 128;

/** Range of weather taken where the plan states none: own default, no source. */
function usualRange(inputs: DecisionInputs): WeatherRange {
  const wind = windNearGround(inputs);
  const temperature = padTemperature(inputs.air);
  return { wind: [0, Math.max(wind + 3, 1.5 * wind)], temperature: [temperature - 8, temperature + 8] };
}

/** The same wind, grown or shrunk to a speed near the ground; a calm blows from the west. */
function windOf(wind: WindProfile, now: number, speed: number): WindProfile {
  const factor = now > 0 ? speed / now : 0;
  if (wind.kind === "power")
    return now > 0
      ? { ...wind, east: wind.east * factor, north: wind.north * factor }
      : { ...wind, east: speed, north: 0 };
  return now > 0 ? { ...wind, east: wind.east.map((w) => w * factor), north: wind.north.map((w) => w * factor) } : wind;
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
  const range = inputs.weatherRange ?? usualRange(inputs);
  const now = windNearGround(inputs);
  let longest = today;
  for (const speed of range.wind)
    for (const temperature of range.temperature) {
      const there: DecisionInputs = {
        ...inputs,
        air: { ...inputs.air, temperature },
        wind: windOf(inputs.wind, now, speed),
      };
      const judged = await judgeSettings(there, plans, {
        ...options,
        near: flight,
        draws: Math.min(cornerDraws, options.draws),
      });
      longest = Math.min(longest, choose(judged.settings, inputs.limits, "longer").index);
    }
  return longest < today ? plans[longest]! : null;
}
