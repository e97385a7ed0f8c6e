/** What a quantity measures. A spread of temperature is a `temperatureDifference`: 2 degC of it are 2 K. */
export type Dimension =
  | "length"
  | "mass"
  | "time"
  | "speed"
  | "temperature"
  | "temperatureDifference"
  | "angle"
  | "inertia"
  | "pressure"
  | "force"
  | "energy"
  | "impulse";

/** A unit: SI value = (number + offset) × factor. */
export interface Unit {
  readonly symbol: string;
  /** Other ways in which people write it. */
  readonly also: readonly string[];
  readonly factor: number;
  /** Zero but for temperatures with a zero of their own. */
  readonly offset: number;
}

function unit(symbol: string, factor: number, also: readonly string[] = [], offset = 0): Unit {
  return { symbol, also, factor, offset };
}

const INCH = 0.0254;
const FOOT = 0.3048;
const POUND = 0.453_592_37;
const OUNCE = POUND / 16;
const POUND_FORCE = POUND * 9.806_65;

/**
 * Every unit that is understood, by dimension; the first of each is the SI unit.
 *
 * Factors are exact by definition, but for the conventional inch and millimetre of mercury (0 °C), which are rounded.
 *
 * @source NIST SP 811 (2008), Appendix B; international yard and pound agreement (1959)
 */
export const units: Readonly<Record<Dimension, readonly Unit[]>> = Object.freeze({
  length: [
    unit("m", 1, ["metre", "metres", "meter", "meters"]),
    unit("mm", 1e-3),
    unit("cm", 1e-2),
    unit("km", 1e3),
    unit("um", 1e-6, ["micron", "microns", "micrometre", "micrometres", "micrometer", "micrometers"]),
    unit("in", INCH, ["inch", "inches", '"', "″"]),
    unit("ft", FOOT, ["foot", "feet", "'", "′"]),
    unit("yd", 0.9144, ["yard", "yards"]),
    unit("mi", 1609.344, ["mile", "miles"]),
    unit("nmi", 1852),
  ],
  mass: [
    unit("kg", 1),
    unit("g", 1e-3, ["gram", "grams"]),
    unit("mg", 1e-6),
    unit("lb", POUND, ["lbs", "pound", "pounds"]),
    unit("oz", OUNCE, ["ounce", "ounces"]),
  ],
  time: [
    unit("s", 1, ["sec", "second", "seconds"]),
    unit("ms", 1e-3),
    unit("min", 60, ["minute", "minutes"]),
    unit("h", 3600, ["hour", "hours"]),
  ],
  speed: [
    unit("m/s", 1),
    unit("km/h", 1 / 3.6, ["kph", "kmh"]),
    unit("mph", 0.447_04, ["mi/h"]),
    unit("kt", 1852 / 3600, ["kn", "kts", "knot", "knots"]),
    unit("ft/s", FOOT, ["fps"]),
  ],
  temperature: [
    unit("K", 1),
    unit("degC", 1, ["°C", "C", "deg C", "° C"], 273.15),
    unit("degF", 1 / 1.8, ["°F", "F", "deg F", "° F"], 459.67),
  ],
  temperatureDifference: [
    unit("K", 1),
    unit("degC", 1, ["°C", "C", "deg C", "° C"]),
    unit("degF", 1 / 1.8, ["°F", "F", "deg F", "° F"]),
  ],
  angle: [unit("rad", 1), unit("mrad", 1e-3), unit("deg", Math.PI / 180, ["°", "degree", "degrees"])],
  inertia: [
    unit("kg m2", 1),
    unit("g m2", 1e-3),
    unit("kg cm2", 1e-4),
    unit("g cm2", 1e-7),
    unit("oz in2", OUNCE * INCH * INCH),
    unit("lb in2", POUND * INCH * INCH),
    unit("lb ft2", POUND * FOOT * FOOT),
  ],
  pressure: [
    unit("Pa", 1),
    unit("hPa", 100),
    unit("kPa", 1e3),
    unit("mbar", 100, ["mb"]),
    unit("bar", 1e5),
    unit("psi", POUND_FORCE / (INCH * INCH)),
    unit("inHg", 3386.389, ["in Hg", "inhg"]),
    unit("mmHg", 133.3224, ["mm Hg"]),
  ],
  force: [unit("N", 1), unit("kN", 1e3), unit("lbf", POUND_FORCE), unit("kgf", 9.806_65)],
  energy: [unit("J", 1), unit("kJ", 1e3), unit("ft lbf", FOOT * POUND_FORCE)],
  impulse: [unit("N s", 1), unit("kN s", 1e3), unit("lbf s", POUND_FORCE)],
});

/** Units that are written in pairs, such as 3 lb 4 oz: the second counts within one of the first. */
export const pairs: Readonly<Record<string, string>> = Object.freeze({ lb: "oz", ft: "in", min: "s", h: "min" });

/** SI bounds beyond which a number is a slip of the pen and not a quantity of this field. */
export const bounds: Readonly<Record<Dimension, readonly [least: number, most: number]>> = Object.freeze({
  length: [-1e6, 1e6],
  mass: [-1e4, 1e4],
  time: [-1e6, 1e6],
  speed: [-1e4, 1e4],
  temperature: [100, 1000],
  temperatureDifference: [-500, 500],
  angle: [-100, 100],
  inertia: [-1e5, 1e5],
  pressure: [-1e8, 1e8],
  force: [-1e7, 1e7],
  energy: [-1e9, 1e9],
  impulse: [-1e9, 1e9],
});

/**
 * Finds a unit by how it is written.
 *
 * Powers may be written `m2`, `m^2` or `m²`; factors are parted by a space, a dot or a star.
 *
 * @param text the unit alone, for example `kg m2`
 * @param dimension what it should measure
 * @returns the unit, or undefined where the dimension has none of that name
 * @example
 * findUnit("in", "length")?.factor; // 0.0254
 */
export function findUnit(text: string, dimension: Dimension): Unit | undefined {
  const plain = text
    .replace(/²/g, "2")
    .replace(/\^/g, "")
    .replace(/\s*[·*]\s*/g, " ")
    .replace(/\s+/g, " ")
    .trim();
  return units[dimension].find((each) => each.symbol === plain || each.also.includes(plain));
}

/** The dimensions in which a unit of that name exists. */
export function dimensionsOf(text: string): readonly Dimension[] {
  return (Object.keys(units) as Dimension[]).filter((dimension) => findUnit(text, dimension) !== undefined);
}
