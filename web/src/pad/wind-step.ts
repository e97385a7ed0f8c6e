import { parseQuantity, type UnitSystem } from "@delaywright/documents";

/** By unit as typed: how much one press changes the wind. */
const steps: Readonly<Record<string, number>> = Object.freeze({
  "m/s": 0.5,
  mph: 1,
  "km/h": 2,
  kt: 1,
  kn: 1,
  "ft/s": 1,
});

/** How far one press turns the wind [deg]. */
const TURN = 15;

interface Wind {
  readonly figure: number;
  readonly unit: string;
}

function unitFor(units: UnitSystem): string {
  return units === "metric" ? "m/s" : "mph";
}

/** The wind as it was typed, in its own unit where that can be stepped; else calm in the flyer's. */
function windOf(typed: unknown, units: UnitSystem): Wind {
  const calm = { figure: 0, unit: unitFor(units) };
  if (typeof typed !== "string") return calm;
  const parts = /^\s*([\d.]+)\s*(\S+)\s*$/.exec(typed);
  const unit = parts?.[2];
  if (unit !== undefined && Object.hasOwn(steps, unit)) return { figure: Number(parts?.[1]), unit };
  const [read, one] = [parseQuantity(typed, "speed"), parseQuantity(`1 ${calm.unit}`, "speed")];
  return read.ok && one.ok ? { ...calm, figure: read.value / one.value } : calm;
}

/**
 * The wind one press higher or lower, on the steps of its unit.
 *
 * @param typed as it stands in the plan
 * @param way 1 up, −1 down; never below calm
 * @returns as it is written into the plan, in the unit it was typed in
 * @example
 * steppedWind("2.2 m/s", 1, "metric"); // "2.5 m/s"
 */
export function steppedWind(typed: unknown, way: 1 | -1, units: UnitSystem): string {
  const { figure, unit } = windOf(typed, units);
  const step = steps[unit] ?? 1;
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
