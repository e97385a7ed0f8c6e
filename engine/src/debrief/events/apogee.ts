import { polynomialAt, polynomialError, polynomialFit, slopeWeights } from "../fit/polynomial.js";
import { slopeErrorBySmoothing } from "../fit/slope-errors.js";
import { firstAtLeast, interpolated } from "../interpolated.js";
import type { FittedTop } from "./canopy-fit.js";
import { departure, type Lag, type Look, type Placed, rowsBetween } from "./look.js";
import { thinnerAt } from "./noise-of-rows.js";
import type { Opened } from "./opening.js";
import { errorByGusts, slowNoise } from "./slow-noise.js";
import { topTime } from "./top.js";

const GRAVITY = 9.80665;
/** Slow noise turns into a slope over about a second, and that over the fall's 1 g into time [s/m]. */
const WANDER = 0.075;
/** Half-width of the stretch around the top that is fitted [s]. */
const HALF_WIDTH = 3;

/**
 * The top: where a polynomial through the heights around it is level. It reaches to both sides, and ends before what disturbs
 * the climb or the fall. Where the rocket opened before its top or hardly after, the top of the path fitted about the opening.
 *
 * @param burnout the fit does not reach back to it [s]
 */
export function apogeeOf(look: Look, burnout: number, opened: Opened | null, lag: Lag): Placed | null {
  const { record } = look;
  const top = topTime(look);
  const spacing = 1 / record.rate;
  const half = Math.max(Math.min(HALF_WIDTH, 0.5 * (top - burnout)), 4 * spacing);
  const undisturbed = (opened === null ? top + 1.5 : opened.fires + lag.time) - Math.max(0.05, spacing);
  if (undisturbed > top + 0.5 * half || opened === null) {
    const placed = levelIn(look, top - half, Math.min(top + half, undisturbed), 4, lag);
    if (placed !== null && Math.abs(placed.time - top) < 1.2) return placed;
  }
  const fitted = opened?.fit.top ?? null;
  if (fitted !== null && Math.abs(fitted.time - top) < 2)
    return {
      time: fitted.time - lag.time,
      error: Math.hypot(fitted.error, missedBy(look, fitted), lag.error),
      reason: "speed-crosses-zero",
    };
  const row = firstAtLeast(record.time, top);
  return { time: record.time[row]! - lag.time, error: Math.hypot(0.5, spacing), reason: "height-highest" };
}

/** One sigma of a fitted top by gusts and by what the fitted path does not follow [s]. */
function missedBy(look: Look, { time, times, gains }: FittedTop): number {
  // near the top a speed over gravity is a time
  const weights = gains.map((gain) => gain * GRAVITY);
  const height = interpolated(look.record.time, look.record.height, time);
  const gusts = WANDER * thinnerAt(height) * slowNoise(look);
  return Math.hypot(gusts, missedSpeed(height, time, times, weights) / GRAVITY);
}

/** Speed that a fit misses of a flight's own departure from its model, one sigma [m/s]; the weights are those of its slope. */
function missedSpeed(height: number, at: number, times: Float64Array, weights: Float64Array): number {
  return departure.share * height * slopeErrorBySmoothing(weights, times, at, departure.together * Math.max(at, 1));
}

function levelIn(look: Look, from: number, to: number, degree: number, lag: Lag): Placed | null {
  const { record } = look;
  const rows = rowsBetween(look, from, to);
  const middle = 0.5 * (from + to);
  const most = Math.min(degree, Math.max(2, Math.floor(rows.length / 4)));
  const fit = polynomialFit(record.time, record.height, rows, most, middle, 0.7 * record.heightError);
  if (fit === null) return null;
  let t = topTime(look);
  for (let round = 0; round < 20; round++) {
    const bend = polynomialAt(fit, t, 2);
    if (!(bend < -0.5)) return null;
    t -= Math.max(-0.5, Math.min(0.5, polynomialAt(fit, t, 1) / bend));
  }
  if (t > to + 0.6 || t < from) return null;
  // speed by heights that err alone, by gusts that hang together, and by what the polynomial does not follow; over the bend it is time
  const alone = polynomialError(fit, t, 1) / Math.sqrt(fit.widened);
  const thinner = thinnerAt(polynomialAt(fit, t));
  const weights = slopeWeights(fit, t, record.time, rows);
  const times = Float64Array.from(rows, (row) => record.time[row]!);
  const together = thinner * slowNoise(look) * errorByGusts(weights, times);
  const missed = missedSpeed(polynomialAt(fit, t), t, times, weights);
  return {
    time: t - lag.time,
    error: Math.hypot(Math.hypot(alone, together, missed) / polynomialAt(fit, t, 2), lag.error),
    reason: "speed-crosses-zero",
  };
}
