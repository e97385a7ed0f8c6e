import {
  amountIn,
  amountParts,
  delayNumber,
  type Measure,
  percentCell,
  type UnitSystem,
  windBound,
} from "@delaywright/documents";

/** Narrow no-break space, between a figure and its unit. */
export const SPACE = "\u202f";

/**
 * A share as whole percent, without its sign: never 0 or 100, which nobody can promise.
 *
 * @param share 0…1; one that is not finite is shown as a dash
 * @example
 * hundredths(0.884); // "88"
 */
export function hundredths(share: number): string {
  return Number.isFinite(share) ? percentCell(share) : "–";
}

/**
 * A share as whole percent.
 *
 * @example
 * percent(0.884); // "88 %" with a narrow no-break space
 */
export function percent(share: number): string {
  return `${hundredths(share)}${SPACE}%`;
}

/** A delay as it stands under a notch: "8", "8.25", "8.3". */
export function secondsFigure(seconds: number): string {
  return Number.isFinite(seconds) ? delayNumber(seconds) : "–";
}

/**
 * Seconds with their unit.
 *
 * @param decimals left out: as a delay is written
 */
export function secondsWords(seconds: number, decimals?: number): string {
  const figure =
    decimals === undefined || !Number.isFinite(seconds) ? secondsFigure(seconds) : seconds.toFixed(decimals);
  return `${figure}${SPACE}s`;
}

/** A figure in the flyer's units, with a narrow no-break space before the unit. */
export function amount(value: number, measure: Measure, units: UnitSystem, decimals?: number): string {
  return amountIn(value, measure, units, decimals).replaceAll("\u00a0", SPACE);
}

/** A wind up to which it is good, as it is said, likewise. */
export function upToWind(wind: number, units: UnitSystem): string {
  return windBound(wind, units).replaceAll("\u00a0", SPACE);
}

/** The unit that a measure is shown in, and how much of it one SI unit is. */
export function shownUnit(measure: Measure, units: UnitSystem): { readonly unit: string; readonly perSi: number } {
  const { figure, unit } = amountParts(1000, measure, units, 6);
  return { unit, perSi: Number(figure) / 1000 };
}
