import { keepingLast } from "../math/keeping-last.js";
import { drawNormals, drawSize, flightInputsDrawn } from "../spread/draws.js";
import { APOGEE_TIME, COAST, type EnsembleChunk, FLEW, flightSize } from "../spread/ensemble-chunk.js";
import { judgedSize } from "../spread/outcomes.js";
import { mostRows, prepareShares, rowsWithAll, type Shares } from "../spread/sensitivity.js";
import type { Spread } from "../spread/spread.js";
import type { Driver, DriverName, Share } from "./decision.js";
import type { DelayScatter } from "./delay-scatter.js";

/** Which driver each drawn input counts towards: two axes of one thing are one driver. */
const driverOf: Readonly<Record<(typeof flightInputsDrawn)[number], Exclude<DriverName, "delay" | "cutDepth">>> = {
  dragScale: "dragScale",
  windSpeed: "windSpeed",
  guideTiltEast: "guideTilt",
  guideTiltNorth: "guideTilt",
  totalImpulse: "totalImpulse",
  windExponent: "windExponent",
  windFloorEast: "windFloor",
  windFloorNorth: "windFloor",
  windFrom: "windFrom",
  mass: "mass",
  burnTime: "burnTime",
  inertia: "inertia",
  balance: "balance",
  temperature: "temperature",
};

export interface Drivers {
  /** Largest share of the timing first. */
  readonly drivers: readonly Driver[];
  /** Share of clean-or-not that the delay's own scatter leaves open. */
  readonly delayShareOfOdds: number | null;
}

/** One number of every draw, from a row of so many; NaN where the draw did not fly. */
function columnOf({ from, to, flights }: EnsembleChunk, numbers: Float64Array, first: number): Float64Array {
  const draws = to - from;
  const width = numbers.length / draws;
  const column = new Float64Array(draws).fill(Number.NaN);
  for (let d = 0; d < draws; d++) if (flights[d * flightSize + FLEW] === 1) column[d] = numbers[d * width + first]!;
  return column;
}

/**
 * How much of the spread each uncertain input causes, from the draws already flown.
 *
 * @param setting index of the setting whose odds are explained
 * @param clock `burnout`: the coast time meets the delay; `ignition`: the time of apogee does
 */
export function driversOf(
  chunk: EnsembleChunk,
  spread: Spread,
  seed: number,
  setting: number,
  scatter: DelayScatter,
  clock: "burnout" | "ignition",
): Drivers {
  const moving = flightInputsDrawn
    .map((name, i) => ({ i, driver: driverOf[name] }))
    .filter(({ driver }) => spread[driver] > 0);
  const names = [...new Set(moving.map((m) => m.driver))];
  const fitted = drawsToFit(chunk);
  const column = (numbers: Float64Array, first: number): Float64Array => columnOf(chunk, numbers, first);
  const coast = column(chunk.flights, COAST);
  const timed = clock === "burnout" ? coast : column(chunk.flights, APOGEE_TIME);
  const clean = column(chunk.judged, setting * judgedSize);
  const figures = [coast, timed, clean].map((values) => values.subarray(0, fitted));
  const sharesOf = preparedFor({ seed, moving, names, fitted, kept: rowsWithAll(figures) });
  const [ofCoast, ofTimed, ofClean] = sharesOf(figures) as [Shares, Shares, Shares];

  const timedVariance = varianceOf(timed);
  const whole = timedVariance + scatter.total ** 2;
  const flightPart = whole > 0 ? timedVariance / whole : 0;
  const share = (all: { first: readonly number[]; total: readonly number[] }, i: number, by = 1): Share => ({
    first: by * all.first[i]!,
    total: by * all.total[i]!,
  });
  const drivers: Driver[] = names.map((input, i) => ({
    input,
    coast: share(ofCoast, i),
    timing: share(ofTimed, i, flightPart),
    odds: share(ofClean, i),
  }));
  const own = scatter.motor ** 2 + scatter.burningRate ** 2;
  for (const [input, variance] of [
    ["delay", own],
    ["cutDepth", scatter.cut ** 2],
  ] as const)
    if (variance > 0)
      drivers.push({ input, coast: null, timing: { first: variance / whole, total: variance / whole }, odds: null });
  drivers.sort((a, b) => b.timing.total - a.timing.total);

  const mean = meanOf(clean);
  const open = meanOf(clean.map((p) => p * (1 - p)));
  const all = mean * (1 - mean);
  return { drivers, delayShareOfOdds: all > 1e-6 ? open / all : null };
}

/** A drawn input that varies, by its place among a draw's normals. */
interface Moving {
  readonly i: number;
  readonly driver: DriverName;
}

/** What a fit rests on beside the figures that are fitted. */
interface Fit {
  readonly seed: number;
  readonly moving: readonly Moving[];
  readonly names: readonly DriverName[];
  /** Draws from the first on, and which of them are taken. */
  readonly fitted: number;
  readonly kept: readonly number[];
}

/** The fit for these draws: the last one again where nothing but the flights has changed, as after most changes of a plan. */
const preparedFor = keepingLast(({ seed, moving, names, fitted, kept }: Fit) => {
  const normals = new Float64Array(fitted * moving.length);
  const row = new Float64Array(drawSize);
  for (let d = 0; d < fitted; d++) {
    drawNormals(seed, d, row);
    moving.forEach(({ i }, k) => {
      normals[d * moving.length + k] = row[i]!;
    });
  }
  const groups = moving.map(({ driver }) => names.indexOf(driver));
  return prepareShares(normals, moving.length, groups, names.length, kept);
});

/** Draws from the first to the last that the fit takes: those that did not fly are left out. */
function drawsToFit({ flights }: EnsembleChunk): number {
  const draws = flights.length / flightSize;
  let taken = 0;
  for (let d = 0; d < draws; d++) {
    taken += flights[d * flightSize + FLEW]!;
    if (taken === mostRows) return d + 1;
  }
  return draws;
}

function meanOf(values: Float64Array): number {
  let sum = 0;
  let count = 0;
  for (const v of values)
    if (!Number.isNaN(v)) {
      sum += v;
      count += 1;
    }
  return count > 0 ? sum / count : 0;
}

function varianceOf(values: Float64Array): number {
  const mean = meanOf(values);
  return meanOf(values.map((v) => (v - mean) ** 2));
}
