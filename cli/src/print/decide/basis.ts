import type { DecisionInputs } from "@delaywright/engine";
import type { Answer } from "../answer.js";
import { amount, decimals, glued } from "../numbers.js";
import { wrap } from "../wrap.js";

function windWords({ wind }: DecisionInputs, given: boolean): string {
  if (!given) return "no wind given, so calm";
  if (wind.kind === "aloft") return `winds aloft from ${wind.heights.length} heights`;
  const speed = Math.hypot(wind.east, wind.north);
  if (speed < 0.05) return "calm";
  const from = ((Math.atan2(-wind.east, -wind.north) * 180) / Math.PI + 360) % 360;
  return `wind ${amount(speed, "m/s", 1)} from ${amount(from, "deg")} at ${amount(wind.referenceHeight, "m")}`;
}

/** For whom and with what it was reckoned, so that it can be repeated. */
export function basis({ decision, inputs, context }: Answer): string {
  const { air, guide } = inputs;
  const weather = [
    air.temperature === undefined ? "standard temperature" : amount(air.temperature - 273.15, "°C"),
    air.pressure === undefined ? "standard pressure" : amount(air.pressure / 100, "hPa"),
    windWords(inputs, context.windGiven),
    ...(context.weatherTaken === undefined ? [] : [`taken ${context.weatherTaken}`]),
  ].join(", ");
  const motor = context.motorInHand === undefined ? context.motor : `${context.motor}, ${context.motorInHand}`;
  const field = context.field === undefined ? "" : `, ${context.field}`;
  const tilt = guide.tilt === 0 ? "upright" : `leaning ${glued(decimals((guide.tilt * 180) / Math.PI, 1), "deg")}`;
  return [
    wrap(`${context.plan}: ${context.rocket} on ${motor}${field}, ${amount(air.elevation, "m")} MSL.`),
    wrap(`Weather: ${weather}. Guide: ${amount(guide.travel, "m", 2)} of travel, ${tilt}.`),
    wrap(`${decision.model} model, ${decision.draws} draws, seed ${decision.seed}.`),
  ].join("\n");
}
