import type { DecisionData, ToCutData } from "../answer/decision-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { kindOfCut, takeOutWords } from "./cut.en.js";
import { delayWords, rangeWords } from "./numbers.en.js";

/** The cut at home and the one at the field; null where there is one only. */
export function twoCutsSentence({ toCut, given }: DecisionData, units: UnitSystem = "metric"): string | null {
  const home = toCut?.homeCut ?? null;
  const { removedDepth } = given;
  if (toCut === null || home === null || !toCut.reachesHolds) return null;
  const field = kindOfCut(toCut, removedDepth) === "cut" ? `: ${takeOutWords(toCut, removedDepth, units)}` : "";
  const first =
    kindOfCut(home, removedDepth) === "cut"
      ? `At home first only to ${delayWords(home.delay)}: ${takeOutWords(home, removedDepth, units)}.`
      : "At home leave it whole: the uncut delay could still be the best.";
  const room = weatherSentence(toCut.homeWeather, units);
  return `${first} At the field, once the wind is known, to ${delayWords(toCut.delay)}${field}.${room === null ? "" : ` ${room}`}`;
}

/** The weather that the cut at home leaves room for; null where there is none to make. */
export function weatherSentence(weather: ToCutData["homeWeather"], units: UnitSystem = "metric"): string | null {
  if (weather === null) return null;
  const wind = rangeWords(...weather.wind, "wind", units, 0);
  return `That leaves room for a wind of ${wind} and ${rangeWords(...weather.temperature, "temperature", units)}.`;
}

/** Whether the answer asks for a cut: the cautions of cutting then stand right under it. */
export function asksForCut({ toCut, given }: DecisionData): boolean {
  return toCut?.reachesHolds === true && kindOfCut(toCut, given.removedDepth) === "cut";
}

/** Whether any setting asks for a cut. */
export function showsCuts({ settings, given }: DecisionData): boolean {
  return settings.some((setting) => kindOfCut(setting, given.removedDepth) === "cut");
}
