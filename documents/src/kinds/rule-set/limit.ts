import type { Rule } from "@delaywright/engine";
import { parseQuantity } from "../../quantity/parse.js";
import type { Dimension } from "../../quantity/units.js";
import { quantityWords } from "../../words/accepted.en.js";

/** What a limit measures, by the rule's unit; a unit that is not here is a pure number. */
const dimensions: Readonly<Record<string, Dimension>> = Object.freeze({
  "m/s": "speed",
  m: "length",
  kg: "mass",
  s: "time",
  rad: "angle",
  J: "energy",
  "N s": "impulse",
});

/** A limit that is read, or what is wrong with it. */
export type ReadLimit =
  | { readonly ok: true /** Null: no such limit. */; readonly value: number | null }
  | { readonly ok: false; readonly code: string; readonly accepted: string; readonly example: string };

/**
 * A club's limit of a rule in the rule's own unit.
 *
 * @param text a quantity, a number, or `none`
 * @example
 * readLimit(windLimit, "12 mph"); // { ok: true, value: 5.36448 }
 */
export function readLimit(rule: Pick<Rule, "unit" | "limitsOf" | "limits">, text: unknown): ReadLimit {
  if (text === "none") return { ok: true, value: null };
  const dimension = rule.limitsOf === undefined ? dimensions[rule.unit] : undefined;
  if (dimension === undefined) return readNumber(rule, text);
  const { accepted, example } = quantityWords[dimension];
  if (typeof text !== "string") return { ok: false, code: "unit-missing", accepted, example: JSON.stringify(example) };
  const parsed = parseQuantity(text, dimension, example);
  if (!parsed.ok) return { ok: false, code: parsed.issue.code, accepted, example: JSON.stringify(example) };
  return parsed.value >= 0
    ? { ok: true, value: parsed.value }
    : { ok: false, code: "out-of-range", accepted: `${accepted}, not below zero`, example: JSON.stringify(example) };
}

function readNumber({ unit, limitsOf, limits }: Pick<Rule, "unit" | "limitsOf" | "limits">, value: unknown): ReadLimit {
  const share = limitsOf === undefined && (unit === "odds" || unit === "share");
  const accepted =
    limitsOf === undefined
      ? share
        ? "a number from 0 to 1"
        : `a number${unit === "" ? "" : ` of ${unit}`} without a unit`
      : "a number without a unit: this rule's limits are multiples of another figure";
  const example = String(limits.stop ?? limits.look ?? 1);
  if (typeof value !== "number") return { ok: false, code: "wrong-type", accepted, example };
  return Number.isFinite(value) && Math.abs(value) <= 1e9 && value >= 0 && (!share || value <= 1)
    ? { ok: true, value }
    : { ok: false, code: "out-of-range", accepted, example };
}
