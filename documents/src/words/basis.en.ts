import type { DecisionData } from "../answer/decision-data.js";
import { amount, decimals, glued } from "./numbers.en.js";

function windWords({ given, context }: DecisionData): string {
  const { wind } = given;
  if (!context.windGiven) return "no wind given, so calm";
  if (wind.kind === "aloft") return `winds aloft from ${wind.heights} heights`;
  if (wind.from === null) return "calm";
  return `wind ${amount(wind.speed, "m/s", 1)} from ${amount((wind.from * 180) / Math.PI, "deg")} at ${amount(wind.height, "m")}`;
}

/** For whom, in what weather and how it was reckoned, a line each, so that it can be repeated. */
export function basisLines(data: DecisionData): [whom: string, weather: string, how: string] {
  const { context, given } = data;
  const weather = [
    given.temperature === null ? "standard temperature" : amount(given.temperature - 273.15, "°C"),
    given.pressure === null ? "standard pressure" : amount(given.pressure / 100, "hPa"),
    windWords(data),
    ...(context.weatherTaken === undefined ? [] : [`taken ${context.weatherTaken}`]),
  ].join(", ");
  const motor = context.motorInHand === undefined ? context.motor : `${context.motor}, ${context.motorInHand}`;
  const field = context.field === undefined ? "" : `, ${context.field}`;
  const { tilt, travel } = given.guide;
  const lean = tilt === 0 ? "upright" : `leaning ${glued(decimals((tilt * 180) / Math.PI, 1), "deg")}`;
  return [
    `${context.plan}: ${context.rocket} on ${motor}${field}, ${amount(given.elevation, "m")} MSL.`,
    `Weather: ${weather}. Guide: ${amount(travel, "m", 2)} of travel, ${lean}.`,
    `${data.model} model, ${data.draws} draws, seed ${data.seed}.${context.ruleSet === undefined ? "" : ` Rules: ${context.ruleSet}.`}`,
  ];
}
