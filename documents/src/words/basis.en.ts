import type { DecisionData } from "../answer/decision-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { amount, decimals, figureWords, glued } from "./numbers.en.js";

function windWords({ given, context }: DecisionData, units: UnitSystem): string {
  const { wind } = given;
  if (!context.windGiven) return "no wind given, so calm";
  if (wind.kind === "aloft") return `winds aloft from ${wind.heights} heights`;
  if (wind.from === null) return "calm";
  return `wind ${figureWords(wind.speed, "wind", units)} from ${amount((wind.from * 180) / Math.PI, "deg")} at ${figureWords(wind.height, "distance", units)}`;
}

/** For whom, in what weather and how it was reckoned, a line each, so that it can be repeated. */
export function basisLines(
  data: DecisionData,
  units: UnitSystem = "metric",
): [whom: string, weather: string, how: string] {
  const { context, given } = data;
  const weather = [
    given.temperature === null ? "standard temperature" : figureWords(given.temperature, "temperature", units),
    given.pressure === null ? "standard pressure" : figureWords(given.pressure, "pressure", units),
    windWords(data, units),
    ...(context.weatherTaken === undefined ? [] : [`taken ${context.weatherTaken}`]),
  ].join(", ");
  const motor = context.motorInHand === undefined ? context.motor : `${context.motor}, ${context.motorInHand}`;
  const field = context.field === undefined ? "" : `, ${context.field}`;
  const { tilt, travel } = given.guide;
  const lean = tilt === 0 ? "upright" : `leaning ${glued(decimals((tilt * 180) / Math.PI, 1), "deg")}`;
  return [
    `${context.plan}: ${context.rocket} on ${motor}${field}, ${figureWords(given.elevation, "distance", units)} MSL.`,
    `Weather: ${weather}. Guide: ${figureWords(travel, "distance", units, 2, 1)} of travel, ${lean}.`,
    `${data.model} model, ${data.draws} draws, seed ${data.seed}.${context.ruleSet === undefined ? "" : ` Rules: ${context.ruleSet}.`}`,
  ];
}
