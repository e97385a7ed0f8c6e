import type { LogDoubt, LogUnitReason } from "./log-types.js";
import { findLogUnit, type MeasuredQuantity } from "./log-units.js";
import type { RawColumns } from "./read-columns.js";

/** The unit of one column and by what it was chosen. */
export interface ChosenUnit {
  readonly symbol: string;
  readonly why: LogUnitReason;
}

export type ChosenUnits = Map<MeasuredQuantity, ChosenUnit>;

/** What units are chosen from. */
export interface UnitContext {
  readonly raw: RawColumns;
  readonly units: ChosenUnits;
  readonly choose: (quantity: MeasuredQuantity, symbol: string, why: LogUnitReason) => void;
  readonly doubt: (code: LogDoubt["code"], quantity: MeasuredQuantity, more?: Partial<LogDoubt>) => void;
}

/** A column in SI units as far as it is known; null where it or its unit is not. */
export function inSi({ raw, units }: UnitContext, quantity: MeasuredQuantity): Float64Array | null {
  const values = raw.values.get(quantity);
  const unit = findLogUnit(units.get(quantity)?.symbol ?? "", quantity);
  if (values === undefined || unit === undefined) return null;
  return values.map((value) => (value + unit.offset) * unit.factor);
}
