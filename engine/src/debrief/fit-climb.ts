import type { FlightInputs } from "../flight/inputs.js";
import type { TurningModel } from "../flight/options.js";
import type { Motor } from "../motor/motor.js";
import { noSpread } from "../spread/drawn-values.js";
import type { Spread } from "../spread/spread.js";
import { type ClimbFlights, climbFlights } from "./climb/climb-flights.js";
import { CLOCK, ClimbProblem, DRAG, IMPULSE, LAG, type Parameters, waveStep } from "./climb/climb-problem.js";
import { type Column, linearRound, type Round } from "./climb/climb-round.js";
import { type ClimbSamples, climbSamples } from "./climb/climb-samples.js";
import { type Day, daysLike } from "./climb/days.js";
import { thrustWaves, wavedThrust } from "./climb/waved-thrust.js";
import type { ClimbFit } from "./climb-fit.js";
import { departure, departureAgrees, portError, shapeError, usualLag } from "./events/look.js";
import { gustsAgree, slowNoise } from "./events/slow-noise.js";
import { togetherness } from "./fit/residuals.js";
import type { FlightRecord } from "./flight-record.js";
import type { FoundEvents } from "./found-events.js";

export interface FitClimbOptions {
  /**
   * By how much the day's inputs are not known: mass, burn time, temperature, lean and wind widen the covariance. Drag and impulse in it are not used. Left out: they are known exactly.
   */
  readonly spread?: Spread;
  /** Left out: `pitching`. */
  readonly model?: TurningModel;
}

/** Lift-off beside the one found, where that was found on the same heights: they tell it once [s]. Own default, no source. */
const clockSd = 0.3;

const gravity = 9.80665;

/** Least error of one height [m], and residuals beyond so many sigmas that count less (P. J. Huber; memory). */
const leastError = 0.02;
const huber = 3;

/** The days are flown once drag and impulse move less than this in a round; at rest they move less than that. */
const nearEnough = 0.03;
const atRest = 1e-3;

const mostRounds = 25;
const fewestMeans = 12;
/** Rounds at rest before the covariance is taken: the noise has settled too. */
const settledRounds = 3;

/** Parameters that are flown. */
const flownCount = 5;

/** Untold: what learning passes over. */
function untold(from: number, to: number): ClimbFit {
  const covariance = [
    [Number.POSITIVE_INFINITY, 0],
    [0, Number.POSITIVE_INFINITY],
  ] as const;
  return { lnDrag: 0, lnImpulse: 0, covariance, residual: Number.NaN, from, to, converged: false };
}

/**
 * Factors on drag and total impulse that fly the climb as it was recorded: least squares over the heights from lift-off to the
 * top, or to just before the opening.
 *
 * Each round flies the engine's own flight again (from tables, as the ensemble does) with changed drag, impulse and burn time,
 * shifts its clock and lags it as a barometer does; Gauss and Newton move all five. What is not known of mass, air, wind and lean
 * is flown as days like this one: their mean is fitted (a lean in any direction costs height), and their covariance counts with the
 * noise, so that no more is told than such days allow. The noise is that of what is left, widened by how neighbouring heights err together.
 *
 * Only heights are fitted: an accelerometer's scale error, about a percent and never stated, would be taken for impulse.
 *
 * @param inputs the plan as flown, nothing learned applied (`withoutLearned`): the factors are on these
 * @returns infinite variances where the record does not tell; never throws
 * @source Gauss-Newton on generalised least squares; for example Å. Björck, Numerical Methods for Least Squares Problems, 9 (memory)
 * @example
 * const fit = fitClimb(record, events, withoutLearned(inputs), { spread: inputs.spread });
 * Math.exp(fit.lnDrag); // 1.08: eight percent more drag than the documents say
 */
export function fitClimb(
  record: FlightRecord,
  events: FoundEvents,
  inputs: FlightInputs,
  options: FitClimbOptions = {},
): ClimbFit {
  const { spread = noSpread, model = "pitching" } = options;
  const samples = climbSamples(record, events);
  if (samples === null) return untold(0, 0);
  if (samples.times.length < fewestMeans) return untold(samples.from, samples.to);
  const most = samples.to - samples.from + 4 * clockSd;
  const highest = Math.max(...samples.heights);
  const flown = (motor: Motor): ClimbFlights => climbFlights({ ...inputs, motor }, model, most, highest);
  const { motor } = inputs;
  const waved = thrustWaves.map((wave) => flown({ ...motor, thrust: wavedThrust(motor.thrust, wave, waveStep) }));
  const problem = new ClimbProblem(flown(motor), waved, samples.times);
  const { timeError, reason } = events.liftOff!;
  const known = {
    burn: spread.burnTime,
    clock: reason === "height-leaves-noise" ? clockSd : timeError,
    slow: slowNoise({ record }),
  };
  const told = fitted(problem, samples, record.heightError, known, daysLike(spread, inputs.air));
  return told === null ? untold(samples.from, samples.to) : { ...told, from: samples.from, to: samples.to };
}

