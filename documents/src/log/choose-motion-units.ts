import { firstLevel, layerHeight, medianOf, slopeOver } from "./flight-shape.js";
import { findLogUnit, GRAVITY, type MeasuredQuantity } from "./log-units.js";
import { inSi, type UnitContext } from "./unit-context.js";

/** Rates are compared over about so long [s]: shorter ones drown in noise. */
const OVER = 0.5;

/** Units of all that is neither time nor height. */
export function motionUnits(context: UnitContext): void {
  levelUnit(context, "temperature", (level) => (level > 200 ? "K" : level > 60 ? "degF" : "degC"));
  levelUnit(context, "battery", (level) => (level > 100 ? "mV" : "V"));
  const { raw, units } = context;
  if (!(["speed", "acceleration"] as const).some((each) => raw.values.has(each) && !units.has(each))) return;
  const time = inSi(context, "time")!;
  const pressure = inSi(context, "pressure");
  const height = inSi(context, "height") ?? inSi(context, "altitude") ?? pressure?.map(layerHeight) ?? null;
  const rise = height === null ? null : rises(time, height);
  speedUnit(context, rise);
  accelerationUnit(context, time, rise);
}

interface Rises {
  /** Rows between which the rates were taken. */
  readonly rows: readonly (readonly [from: number, to: number])[];
  /** [m/s] */
  readonly rates: Float64Array;
}

function rises(time: Float64Array, height: Float64Array): Rises {
  const rows: [number, number][] = [];
  const rates: number[] = [];
  for (let from = 0, to = 1; to < time.length; to++) {
    const span = time[to]! - time[from]!;
    if (span < 0) from = to;
    if (span < OVER) continue;
    const rate = (height[to]! - height[from]!) / span;
    if (span < 4 * OVER && Number.isFinite(rate)) {
      rows.push([from, to]);
      rates.push(rate);
    }
    from = to;
  }
  return { rows, rates: Float64Array.from(rates) };
}

function speedUnit(context: UnitContext, rise: Rises | null): void {
  const values = context.raw.values.get("speed");
  if (values === undefined || context.units.has("speed")) return;
  if (rise !== null) {
    const means = Float64Array.from(rise.rows, ([from, to]) => medianOf(values.subarray(from, to + 1)));
    const { slope, correlation } = slopeOver(rise.rates, means);
    const found = nearest("speed", ["m/s", "ft/s", "km/h", "mph", "kt"], slope);
    if (correlation > 0.8 && found.off < 0.3) {
      context.choose("speed", found.symbol, "agrees-with-height");
      if (found.off > 0.1 || found.second < 0.25) context.doubt("unit-guessed", "speed", { found: found.symbol });
      return;
    }
  }
  context.choose("speed", "m/s", "plausible");
  context.doubt("unit-guessed", "speed", { found: "m/s", instead: "ft/s" });
}

/** The unit whose factor makes one of a ratio to SI, how far off it is, and how far the next. */
function nearest(quantity: MeasuredQuantity, symbols: readonly string[], ratio: number) {
  const judged = symbols
    .map((symbol) => ({ symbol, off: Math.abs(Math.log(ratio * findLogUnit(symbol, quantity)!.factor)) }))
    .sort((a, b) => a.off - b.off);
  return { ...judged[0]!, second: judged[1]?.off ?? Number.POSITIVE_INFINITY };
}

const restingUnits: readonly (readonly [symbol: string, rest: number])[] = [
  ["g", 1],
  ["m/s2", GRAVITY],
  ["ft/s2", GRAVITY / 0.3048],
  ["mg", 1000],
];

/** Whether an accelerometer rests at one g backwards: its axis points aft. */
export function restsReversed(values: Float64Array): boolean {
  const rest = firstLevel(values);
  return restingUnits.some(([, one]) => Math.abs(rest + one) < 0.2 * one);
}

/** Accelerometers rest at one g; where gravity was taken off, their thrust adds up to the greatest speed. */
function accelerationUnit(context: UnitContext, time: Float64Array, rise: Rises | null): void {
  const values = context.raw.values.get("acceleration");
  if (values === undefined || context.units.has("acceleration")) return;
  const rest = Math.abs(firstLevel(values));
  const resting = restingUnits.find(([, one]) => Math.abs(rest - one) < 0.2 * one);
  if (resting !== undefined) {
    context.choose("acceleration", resting[0], "rests-at-one-g");
    return;
  }
  const fastest = rise === null ? Number.NaN : rise.rates.reduce((most, each) => Math.max(most, each), 0);
  const found = nearest("acceleration", ["m/s2", "g", "ft/s2"], thrustSum(time, values) / fastest);
  const agrees = found.off < 0.7;
  context.choose("acceleration", agrees ? found.symbol : "m/s2", agrees ? "agrees-with-height" : "plausible");
  const symbol = context.units.get("acceleration")!.symbol;
  if (!agrees || found.off > 0.35)
    context.doubt("unit-guessed", "acceleration", { found: symbol, instead: symbol === "g" ? "m/s2" : "g" });
}

/** Acceleration summed over the time in which it is above a tenth of its peak. */
function thrustSum(time: Float64Array, values: Float64Array): number {
  let peak = 0;
  for (let k = 0; k < values.length; k++) if (values[k]! > (values[peak] ?? 0)) peak = k;
  const least = 0.1 * values[peak]!;
  let from = peak;
  let to = peak;
  while (from > 0 && values[from - 1]! > least) from--;
  while (to + 1 < values.length && values[to + 1]! > least) to++;
  let sum = 0;
  for (let k = from; k < to; k++) sum += 0.5 * (values[k]! + values[k + 1]!) * (time[k + 1]! - time[k]!);
  return sum;
}

function levelUnit(context: UnitContext, quantity: "temperature" | "battery", unitAt: (level: number) => string): void {
  const values = context.raw.values.get(quantity);
  if (values === undefined || context.units.has(quantity)) return;
  const symbol = unitAt(firstLevel(values));
  context.choose(quantity, symbol, "plausible");
  if (quantity === "temperature") context.doubt("unit-guessed", quantity, { found: symbol });
}
