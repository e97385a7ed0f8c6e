import { amountIn, type Measure, type UnitSystem } from "../quantity/systems.js";
import { decimals, glued, holdsPercent } from "./numbers.en.js";
import { own } from "./own.js";

/** Figures that people say in another unit than the rule's own, by what is looked at. */
const spoken: Readonly<Record<string, (value: number) => string>> = Object.freeze({
  "field-hours": clock,
  "weather-age": (seconds) => glued(decimals(seconds / 60, 0), "min"),
  "aviation-notice": (seconds) => glued(String(Number((seconds / 3600).toPrecision(3))), "h"),
  "charge-in-well": (kilograms) => glued(decimals(1000 * kilograms, 2), "g"),
  visibility: (metres) => glued(String(Number((metres / 1000).toPrecision(3))), "km"),
  "airport-distance": (metres) => glued(String(Number((metres / 1000).toPrecision(3))), "km"),
  "draws-not-flown": String,
});

/** Units that other flyers read as others, by what they measure. */
const measures: Readonly<Record<string, Measure>> = Object.freeze({
  "m/s": "speed",
  m: "distance",
  kg: "mass",
  J: "energy",
});

/** What a figure measures where it is shown in other units elsewhere; undefined for pure numbers, times, angles and odds. */
function measureOf(code: string, unit: string): Measure | undefined {
  return code === "wind-limit" ? "wind" : own(measures, unit);
}

/**
 * A figure of a check or a warning with its unit.
 *
 * @param unit as the check has it: `odds` and `share` for 0…1, `rad`, empty for pure numbers
 * @param code what is looked at, where habit has a unit of its own for it
 * @example
 * findingFigure(11.234, "m/s"); // "11.2 m/s"
 * findingFigure(15, "m/s", "guide-exit-speed", "imperial"); // "49 ft/s"
 */
export function findingFigure(value: number, unit: string, code = "", units: UnitSystem = "metric"): string {
  const say = own(spoken, code);
  if (say !== undefined) return say(value);
  if (unit === "odds" || unit === "share") return holdsPercent(value);
  const measure = measureOf(code, unit);
  if (units === "imperial" && measure !== undefined) return amountIn(value, measure, units);
  const [shown, word] = unit === "rad" ? [(value * 180) / Math.PI, "deg"] : [value, unit];
  const number = String(Number(shown.toPrecision(Math.abs(shown) >= 1000 ? 4 : 3)));
  return word === "" ? number : glued(number, ...word.split(" "));
}

function clock(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
}
