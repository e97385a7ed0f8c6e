import { formatQuantity, fractionOfInch } from "./format.js";
import { parseQuantity } from "./parse.js";
import type { UnitSystem } from "./systems.js";
import type { Dimension } from "./units.js";

export interface ShownOptions {
  /** Speeds of the wind are shown in mph, those of a rocket in ft/s; left out: a rocket's. */
  readonly wind?: boolean;
  /** Lengths in fractions of an inch, as an inch rule shows them. */
  readonly fractions?: boolean;
  /** Lengths of parts, which are measured with a tape in inches up to `FEET_FROM`; left out: metres are shown in feet. */
  readonly parts?: boolean;
  /** Significant digits, 4 where left out. */
  readonly digits?: number;
}

/** Shorter lengths of parts are said in inches, longer ones in feet [m]. */
export const FEET_FROM = 1.6;

/** The unit that stands for a metric one, and the metric one that stands for an imperial one. Units of both systems are not in it. */
const counterparts: Readonly<Record<UnitSystem, Readonly<Record<string, string>>>> = Object.freeze({
  imperial: {
    m: "ft",
    mm: "in",
    cm: "in",
    km: "ft",
    um: "in",
    kg: "lb",
    g: "oz",
    mg: "oz",
    "m/s": "ft/s",
    "km/h": "mph",
    K: "degF",
    degC: "degF",
    "kg m2": "lb ft2",
    "g m2": "lb in2",
    "kg cm2": "lb in2",
    "g cm2": "oz in2",
    Pa: "psi",
    hPa: "inHg",
    kPa: "psi",
    mbar: "inHg",
    bar: "psi",
    mmHg: "inHg",
    N: "lbf",
    kN: "lbf",
    kgf: "lbf",
    J: "ft lbf",
    kJ: "ft lbf",
    "N s": "lbf s",
    "kN s": "lbf s",
  },
  metric: {
    in: "mm",
    ft: "m",
    yd: "m",
    mi: "km",
    lb: "kg",
    oz: "g",
    mph: "m/s",
    "ft/s": "m/s",
    degF: "degC",
    "oz in2": "g cm2",
    "lb in2": "kg cm2",
    "lb ft2": "kg m2",
    psi: "kPa",
    inHg: "hPa",
    lbf: "N",
    "ft lbf": "J",
    "lbf s": "N s",
  },
});

/** Which system a unit belongs to; undefined where it belongs to both, as the second and the knot do. */
export function systemOf(unit: string): UnitSystem | undefined {
  if (Object.hasOwn(counterparts.metric, unit)) return "imperial";
  return Object.hasOwn(counterparts.imperial, unit) ? "metric" : undefined;
}

/**
 * A quantity as it was typed, shown in the flyer's units. What was typed is not touched: this is for looking only.
 *
 * @param text the quantity as typed
 * @param dimension what it measures
 * @param system the flyer's units
 * @param options wind, fractions, parts, digits
 * @returns the same text where it is of that system already, of both, or no quantity
 * @example
 * shownQuantity("76 mm", "length", "imperial"); // "2.992 in"
 * shownQuantity("0.94 m", "length", "imperial", { parts: true }); // "37.01 in"
 */
export function shownQuantity(
  text: string,
  dimension: Dimension,
  system: UnitSystem,
  options: ShownOptions = {},
): string {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) return text;
  const table = counterparts[system];
  const unit = Object.hasOwn(table, parsed.unit) ? table[parsed.unit] : undefined;
  if (unit === undefined) return text;
  if (options.fractions && unit === "in") return fractionOfInch(parsed.value);
  const short = options.parts && unit === "ft" && Math.abs(parsed.value) < FEET_FROM;
  const spoken = short ? "in" : options.wind && unit === "ft/s" ? "mph" : unit;
  return formatQuantity(
    parsed.value,
    dimension,
    spoken,
    options.digits === undefined ? {} : { digits: options.digits },
  );
}
