import { amountIn, type CheckLine, checkLine, type Measure, type UnitSystem } from "@delaywright/documents";
import type { Check } from "@delaywright/engine";

/** Told in a unit of their own, whatever the flyer's. */
const inOwnUnit: readonly string[] = ["visibility", "airport-distance"];

/** Units of checks that people read in their own. */
const measures: Readonly<Record<string, Measure>> = Object.freeze({ "m/s": "speed", m: "distance" });

/**
 * One check in words, its figures in the flyer's units.
 *
 * @example
 * checkCells(check, "imperial").limit; // "least 49 ft/s"
 */
export function checkCells(check: Check, units: UnitSystem): CheckLine {
  const line = checkLine(check);
  const measure = check.code === "wind-limit" ? "wind" : measures[check.unit];
  if (units === "metric" || measure === undefined || inOwnUnit.includes(check.code)) return line;
  const [sense = ""] = line.limit.split(" ");
  return {
    ...line,
    value: check.value === null || line.value === "" ? line.value : amountIn(check.value, measure, units),
    limit: check.limit === null || line.limit === "" ? line.limit : `${sense} ${amountIn(check.limit, measure, units)}`,
  };
}