/** Most that one round may move drag, impulse, burn, clock and lag. */
const longestMoves: Parameters = [0.5, 0.2, 0.1, 0.3, 0.2];

function fitted(
  problem: ClimbProblem,
  { times, heights, counts }: ClimbSamples,
  heightError: number,
  known: { readonly burn: number; readonly clock: number; readonly slow: number },
  days: readonly Day[],
): Omit<ClimbFit, "from" | "to"> | null {
  const start: Parameters = [0, 0, 0, 0, usualLag.time];
  const sds: Parameters = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, known.burn, known.clock, usualLag.error];
  const ones = new Float64Array(heights.length).fill(1);
  let p = start;
  const model = errorsTogether(times, heights, known.slow);
  let departures = problem.departures(p, []);
  let flownDays = days.length === 0;
  let noise = Math.max(heightError, leastError) ** 2;
  let left: Float64Array | null = null;
  let covariance: Float64Array | null = null;
  let settled = 0;
  for (let rounds = 0; rounds < mostRounds && settled < settledRounds; rounds++) {
    const shown = problem.heights(p);
    const slopes = problem.slopes(p);
    const shapes = problem.shapes(p);
    if (shown === null || slopes === null || shapes === null) return null;
    const { mean, covariance: together } = departures;
    const residuals = heights.map((height, i) => height - shown[i]! - mean[i]!);
    const columns: Column[] = [
      ...slopes.map((values, k) => ({ values, prior: start[k]! - p[k]!, sd: sds[k]! })),
      { values: ones, prior: 0, sd: heightError },
      ...shapes.map((values) => ({ values, prior: 0, sd: shapeError })),
      // heights by which a pressure is off that goes with the square of the speed
      { values: slopes[CLOCK]!.map((speed) => (speed * speed) / (2 * gravity)), prior: 0, sd: portError },
    ];
    const round: Round | null = linearRound(columns, residuals, {
      own: errorsOf(counts, noise, left),
      together: together.map((value, i) => value + model[i]!),
    });
    if (round === null) return null;
    const { moves } = round;
    const share = Math.min(1, ...longestMoves.map((most, k) => most / Math.max(most, Math.abs(moves[k]!))));
    const far = Math.max(Math.abs(moves[DRAG]!), Math.abs(moves[IMPULSE]!));
    p = p.map((value, k) => Math.max(k === LAG ? 0 : -9, value + share * moves[k]!)) as unknown as Parameters;
    if (share < 1) continue;
    left = round.left;
    covariance = round.covariance;
    if (!flownDays && far < nearEnough) {
      departures = problem.departures(p, days);
      flownDays = true;
      continue;
    }
    if (far > atRest || !flownDays) continue;
    settled += 1;
    noise = noiseOf(left, counts);
  }
  if (left === null || covariance === null) return null;
  const n = Math.sqrt(covariance.length);
  return {
    lnDrag: p[DRAG],
    lnImpulse: p[IMPULSE],
    covariance: [
      [covariance[0]!, covariance[1]!],
      [covariance[n]!, covariance[n + 1]!],
    ],
    residual: Math.sqrt(left.reduce((sum, x) => sum + x * x, 0) / left.length),
    converged: settled === settledRounds,
  };
}

/** Covariance of the model's own error, smooth over the climb and from rest at lift-off, and of gusts at the ports; row-major. */
function errorsTogether(times: Float64Array, heights: Float64Array, slow: number): Float64Array {
  const rows = times.length;
  const over = departure.together * (times[rows - 1]! - times[0]!);
  const departs = departureAgrees(Math.max(...heights), over);
  return Float64Array.from({ length: rows * rows }, (_, k) => {
    const [a, b] = [times[Math.floor(k / rows)]!, times[k % rows]!];
    return departs(a, b) + slow * slow * gustsAgree(Math.abs(a - b));
  });
}

/** Variance of each mean; of what sticks out it is larger. */
function errorsOf(counts: Float64Array, noise: number, left: Float64Array | null): Float64Array {
  return counts.map((count, i) => {
    const error = Math.sqrt(noise / count);
    const beyond = left === null ? 0 : Math.abs(left[i]!) / (huber * error);
    return error * error * Math.max(1, beyond);
  });
}

/** Variance of one height from what is left of their means, widened by how neighbours err together. */
function noiseOf(left: Float64Array, counts: Float64Array): number {
  const each = left.map((x, i) => x * Math.sqrt(counts[i]!));
  const squares = each.reduce((sum, x) => sum + x * x, 0);
  const own = squares / Math.max(1, left.length - flownCount - 4);
  return Math.max(leastError ** 2, own * togetherness(each));
}
