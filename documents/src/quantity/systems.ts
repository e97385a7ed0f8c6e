import { fractionOfInch } from "./format.js";
import { GLUE } from "./glue.js";
import type { Dimension } from "./units.js";

/** The units a flyer thinks in. */
export type UnitSystem = "metric" | "imperial";

/**
 * What a computed figure measures, finer than a dimension where habit parts them: a `length` of a part (mm, in), a `distance`
 * on the field or a height above it (m, ft), a `depth` of a cut (mm to a tenth, 64ths of an inch), the `speed` of a rocket
 * (m/s, ft/s) and the `wind` (m/s, mph), a `mass` (kg, lb) and a `smallMass` (g, oz).
 */
export type Measure = Dimension | "distance" | "depth" | "wind" | "smallMass" | "acceleration";

/** A unit for figures: SI value = (number + offset) × factor, with the decimals that are worth showing. */
interface Shown {
  readonly unit: string;
  readonly factor: number;
  readonly offset: number;
  readonly decimals: number;
}

/** A foot [m]. @source international foot, as in `units.ts` */
export const FOOT = 0.3048;
const INCH = 0.0254;
const POUND = 0.453_592_37;
const POUND_FORCE = POUND * 9.806_65;

function shown(unit: string, factor: number, decimals: number, offset = 0): Shown {
  return { unit, factor, offset, decimals };
}

/** By measure: the metric unit, then the imperial one. @source factors as in `units.ts` */
const figures: Readonly<Record<Measure, readonly [Shown, Shown]>> = Object.freeze({
  length: [shown("mm", 1e-3, 0), shown("in", INCH, 2)],
  distance: [shown("m", 1, 0), shown("ft", FOOT, 0)],
  depth: [shown("mm", 1e-3, 1), shown("in", INCH, 3)],
  mass: [shown("kg", 1, 2), shown("lb", POUND, 2)],
  smallMass: [shown("g", 1e-3, 0), shown("oz", POUND / 16, 1)],
  time: [shown("s", 1, 1), shown("s", 1, 1)],
  speed: [shown("m/s", 1, 1), shown("ft/s", FOOT, 0)],
  wind: [shown("m/s", 1, 1), shown("mph", 0.447_04, 0)],
  temperature: [shown("°C", 1, 0, 273.15), shown("°F", 1 / 1.8, 0, 459.67)],
  temperatureDifference: [shown("°C", 1, 0), shown("°F", 1 / 1.8, 0)],
  angle: [shown("deg", Math.PI / 180, 0), shown("deg", Math.PI / 180, 0)],
  inertia: [shown("kg m²", 1, 3), shown("lb ft²", POUND * FOOT * FOOT, 2)],
  pressure: [shown("hPa", 100, 0), shown("inHg", 3386.389, 2)],
  force: [shown("N", 1, 0), shown("lbf", POUND_FORCE, 0)],
  energy: [shown("J", 1, 0), shown("ft lbf", FOOT * POUND_FORCE, 0)],
  impulse: [shown("N s", 1, 0), shown("lbf s", POUND_FORCE, 0)],
  acceleration: [shown("m/s²", 1, 0), shown("ft/s²", FOOT, 0)],
});

/** A figure and its unit, apart, for a column. */
export interface AmountParts {
  readonly figure: string;
  readonly unit: string;
}

/**
 * A computed figure in the flyer's own units, figure and unit apart: always the same decimals for a measure, so that
 * figures stand under each other.
 *
 * @param value in SI units; one that is not finite is shown as a dash
 * @param measure what it measures
 * @param system the flyer's units
 * @param decimals left out: what the measure is worth
 * @example
 * amountParts(614.2, "distance", "imperial"); // { figure: "2015", unit: "ft" }
 */
export function amountParts(value: number, measure: Measure, system: UnitSystem, decimals?: number): AmountParts {
  const { unit, factor, offset, decimals: own } = figures[measure][system === "metric" ? 0 : 1];
  if (!Number.isFinite(value)) return { figure: "–", unit };
  if (measure === "depth" && system === "imperial" && decimals === undefined)
    return { figure: fractionOfInch(value).replace(/ in$/, "").replaceAll(" ", GLUE), unit };
  const text = (value / factor - offset).toFixed(decimals ?? own);
  return { figure: Number(text) === 0 ? text.replace("-", "") : text, unit };
}

/**
 * A computed figure with its unit, in the flyer's own units.
 *
 * @param value in SI units
 * @param measure what it measures
 * @param system the flyer's units
 * @param decimals left out: what the measure is worth
 * @example
 * amountIn(0.00396875, "depth", "imperial"); // "5/32 in", with no-break spaces
 */
export function amountIn(value: number, measure: Measure, system: UnitSystem, decimals?: number): string {
  const { figure, unit } = amountParts(value, measure, system, decimals);
  return `${figure}${GLUE}${unit.replaceAll(" ", GLUE)}`;
}
