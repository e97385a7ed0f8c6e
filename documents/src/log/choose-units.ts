import { motionUnits } from "./choose-motion-units.js";
import { timeAndHeightUnits } from "./choose-time-unit.js";
import { firstLevel } from "./flight-shape.js";
import { headingUnit } from "./heading-words.js";
import type { LogTable } from "./log-table.js";
import type { LogDoubt } from "./log-types.js";
import { CLOCK_UNIT, findLogUnit, siUnit } from "./log-units.js";
import { type Choice, columnDoubt } from "./match-headings.js";
import { isAirPressure, pressureUnitOf } from "./pressure-unit.js";
import { isClock, type RawColumns } from "./read-columns.js";
import type { GivenUnits } from "./resolve-mapping.js";
import type { ChosenUnits, UnitContext } from "./unit-context.js";

/**
 * Chooses the unit of every column: as given, as headings or a row of units say, else as the figures can only be.
 *
 * @param given null where no mapping was given; a given mapping's units left out are those of the heading, else SI
 */
export function chooseUnits(
  table: LogTable,
  choice: Choice,
  raw: RawColumns,
  given: GivenUnits | null,
  doubts: LogDoubt[],
): ChosenUnits {
  const units: ChosenUnits = new Map();
  const context: UnitContext = {
    raw,
    units,
    choose: (quantity, symbol, why) => {
      if (raw.values.has(quantity) && !units.has(quantity)) units.set(quantity, { symbol, why });
    },
    doubt: (code, quantity, more) => doubts.push(columnDoubt(code, choice.get(quantity)!.index, quantity, more)),
  };
  const { choose } = context;
  for (const [quantity, { index }] of choice) {
    if (quantity === "marks") continue;
    const stated = given?.get(quantity);
    if (stated !== undefined) choose(quantity, stated, "given");
    if (quantity === "time" && isClock(table, choice)) choose(quantity, CLOCK_UNIT, "by-form");
    const heading = headingUnit(table.headings.names[index] ?? "", quantity);
    if (heading !== null) choose(quantity, heading, "in-heading");
    const row = (table.headings.units[index] ?? "").replace(/^[([{]|[)\]}]$/g, "");
    const ofRow = findLogUnit(row, quantity);
    if (ofRow !== undefined) choose(quantity, ofRow.symbol, "in-unit-row");
    if (given !== null) choose(quantity, siUnit(quantity).symbol, "si");
  }
  if (given !== null) return units;
  pressureUnit(context);
  timeAndHeightUnits(context);
  motionUnits(context);
  return units;
}

/** Air presses on a pad within narrow bounds: its figure tells its unit, whatever a heading says. */
function pressureUnit(context: UnitContext): void {
  const values = context.raw.values.get("pressure");
  if (values === undefined) return;
  const start = firstLevel(values);
  const found = pressureUnitOf(start);
  const said = context.units.get("pressure");
  const factor = findLogUnit(said?.symbol ?? "", "pressure")?.factor;
  if (factor !== undefined && (found === null || isAirPressure(start * factor))) return;
  if (said !== undefined && found !== null) {
    context.units.delete("pressure");
    context.doubt("unit-disagrees", "pressure", { found: said.symbol, instead: found });
  }
  context.choose("pressure", found ?? siUnit("pressure").symbol, found === null ? "si" : "air-pressure");
  if (found === null) context.doubt("unit-guessed", "pressure", { found: siUnit("pressure").symbol });
}
