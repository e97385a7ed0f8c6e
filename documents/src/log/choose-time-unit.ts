import { quantile, sorted } from "./column-figures.js";
import { bendAtTop, layerHeight, slopeOver, usualStep } from "./flight-shape.js";
import { findLogUnit, GRAVITY, type MeasuredQuantity } from "./log-units.js";
import { inSi, type UnitContext } from "./unit-context.js";

const timeSymbols = ["s", "ms", "us", "min"] as const;
const lengthSymbols = ["m", "ft", "cm"] as const;

/** Altimeters write about so many rows a second. */
const USUAL_RATE = 50;
const SLOWEST = 0.5;
const FASTEST = 5000;

/** Within so much, as a logarithm, a ratio is what it should be: feet and metres are 1.19 apart. */
const NEAR = 0.3;

const factorOf = (symbol: string, quantity: MeasuredQuantity) => findLogUnit(symbol, quantity)!.factor;

/** Units of time and heights, of which one may tell the other: below its top a rocket falls by one g. */
export function timeAndHeightUnits(context: UnitContext): void {
  for (const quantity of ["height", "altitude"] as const) fromPressure(context, quantity);
  const timeKnown = context.units.has("time");
  if (!timeKnown) timeUnit(context);
  for (const quantity of ["height", "altitude"] as const) heightUnit(context, quantity, timeKnown);
}

function timeUnit(context: UnitContext): void {
  const { raw } = context;
  const time = raw.values.get("time")!;
  const climb = inSi(context, "height") ?? inSi(context, "altitude") ?? fromAir(inSi(context, "pressure"));
  const shape = climb ?? raw.values.get("height") ?? raw.values.get("altitude") ?? null;
  const bend = shape === null ? null : bendAtTop(time, shape);
  const fitting = timeSymbols.filter((each) => rateFits(time, each));
  const tried = (fitting.length > 0 ? fitting : timeSymbols).map((symbol) => ({
    symbol,
    off: Math.min(...(climb === null ? lengthSymbols : (["m"] as const)).map((each) => fallOff(bend, symbol, each))),
    odd: rateOddness(time, symbol),
  }));
  const falls = tried.filter(({ off }) => off < 1).sort((a, b) => a.off - b.off)[0];
  const [usual, next] = tried.sort((a, b) => a.odd - b.odd);
  context.choose("time", (falls ?? usual!).symbol, falls === undefined ? "sample-rate" : "fall-near-apogee");
  if (falls === undefined && next !== undefined && next.odd - usual!.odd < 2)
    context.doubt("unit-guessed", "time", { found: usual!.symbol, instead: next.symbol });
}

/** How far off one g the fall below the top is, as a logarithm; infinite where it is not known. */
function fallOff(bend: number | null, time: string, length: string): number {
  if (bend === null) return Number.POSITIVE_INFINITY;
  return Math.abs(Math.log((bend * factorOf(length, "height")) / factorOf(time, "time") ** 2 / GRAVITY));
}

function heightUnit(context: UnitContext, quantity: "height" | "altitude", timeKnown: boolean): void {
  const { raw, units } = context;
  const values = raw.values.get(quantity);
  if (values === undefined || units.has(quantity)) return;
  const bend = bendAtTop(raw.values.get("time")!, values);
  const tried = lengthSymbols
    .map((symbol) => ({ symbol, off: fallOff(bend, units.get("time")!.symbol, symbol) }))
    .sort((a, b) => a.off - b.off);
  const best = tried[0]!;
  const tells = best.off < 1;
  context.choose(quantity, tells ? best.symbol : "m", tells ? "fall-near-apogee" : "plausible");
  const found = units.get(quantity)!.symbol;
  if (!tells || best.off > NEAR || !timeKnown)
    context.doubt("unit-guessed", quantity, { found, instead: found === "m" ? "ft" : "m" });
}

/** Heights against the standard atmosphere's: their ratio is the unit. */
function fromPressure(context: UnitContext, quantity: "height" | "altitude"): void {
  const values = context.raw.values.get(quantity);
  const air = fromAir(inSi(context, "pressure"));
  if (values === undefined || air === null) return;
  const { slope, correlation } = slopeOver(withoutOutliers(air), withoutOutliers(values));
  if (correlation < 0.95) return;
  const symbols = [...lengthSymbols, "km", "mm"];
  const off = (symbol: string) => Math.abs(Math.log(slope * factorOf(symbol, "height")));
  const found = symbols.reduce((best, each) => (off(each) < off(best) ? each : best));
  const said = context.units.get(quantity)?.symbol;
  if (off(found) > NEAR) return;
  if (said !== undefined && off(said) > 2 * NEAR)
    context.doubt("unit-disagrees", quantity, { found: said, instead: found });
  context.choose(quantity, found, "agrees-with-pressure");
}

/** One row in two hundred below and one in a thousand above count as missing. */
function withoutOutliers(values: Float64Array): Float64Array {
  const stride = Math.max(1, Math.floor(values.length / 20_000));
  const ordered = sorted(values.filter((_, row) => row % stride === 0));
  const [least, most] = [quantile(ordered, 0.005), quantile(ordered, 0.999)];
  return values.map((value) => (value >= least && value <= most ? value : Number.NaN));
}

function fromAir(pressure: Float64Array | null): Float64Array | null {
  return pressure?.map((value) => (value > 0 ? layerHeight(value) : Number.NaN)) ?? null;
}

function rateFits(time: Float64Array, symbol: string): boolean {
  const rate = 1 / (usualStep(time) * factorOf(symbol, "time"));
  return rate >= SLOWEST && rate <= FASTEST;
}

function rateOddness(time: Float64Array, symbol: string): number {
  return Math.abs(Math.log(usualStep(time) * factorOf(symbol, "time") * USUAL_RATE));
}
