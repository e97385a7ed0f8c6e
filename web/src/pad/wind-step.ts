import { parseQuantity, type UnitSystem } from "@delaywright/documents";
import { windIn, windUnit } from "../standing/shown-wind.js";

/** How much one press changes the wind, in the unit that it is shown in. */
const steps: Readonly<Record<UnitSystem, number>> = Object.freeze({ metric: 0.5, imperial: 1 });

/** How far one press turns the wind [deg]. */
const TURN = 15;

/**
 * The wind one press higher or lower, on the steps of the unit that it is shown in.
 *
 * @param typed as it stands in the plan; what is no wind counts as a calm
 * @param way 1 up, −1 down; never below calm
 * @returns as it is written into the plan, in the unit that it is shown in
 * @example
 * steppedWind("2.2 m/s", 1, "metric"); // "2.5 m/s"
 * steppedWind("4 m/s", 1, "imperial"); // "10 mph": it was shown as 9
 */
export function steppedWind(typed: unknown, way: 1 | -1, units: UnitSystem): string {
  const { figure, unit } = windIn(typed, units) ?? { figure: 0, unit: windUnit(units) };
  const step = steps[units];
  const place = figure / step;
  const next = way > 0 ? Math.floor(place + 1e-6) + 1 : Math.ceil(place - 1e-6) - 1;
  return `${Number((Math.max(0, next) * step).toFixed(1))} ${unit}`;
}

/**
 * The direction one press on, in whole steps round the compass.
 *
 * @param typed as it stands in the plan
 * @example
 * turnedWind("240 deg", 1); // "255 deg"
 */
export function turnedWind(typed: unknown, way: 1 | -1): string {
  const read = typeof typed === "string" ? parseQuantity(typed, "angle") : undefined;
  const degrees = read?.ok === true ? (read.value * 180) / Math.PI : 0;
  const place = degrees / TURN;
  const next = way > 0 ? Math.floor(place + 1e-6) + 1 : Math.ceil(place - 1e-6) - 1;
  return `${(((next * TURN) % 360) + 360) % 360} deg`;
}
