import { dampedFit } from "../fit/damped-fit.js";
import { interpolated } from "../interpolated.js";
import { between, type Fall, fallUnder, usualFill } from "./canopy-fall.js";
import { departureAgrees, type Look, rowsBetween } from "./look.js";
import { noiseOfRows } from "./noise-of-rows.js";

/** An opening as heights alone tell it, all on the barometer's own late clock. */
export interface CanopyFit {
  /** Line stretch [s]. */
  readonly time: number;
  readonly error: number;
  /** Null where the fitted path only falls. */
  readonly top: FittedTop | null;
  /** Robust root mean square of what is left [m], and what the fit made least. */
  readonly residual: number;
  readonly cost: number;
}

/** Top of a fitted path. */
export interface FittedTop {
  readonly time: number;
  /** One sigma [s], by what is left of the fit. */
  readonly error: number;
  /** When the heights were taken, and by how much each moves the top [s/m]. */
  readonly times: Float64Array;
  readonly gains: Float64Array;
}

/** What is known before the fit. */
export interface CanopyGuess {
  readonly time: number;
  /** One sigma of that time where it was seen [s]; left out: not known. */
  readonly timeError?: number;
  /** Stretch of the fit [s]. */
  readonly from: number;
  readonly to: number;
  /** Steady descent under it [m/s]. */
  readonly after: number;
  /** How long the flight's departure from its path hangs together, counted with gusts and the rows' own times [s]; left out: neither is. */
  readonly departsOver?: number;
}

/** One sigma of the logarithm of a known way that a canopy covers while it fills. Own default, no source. */
const KNOWN_FILL = 0.35;
/** Airspeed at which a canopy fills that opens near the top [m/s]. */
const SPEED_AT_TOP = 9;
/** Drag before it over mass and speed squared, and one sigma [1/m]: falling nearly freely. */
const FREE_FALL = 0.001;

/**
 * Fits when a canopy stretched its lines: a falling point whose drag grows with the square of the filling time from what
 * it was before to what keeps the steady descent. Sideways speed, filling time and the state at the start are fitted along.
 *
 * @source growth of the drag area: T. W. Knacke, NWC TP 6575 (1991), 5.4, memory
 */
export function canopyFit(look: Look, guess: CanopyGuess): CanopyFit | null {
  const { record } = look;
  const rows = rowsBetween(look, guess.from, guess.to, 160);
  if (rows.length < 10) return null;
  const { time, height } = record;
  const { departsOver } = guess;
  const departs =
    departsOver === undefined ? undefined : departureAgrees(interpolated(time, height, guess.from), departsOver);
  const noise = departs === undefined ? null : noiseOfRows(look, rows, departs);
  const pathOf = (p: readonly number[]): Fall => fallUnder(p, guess.from, guess.to);
  const residualsAt = (p: readonly number[]): Float64Array => {
    const { heights, step } = pathOf(p);
    const off = Float64Array.from(rows, (row) => height[row]! - between(heights, (time[row]! - guess.from) / step));
    return noise === null ? off : noise(off);
  };
  const h0 = interpolated(time, height, guess.from);
  const v0 = (interpolated(time, height, guess.from + 0.5) - h0) / 0.5;
  const known = look.hints.fillDistances?.first;
  const way = known ?? usualFill.way / guess.after;
  const length = way / SPEED_AT_TOP;
  const fill: [number, number] = [length, length * (known === undefined ? usualFill.error : KNOWN_FILL)];
  const sideways: [number, number] = [6, 8];
  const steps = [0.1, 0.2, 2, 0.5, 0.5, 1, 0.1 * FREE_FALL];
  const fit = dampedFit(residualsAt, [guess.time, fill[0], sideways[0], guess.after, h0, v0, FREE_FALL], {
    leastResidual: noise === null ? 0.7 * record.heightError : 0.7,
    steps,
    priors: [
      guess.timeError === undefined ? null : [guess.time, guess.timeError],
      fill,
      sideways,
      [guess.after, 0.3 + 0.05 * guess.after],
      null,
      null,
      [FREE_FALL, FREE_FALL],
    ],
  });
  const opens = fit.parameters[0]!;
  // a canopy that is full from the start on tells no opening
  if (!(opens > guess.from - 1 && opens < guess.to && Number.isFinite(fit.covariance[0]!))) return null;
  const topOf = (p: readonly number[]): number => pathOf(p).top;
  const top = topOf(fit.parameters);
  const slopes = fit.parameters.map((_, k) => {
    const moved = [...fit.parameters];
    moved[k]! += 0.02 * steps[k]!;
    return (topOf(moved) - top) / (0.02 * steps[k]!);
  });
  let variance = 0;
  slopes.forEach((a, i) => {
    slopes.forEach((b, k) => {
      variance += a * b * fit.covariance[i * slopes.length + k]!;
    });
  });
  const times = Float64Array.from(rows, (row) => time[row]!);
  return {
    time: opens,
    error: Math.hypot(Math.sqrt(fit.covariance[0]!), 0.01),
    top: Number.isFinite(top)
      ? { time: top, error: Math.sqrt(Math.max(0, variance)), times, gains: fit.gainOf(slopes) }
      : null,
    residual: fit.residual,
    cost: fit.cost,
  };
}
