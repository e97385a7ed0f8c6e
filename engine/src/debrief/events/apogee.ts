import { polynomialAt, polynomialError, polynomialFit } from "../fit/polynomial.js";
import { firstAtLeast } from "../interpolated.js";
import { type Lag, type Look, type Placed, rowsBetween } from "./look.js";
import type { Opened } from "./opening.js";
import { slowNoise } from "./slow-noise.js";
import { topTime } from "./top.js";

/** Half-width of the stretch around the top that is fitted [s]. */
const HALF_WIDTH = 3;
/** Slow noise turns into a slope over about a second, and that over the fall's 1 g into time [s/m]. */
const WANDER = 0.075;

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
      error: Math.hypot(fitted.error, lag.error, WANDER * slowNoise(look)),
      reason: "speed-crosses-zero",
    };
  const row = firstAtLeast(record.time, top);
  return { time: record.time[row]! - lag.time, error: Math.hypot(0.5, spacing), reason: "height-highest" };
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
  const error = polynomialError(fit, t, 1) / Math.abs(polynomialAt(fit, t, 2));
  return {
    time: t - lag.time,
    error: Math.hypot(error, lag.error, WANDER * slowNoise(look)),
    reason: "speed-crosses-zero",
  };
}
