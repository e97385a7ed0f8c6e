import { quantityWords } from "../words/accepted.en.js";
import { formatQuantity } from "./format.js";
import { bounds, type Dimension, dimensionsOf, findUnit, pairs, type Unit, units } from "./units.js";

/** Why a text is no quantity. */
export type QuantityCode =
  | "too-long"
  | "number-missing"
  | "not-a-number"
  | "ambiguous-comma"
  | "ambiguous-thousands"
  | "unit-missing"
  | "unit-unknown"
  | "wrong-dimension"
  | "beyond-bounds";

/** What is wrong with the text, what is accepted, and an example. */
export interface QuantityIssue {
  readonly code: QuantityCode;
  readonly accepted: string;
  readonly example: string;
}

export type ParsedQuantity =
  | { readonly ok: true; readonly value: number; readonly unit: string }
  | { readonly ok: false; readonly issue: QuantityIssue };

/** Longest text that is looked at as a quantity. */
const LONGEST = 64;
const FRACTIONS: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/**
 * Reads a quantity with its unit, as people write it: `75 mm`, `2 1/8 in`, `3 lb 4 oz`, `1,5 m`, `−5 °C`.
 *
 * A comma is a decimal comma; where it could as well part thousands (`1,500 ft`) the text is refused, never guessed.
 *
 * @param text the quantity as typed, up to 64 characters
 * @param dimension what it must measure
 * @param example a text to show where the quantity is refused; left out: the dimension's own
 * @returns the value in SI units and the symbol of the unit that was typed, or what is wrong
 * @source factors of NIST SP 811 (2008), Appendix B
 * @example
 * parseQuantity("2 1/8 in", "length"); // { ok: true, value: 0.053975, unit: "in" }
 */
export function parseQuantity(
  text: string,
  dimension: Dimension,
  example = quantityWords[dimension].example,
): ParsedQuantity {
  const accepted = quantityWords[dimension].accepted;
  const refuse = (code: QuantityCode, words = accepted): ParsedQuantity => ({
    ok: false,
    issue: { code, accepted: words, example },
  });
  if (text.length > LONGEST) return refuse("too-long", `${accepted}, at most ${LONGEST} characters`);
  const match = /^([+-]?) ?([\d.,/ ]*\d\.?)(?:[eE]([+-]?\d{1,3})(?!\w))? ?(.*)$/.exec(normalise(text));
  if (match === null) return refuse("number-missing");
  const [, sign = "", digits = "", exponent, rest = ""] = match;
  const number = readNumber(digits);
  if (typeof number === "string") return refuse(number, commaWords(number, digits, rest, accepted));
  if (rest === "") return refuse("unit-missing");
  const read = readUnits(number, exponent === undefined ? 0 : Number(exponent), rest, dimension);
  if (typeof read === "string") return refuse(read, unitWords(read, accepted, dimension));
  const signed = sign === "-" ? -read.amount : read.amount;
  const value = (signed + read.unit.offset) * read.unit.factor;
  const [least, most] = bounds[dimension];
  if (!Number.isFinite(value) || value < least || value > most) {
    const [from, to] = [least, most].map((bound) => formatQuantity(bound, dimension, read.unit.symbol, { digits: 5 }));
    return refuse("beyond-bounds", `${accepted}, from ${from} to ${to}`);
  }
  return { ok: true, value: value === 0 ? 0 : value, unit: read.unit.symbol };
}

function normalise(text: string): string {
  return text
    .replace(/[\u2212\u2013\uFE63\uFF0D]/g, "-")
    .replace(/[\u00B5\u03BC]m/g, "um")
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (sign) => ` ${FRACTIONS[sign]}`)
    .replace(/\s+/g, " ")
    .trim();
}

function readNumber(digits: string): number | "ambiguous-comma" | "ambiguous-thousands" | "not-a-number" {
  const text = digits.trim();
  if (/^(\d+\.?\d*|\.\d+)$/.test(text)) return Number(text);
  if (/^[1-9]\d{0,2},\d{3}$/.test(text)) return "ambiguous-comma";
  if (/^(\d*,\d+)$/.test(text)) return Number(text.replace(",", "."));
  if (/^\d{1,3}([ ,.]\d{3})+([.,]\d+)?$/.test(text)) return "ambiguous-thousands";
  const fraction = /^(?:(\d+) )?(\d+)\/(\d+)$/.exec(text);
  if (fraction === null) return "not-a-number";
  const [whole, over, under] = [Number(fraction[1] ?? 0), Number(fraction[2]), Number(fraction[3])];
  if (under === 0 || (fraction[1] !== undefined && over >= under)) return "not-a-number";
  return whole + over / under;
}

function readUnits(
  number: number,
  exponent: number,
  rest: string,
  dimension: Dimension,
): { amount: number; unit: Unit } | "unit-unknown" | "wrong-dimension" | "not-a-number" {
  const scaled = exponent === 0 ? number : number * 10 ** exponent;
  const unit = findUnit(rest, dimension);
  if (unit !== undefined) return { amount: scaled, unit };
  const pair = /^([a-z'′]+) ?([\d.,/ ]*\d) ?([a-z"″]+)$/.exec(rest);
  if (pair !== null && exponent === 0) {
    const [first, second] = [findUnit(pair[1] ?? "", dimension), findUnit(pair[3] ?? "", dimension)];
    const more = readNumber(pair[2] ?? "");
    if (first !== undefined && second !== undefined && pairs[first.symbol] === second.symbol) {
      const share = typeof more === "number" ? (more * second.factor) / first.factor : Number.NaN;
      return share < 1 ? { amount: scaled + share, unit: first } : "not-a-number";
    }
  }
  return dimensionsOf(rest).length > 0 ? "wrong-dimension" : "unit-unknown";
}

function commaWords(code: string, digits: string, rest: string, accepted: string): string {
  const unit = rest === "" ? "" : ` ${rest}`;
  if (code === "ambiguous-comma") {
    return `${accepted}, without a comma that may be read in two ways: "${digits.replace(",", "")}${unit}" or "${digits.replace(",", ".")}${unit}"`;
  }
  return code === "ambiguous-thousands" ? `${accepted}, with thousands written together` : accepted;
}

function unitWords(code: string, accepted: string, dimension: Dimension): string {
  if (code === "not-a-number") return accepted;
  return `${accepted} (${units[dimension].map((unit) => unit.symbol).join(", ")})`;
}
