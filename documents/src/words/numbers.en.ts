import { GLUE } from "../quantity/glue.js";
import { amountIn, amountParts, type Measure, type UnitSystem } from "../quantity/systems.js";

/** Values that belong together, kept on one line. */
export function glued(...parts: readonly string[]): string {
  return parts.join(GLUE);
}

/** A number with so many decimals, never as -0. */
export function decimals(value: number, count: number): string {
  const text = value.toFixed(count);
  return Number(text) === 0 ? (0).toFixed(count) : text;
}

/** A value with its unit. */
export function amount(value: number, unit: string, count = 0): string {
  return glued(decimals(value, count), unit);
}

/** Decimals of a figure in metric and in imperial units; left out: what its measure is worth. */
type Decimals = readonly [metric?: number, imperial?: number];

/**
 * A computed figure within a sentence, in the flyer's own units.
 *
 * @param value in SI units
 * @param measure what it measures
 * @param units the flyer's units
 * @param decimals in metric and in imperial units, each left out: what the measure is worth
 * @example
 * figureWords(18.2, "speed", "imperial", 0); // "60 ft/s"
 */
export function figureWords(
  value: number,
  measure: Measure,
  units: UnitSystem,
  ...[metric, imperial]: Decimals
): string {
  return amountIn(value, measure, units, units === "metric" ? metric : imperial);
}

/** Two computed figures that are the ends of one range: `5 to 25 °C`. */
export function rangeWords(
  from: number,
  to: number,
  measure: Measure,
  units: UnitSystem,
  ...[metric, imperial]: Decimals
): string {
  const { figure } = amountParts(from, measure, units, units === "metric" ? metric : imperial);
  return `${figure} to ${figureWords(to, measure, units, metric, imperial)}`;
}

/** Odds in whole percent; never 0 or 100, which nobody can promise. */
export function percent(odds: number): string {
  if (odds < 0.01) return glued("under", "1", "%");
  if (odds > 0.99) return glued("over", "99", "%");
  return glued(String(Math.round(100 * odds)), "%");
}

/** Whole percent for a narrow column, without its sign. */
export function percentCell(odds: number): string {
  if (odds < 0.01) return "<1";
  if (odds > 0.99) return ">99";
  return String(Math.round(100 * odds));
}

/** Odds near one matter to a tenth of a percent. */
export function holdsCell(odds: number): string {
  if (odds > 0.999) return ">99.9";
  return odds >= 0.95 ? decimals(100 * odds, 1) : percentCell(odds);
}

/** As `holdsCell`, within a sentence. */
export function holdsPercent(odds: number): string {
  const cell = holdsCell(odds);
  return cell.startsWith(">")
    ? glued("over", cell.slice(1), "%")
    : cell.startsWith("<")
      ? percent(odds)
      : glued(cell, "%");
}

/** A delay as it is set: whole and quarter seconds as they are, others to a tenth. */
export function delayNumber(seconds: number): string {
  const quarters = Math.round(4 * seconds) / 4;
  return Math.abs(quarters - seconds) < 1e-6 ? String(quarters) : decimals(seconds, 1);
}

/** Delays under each other, all to the same decimals. */
export function delayColumn(delays: readonly number[]): string[] {
  const texts = delays.map(delayNumber);
  const most = Math.max(...texts.map((text) => text.split(".")[1]?.length ?? 0));
  return delays.map((delay) => decimals(delay, most));
}

/** A delay with its unit. */
export function delayWords(seconds: number): string {
  return glued(delayNumber(seconds), "s");
}

/** A depth of cut: millimetres to a tenth, and the nearest 64th of an inch; the flyer's own units first. */
export function depthWords(depth: number, units: UnitSystem = "metric"): string {
  const [own, other] = units === "metric" ? (["metric", "imperial"] as const) : (["imperial", "metric"] as const);
  return `${amountIn(depth, "depth", own)} (${amountIn(depth, "depth", other)})`;
}

/**
 * An amount of black powder, in grams also where ounces are shown: a scale that tells thousandths of an ounce is rare.
 *
 * @param mass [kg]
 * @param places of the grams, after the point, where they stand alone
 * @example
 * powderWords(0.00048, "imperial"); // "0.017 oz (0.48 g)"
 */
export function powderWords(mass: number, units: UnitSystem = "metric", places = 2): string {
  if (units === "metric") return amountIn(mass, "smallMass", units, places);
  return `${amountIn(mass, "smallMass", units, 3)} (${amountIn(mass, "smallMass", "metric", 2)})`;
}

/** A share of a whole in words, for a sentence. */
export function shareWords(share: number): string {
  if (share >= 0.95) return "nearly all";
  if (share >= 0.7 && share < 0.8) return "three quarters";
  if (share >= 0.62 && share < 0.7) return "two thirds";
  if (share >= 0.45 && share < 0.55) return "half";
  if (share >= 0.3 && share < 0.37) return "a third";
  if (share >= 0.22 && share < 0.28) return "a quarter";
  return percent(share);
}

const points = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"] as const;

/** Where a place lies from the pad: distance and direction. */
export function placeWords(east: number, north: number, units: UnitSystem = "metric"): string {
  const distance = Math.hypot(east, north);
  if (distance < 0.5) return "at the pad";
  const azimuth = (Math.atan2(east, north) / (2 * Math.PI)) * 360;
  const round = (azimuth + 360) % 360;
  const point = points[Math.round(round / 45) % 8] ?? "north";
  return `${figureWords(distance, "distance", units)} ${point} of the pad (${amount(round, "deg")})`;
}

/** A sentence begins with a capital. */
export function upperFirst(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}
