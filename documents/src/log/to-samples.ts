import type { LogSamples } from "@delaywright/engine";
import type { LogDoubt } from "./log-types.js";
import { findLogUnit, type MeasuredQuantity } from "./log-units.js";
import { type Choice, columnDoubt } from "./match-headings.js";
import type { RawColumns } from "./read-columns.js";
import type { ChosenUnits } from "./unit-context.js";

/** SI bounds beyond which a figure is none: an instrument's own sign for nothing, or a slip. */
const bounds: Readonly<Record<MeasuredQuantity, readonly [least: number, most: number]>> = Object.freeze({
  time: [-1e12, 1e12],
  height: [-1e4, 2e5],
  altitude: [-1e4, 2e5],
  pressure: [1, 1e6],
  speed: [-5000, 5000],
  acceleration: [-1e5, 1e5],
  temperature: [150, 600],
  battery: [-1, 1000],
});

/** Turns figures as they stand into SI units, in place; those beyond all bounds are missing. */
export function toSamples(raw: RawColumns, choice: Choice, units: ChosenUnits, doubts: LogDoubt[]): LogSamples {
  for (const [quantity, values] of raw.values) {
    const { factor, offset } = findLogUnit(units.get(quantity)!.symbol, quantity)!;
    const scale = choice.get(quantity)?.reversed === true ? -factor : factor;
    const [least, most] = bounds[quantity];
    let beyond = 0;
    for (let k = 0; k < values.length; k++) {
      const value = (values[k]! + offset) * scale;
      const inside = (value >= least && value <= most) || quantity === "time";
      if (!inside && !Number.isNaN(value)) beyond++;
      values[k] = inside ? value : Number.NaN;
    }
    if (beyond > 0)
      doubts.push(columnDoubt("figures-beyond", choice.get(quantity)!.index, quantity, { count: beyond }));
  }
  const time = findLogUnit(units.get("time")!.symbol, "time")!.factor;
  const marks = raw.marks.map((mark) => ({ time: mark.time * time, text: mark.text }));
  return { ...(Object.fromEntries(raw.values) as unknown as Omit<LogSamples, "marks">), marks };
}
