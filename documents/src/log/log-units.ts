import { findUnit, units } from "../quantity/units.js";
import type { LogQuantity } from "./log-types.js";

/** What is measured: all that a column may hold but marks. */
export type MeasuredQuantity = Exclude<LogQuantity, "marks">;

/** A unit of a log's column: SI value = (figure + offset) × factor. */
export interface LogUnit {
  readonly symbol: string;
  readonly also: readonly string[];
  readonly factor: number;
  readonly offset: number;
}

/** Standard gravity [m/s²]. */
export const GRAVITY = 9.806_65;

/** How a clock's time is written in a mapping. */
export const CLOCK_UNIT = "h:min:s";

function unit(symbol: string, factor: number, ...also: readonly string[]): LogUnit {
  return { symbol, also, factor, offset: 0 };
}

const length = units.length.filter(({ symbol }) => /^(m|mm|cm|km|in|ft|yd)$/.test(symbol));

/** Units that are understood, by what a column holds; the first of each is the SI unit. */
const logUnits: Readonly<Record<MeasuredQuantity, readonly LogUnit[]>> = Object.freeze({
  time: [
    unit("s", 1, "sec", "secs", "second", "seconds", "sek", "sekunden"),
    unit("ms", 1e-3, "msec", "millis", "millisec", "millisecond", "milliseconds"),
    unit("us", 1e-6, "µs", "μs", "usec", "micros", "microsecond", "microseconds"),
    unit("ns", 1e-9, "nanos", "nanoseconds"),
    unit("min", 60, "mins", "minute", "minutes"),
    unit(CLOCK_UNIT, 1, "hh:mm:ss", "h:m:s", "min:s", "mm:ss"),
  ],
  height: length,
  altitude: length,
  pressure: [
    ...units.pressure,
    unit("Pa", 1, "pascal", "pascals"),
    unit("hPa", 100, "hectopascal", "hectopascals", "millibar", "millibars", "mbars"),
    unit("kPa", 1000, "kilopascal", "kilopascals"),
    unit("atm", 101_325),
  ],
  speed: [
    ...units.speed,
    unit("m/s", 1, "mps", "ms-1", "m s-1", "m/sec", "m per s", "m s"),
    unit("cm/s", 0.01, "cmps"),
    unit("ft/s", 0.3048, "ft/sec", "ft s", "ft per s", "feet/s"),
    unit("km/h", 1 / 3.6, "km/hr", "kmph"),
    unit("ft/min", 0.3048 / 60, "fpm"),
  ],
  acceleration: [
    unit("m/s2", 1, "m/s/s", "m/sec2", "mps2", "ms-2", "m s-2", "m s2", "mss"),
    unit("g", GRAVITY, "gs", "g's", "gees", "gee"),
    unit("mg", GRAVITY / 1000, "milli-g"),
    unit("ft/s2", 0.3048, "ft/s/s", "fps2"),
    unit("cm/s2", 0.01),
  ],
  temperature: [
    ...units.temperature,
    { symbol: "degC", also: ["celsius", "centigrade", "grad c", "degrees c"], factor: 1, offset: 273.15 },
    { symbol: "degF", also: ["fahrenheit", "degrees f"], factor: 1 / 1.8, offset: 459.67 },
    unit("K", 1, "kelvin"),
  ],
  battery: [unit("V", 1, "volt", "volts", "vdc"), unit("mV", 1e-3, "millivolt", "millivolts")],
});

/** What has units, those first whose units tell it alone. */
export const unitQuantities: readonly MeasuredQuantity[] = [
  "pressure",
  "acceleration",
  "speed",
  "battery",
  "temperature",
  "time",
  "height",
  "altitude",
];

/** Symbols that are accepted, ready to show: `s, ms, us`. */
export function unitChoices(quantity: MeasuredQuantity): readonly string[] {
  return [...new Set(logUnits[quantity].map(({ symbol }) => symbol))];
}

/**
 * Finds the unit of a column by how it is written; capitals do not matter where the dimension is known.
 *
 * @example
 * findLogUnit("HPA", "pressure")?.factor; // 100
 */
export function findLogUnit(text: string, quantity: MeasuredQuantity): LogUnit | undefined {
  const plain = text
    .trim()
    .replace(/²/g, "2")
    .replace(/\^|\*\*/g, "")
    .replace(/⁻/g, "-")
    .replace(/\s+/g, " ")
    .replace(/\.$/, "");
  const exact = quantity === "pressure" || quantity === "speed" ? findUnit(plain, quantity) : undefined;
  if (exact !== undefined) return exact;
  const low = plain.toLowerCase();
  return logUnits[quantity].find((each) => [each.symbol, ...each.also].some((name) => name.toLowerCase() === low));
}

/** The SI unit. */
export function siUnit(quantity: MeasuredQuantity): LogUnit {
  return logUnits[quantity][0]!;
}
