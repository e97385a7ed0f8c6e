import { textAt } from "./log-text.js";

const powers = Float64Array.from({ length: 23 }, (_, exponent) => Number(`1e${exponent}`));

/** Beyond this the next digit would no longer fit: 10 times it and 9 are less than 2^53. */
const FULL = 9e14;

/**
 * The number that stands between two places, without making a text of it.
 *
 * Exact to the last bit up to 15 digits and 22 places; further digits are dropped, at most 4e-15 of the value.
 *
 * @param decimal code of the decimal sign
 * @returns NaN where no number stands there, infinity where it is too large
 * @source W. D. Clinger, "How to Read Floating Point Numbers Accurately", 1990: a whole number below 2^53 times or by an exact power of ten rounds once
 */
export function numberIn(bytes: Uint8Array, from: number, to: number, decimal: number): number {
  let i = from;
  let negative = bytes[i] === 45;
  if (negative || bytes[i] === 43) i++;
  else if (bytes[i] === 0xe2 && bytes[i + 1] === 0x88 && bytes[i + 2] === 0x92) {
    negative = true;
    i += 3;
  }
  let mantissa = 0;
  let exponent = 0;
  let digits = 0;
  let fraction = false;
  for (; i < to; i++) {
    const byte = bytes[i]!;
    if (byte >= 48 && byte <= 57) {
      digits++;
      if (mantissa < FULL) {
        mantissa = 10 * mantissa + (byte - 48);
        if (fraction) exponent--;
      } else if (!fraction) exponent++;
    } else if (byte === decimal && !fraction) fraction = true;
    else break;
  }
  if (digits === 0) return Number.NaN;
  if (i < to) {
    const more = exponentIn(bytes, i, to);
    if (Number.isNaN(more)) return more;
    exponent += more;
  }
  const value = scaled(mantissa, exponent);
  return negative ? -value : value;
}

function exponentIn(bytes: Uint8Array, from: number, to: number): number {
  if (bytes[from] !== 101 && bytes[from] !== 69) return Number.NaN;
  let i = from + 1;
  const negative = bytes[i] === 45;
  if (negative || bytes[i] === 43) i++;
  if (i >= to || to - i > 4) return Number.NaN;
  let exponent = 0;
  for (; i < to; i++) {
    const byte = bytes[i]!;
    if (byte < 48 || byte > 57) return Number.NaN;
    exponent = 10 * exponent + (byte - 48);
  }
  return negative ? -exponent : exponent;
}

function scaled(mantissa: number, exponent: number): number {
  if (exponent === 0 || mantissa === 0) return mantissa;
  if (exponent < 0) {
    if (exponent >= -22) return mantissa / powers[-exponent]!;
    return exponent < -300 ? mantissa / 1e300 / 10 ** (-exponent - 300) : mantissa / 10 ** -exponent;
  }
  return mantissa * (exponent <= 22 ? powers[exponent]! : 10 ** exponent);
}

const missing = new Set(["", "-", "--", "---", "nan", "+nan", "-nan", "null", "none", "n/a", "na", "nil"]);

/** Whether a cell says that it holds nothing. */
export function isMissing(bytes: Uint8Array, from: number, to: number): boolean {
  return to - from <= 4 && missing.has(textAt(bytes, from, to).toLowerCase());
}

/**
 * A time of day, `12:04:07.25`, or minutes and seconds, `4:07.25`, as seconds. A date before it and a zone behind it are passed over.
 *
 * @returns NaN where no clock's time stands there
 */
export function clockIn(bytes: Uint8Array, from: number, to: number, decimal: number): number {
  let first = from;
  while (first < to && bytes[first] !== 58) first++;
  if (first === to) return Number.NaN;
  let start = first;
  while (start > from && isDigit(bytes[start - 1])) start--;
  if (start === first || (start > from && bytes[start - 1] !== 32 && bytes[start - 1] !== 84)) return Number.NaN;
  let stop = first;
  let colons = 0;
  while (stop < to && (isDigit(bytes[stop]) || bytes[stop] === 58 || bytes[stop] === decimal)) {
    if (bytes[stop] === 58) colons++;
    stop++;
  }
  const zone = bytes[stop];
  if (colons > 2 || (stop < to && zone !== 90 && zone !== 43 && zone !== 45)) return Number.NaN;
  let seconds = 0;
  for (let i = start, k = 0; k <= colons; k++) {
    let next = i;
    while (next < stop && bytes[next] !== 58) next++;
    seconds = 60 * seconds + numberIn(bytes, i, next, k === colons ? decimal : 0);
    i = next + 1;
  }
  return seconds;
}

function isDigit(byte: number | undefined): boolean {
  return byte !== undefined && byte >= 48 && byte <= 57;
}
