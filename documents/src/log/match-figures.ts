import { type ColumnFigures, correlation, slopesAndMeans } from "./column-figures.js";
import type { LogColumnReason, LogDoubt, LogQuantity } from "./log-types.js";
import { type Candidate, type Choice, columnDoubt } from "./match-headings.js";
import { pressureUnitOf } from "./pressure-unit.js";

type Numbers = Candidate & { readonly figures: ColumnFigures };

/** The height of a flight is up to so much of its range below where it started. */
const UNDERSHOOT = 0.2;

/** A quantity with more noise than this part of its range cannot be told by its shape. */
const MOST_NOISE = 0.05;

/** Takes what headings left open by what the figures do. */
export function matchFigures(all: readonly Candidate[], burst: Int32Array, choice: Choice, doubts: LogDoubt[]): void {
  const taken = () => new Set([...choice.values()].map(({ index }) => index));
  const free = (): Numbers[] => {
    const used = taken();
    return all.filter(
      (each): each is Numbers =>
        each.figures !== null && each.says.quantity === null && !used.has(each.index) && !isSteady(each.figures),
    );
  };
  const take = (quantity: LogQuantity, found: Candidate | undefined, why: LogColumnReason, reversed = false): void => {
    if (found === undefined || choice.has(quantity)) return;
    choice.set(quantity, { index: found.index, why, ...(reversed ? { reversed } : {}) });
    doubts.push(columnDoubt("column-by-figures", found.index, quantity));
  };
  const chosen = (quantity: LogQuantity) => all.find(({ index }) => index === choice.get(quantity)?.index);

  if (!choice.has("time")) {
    const clock = clockOf(all.filter((each): each is Numbers => each.figures !== null && !taken().has(each.index)));
    take("time", clock, "rises");
    if (clock?.figures.counts) doubts.push(columnDoubt("count-not-time", clock.index, "time"));
  }
  const risen = ({ figures }: Numbers) => leaves(figures);
  const highest = (found: readonly Numbers[]) =>
    [...found].sort((a, b) => b.figures.aboveHalf - a.figures.aboveHalf || a.index - b.index)[0];
  const moved = choice.has("height") || choice.has("altitude");
  const shape = moved ? (chosen("height") ?? chosen("altitude")) : highest(free().filter(risen));
  if (!choice.has("pressure"))
    take(
      "pressure",
      free().find((each) => isPressure(each, shape)),
      "air-pressure",
    );
  if (!moved && shape !== undefined) {
    const pressure = chosen("pressure");
    const agrees = pressure !== undefined && correlation(pressure.values, shape.values) < -0.98;
    const why = agrees ? "agrees-with-pressure" : "leaves-and-comes-back";
    const { start, least, most } = shape.figures!;
    take(Math.abs(start) <= Math.max(0.05 * (most - least), 3) ? "height" : "altitude", shape, why);
  }
  const time = chosen("time");
  const lift = chosen("height") ?? chosen("altitude") ?? negative(chosen("pressure"));
  if (time !== undefined && lift !== undefined) {
    const likeness = (each: Numbers) => {
      const { slopes, means } = slopesAndMeans(time.values, lift.values, each.values, burst);
      return slopes.length < 4 ? 0 : correlation(slopes, means);
    };
    take("speed", mostAbove(free(), likeness, 0.8), "slope-of-height");
  }
  const peakRow = lift?.figures?.peakRow ?? Number.POSITIVE_INFINITY;
  const felt = free()
    .map((each) => ({ each, rest: restOf(each.figures) }))
    .filter(({ each, rest }) => rest !== null && each.figures.peakRow <= peakRow)
    .sort((a, b) => Math.abs(b.rest!) - Math.abs(a.rest!) || reach(b.each.figures) - reach(a.each.figures))[0];
  if (felt !== undefined)
    take("acceleration", felt.each, felt.rest === 0 ? "peaks-early" : "rests-at-one-g", felt.rest! < 0);
  take(
    "battery",
    free().find(({ figures }) => isBattery(figures)),
    "nearly-constant",
  );
  take(
    "temperature",
    free().find(({ figures }) => isTemperature(figures)),
    "drifts-slowly",
  );
  if (!choice.has("marks")) {
    const used = taken();
    const texts = all.find(
      (each) => each.figures === null && each.filled > 0 && each.says.quantity === null && !used.has(each.index),
    );
    take("marks", texts, "texts");
  }
}

/** The column that rises most steadily, the leftmost of several; one that only counts rows comes last. */
function clockOf(found: readonly Numbers[]): Numbers | undefined {
  const rising = found.filter(({ figures }) => figures.rises >= 0.6 && figures.falls <= 0.02 && figures.regular >= 0.5);
  return rising.find(({ figures }) => !figures.counts) ?? rising[0];
}

/** Rises or falls all the time, as clocks and counts do. */
function isSteady({ rises, falls }: ColumnFigures): boolean {
  return Math.max(rises, falls) >= 0.9 && Math.min(rises, falls) <= 0.02;
}

/** Starts low, goes up smoothly, and hardly ever lies below where it started. */
function leaves({ start, least, most, step }: ColumnFigures): boolean {
  const range = most - start;
  return range > 0 && start - least <= UNDERSHOOT * range && step <= MOST_NOISE * range && range > 5;
}

function isPressure({ figures, values }: Numbers, lift: Candidate | undefined): boolean {
  const unit = pressureUnitOf(figures.start);
  const { start, least, most, step } = figures;
  const dip = start - least;
  if (unit === null || dip < 0.0005 * start || most - start > 0.5 * dip || step > MOST_NOISE * dip) return false;
  if (unit === "Pa" || unit === "hPa") return true;
  // inches of mercury and pounds are also degrees and volts
  return lift !== undefined && correlation(values, lift.values) < -0.95;
}

function negative(candidate: Candidate | undefined): Candidate | undefined {
  return candidate === undefined ? undefined : { ...candidate, values: candidate.values.map((value) => -value) };
}

function mostAbove(found: readonly Numbers[], worth: (each: Numbers) => number, least: number): Numbers | undefined {
  const judged = found.map((each) => ({ each, value: worth(each) })).sort((a, b) => b.value - a.value);
  return judged[0] !== undefined && judged[0].value >= least ? judged[0].each : undefined;
}

const reach = ({ start, lowest, most }: ColumnFigures) => Math.max(most - start, start - lowest);

/** One g at rest, in g, m/s² or ft/s², and its sign; 0 where it rests at zero; null where it is no accelerometer. */
function restOf(figures: ColumnFigures): number | null {
  const { start, step } = figures;
  const far = reach(figures);
  if (far < 1.5 || step > 0.2 * far) return null;
  const rest = Math.abs(start);
  const one = [1, 9.81, 32.2].find((g) => Math.abs(rest - g) <= 0.15 * g && far >= 2 * g);
  if (one !== undefined) return start;
  return rest <= 0.02 * far ? 0 : null;
}

/** Cells of three volts to thirteen, which sag but little. */
function isBattery({ median, least, most, distinct }: ColumnFigures): boolean {
  const volts = median > 1000 ? median / 1000 : median;
  return volts >= 3 && volts <= 13 && distinct > 1 && most - least <= 0.2 * median;
}

function isTemperature({ median, least, most, step, distinct }: ColumnFigures): boolean {
  return (
    distinct > 3 &&
    least > -60 &&
    most < 140 &&
    Math.abs(median) > 0.5 &&
    most - least < 60 &&
    step <= 0.1 * (most - least)
  );
}
