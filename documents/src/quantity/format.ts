import { type Dimension, findUnit } from "./units.js";

export interface FormatOptions {
  /** Significant digits, 1…17. */
  readonly digits?: number;
}

export const defaultFormatOptions = Object.freeze({ digits: 4 });

/**
 * Writes an SI value in a unit, with the digits that matter and no noise behind them.
 *
 * What is written reads back through `parseQuantity` to the digits shown; with 17 digits to 1e-12.
 *
 * @param value in SI units of the dimension
 * @param dimension what it measures
 * @param unit the unit to write it in, for example `mm`
 * @param options digits: significant digits, 4 where left out
 * @returns for example `75 mm`
 * @throws {RangeError} where the dimension has no such unit, or the value is not finite
 * @example
 * formatQuantity(0.053975, "length", "mm"); // "53.98 mm"
 */
export function formatQuantity(value: number, dimension: Dimension, unit: string, options: FormatOptions = {}): string {
  const found = findUnit(unit, dimension);
  if (found === undefined) throw new RangeError(`no unit ${unit} for ${dimension}`);
  if (!Number.isFinite(value)) throw new RangeError(`${dimension} must be finite`);
  const number = value / found.factor - found.offset;
  return `${formatNumber(number, options.digits ?? defaultFormatOptions.digits)} ${found.symbol}`;
}

/** A number with so many significant digits, without trailing zeros and without an exponent where it can be read. */
function formatNumber(number: number, digits: number): string {
  const rounded = Number(number.toPrecision(digits));
  const size = Math.abs(rounded);
  if (rounded === 0) return "0";
  if (size >= 1e-6 && size < 1e15) {
    const whole = Math.floor(Math.log10(size)) + 1;
    const text = rounded.toFixed(Math.min(20, Math.max(0, digits - whole)));
    return text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  }
  return String(rounded);
}

/**
 * A length as the nearest 64th of an inch, reduced: what an inch rule can show.
 *
 * @param length [m], ≥ 0
 * @returns for example `11/64 in`, `2 1/8 in`, `0 in`
 * @example
 * fractionOfInch(0.0047625); // "3/16 in"
 */
export function fractionOfInch(length: number): string {
  const parts = Math.round((Math.abs(length) / 0.0254) * 64);
  const sign = length < 0 && parts > 0 ? "-" : "";
  const whole = Math.floor(parts / 64);
  let [over, under] = [parts % 64, 64];
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2];
  if (over === 0) return `${sign}${whole} in`;
  return whole === 0 ? `${sign}${over}/${under} in` : `${sign}${whole} ${over}/${under} in`;
}
