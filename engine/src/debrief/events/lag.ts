import { dampedFit } from "../fit/damped-fit.js";
import { interpolated } from "../interpolated.js";
import { accelerometerLag, type Lag, type Look, portError, rowsBetween, usualLag } from "./look.js";
import { pushedFrom } from "./pushed.js";

const GRAVITY = 9.80665;
/**
 * How far the barometer lags behind the accelerometer: twice the integral of the acceleration, late by the lag, is fitted to
 * the heights of the boost and the early coast. The accelerometer's scale, offset and the lean are fitted along.
 * Without an accelerometer, or with one at the end of its range, the usual lag.
 */
export function lagOf(look: Look, liftOff: number, burnout: number): Lag {
  const { record } = look;
  const { time, acceleration, height } = record;
  const clipped = record.flaws.some((flaw) => flaw.kind === "saturated" && flaw.from < burnout && flaw.to > liftOff);
  if (acceleration === null || clipped) return usualLag;
  const until = burnout + 2;
  const { way, speed } = pushedFrom(time, acceleration, liftOff, until + 1);
  const rows = rowsBetween(look, liftOff - 0.3, until);
  if (rows.length < 12) return usualLag;
  const residualsAt = ([pad, scale, lag, offset, kick, ports]: readonly number[]): Float64Array =>
    Float64Array.from(rows, (row) => {
      const t = time[row]! - lag!;
      const since = Math.max(0, t - liftOff);
      const v = interpolated(time, speed, t);
      const real = scale! * interpolated(time, way, t) + (kick! + 0.5 * offset! * since) * since;
      return height[row]! - pad! - real - (ports! * v * v) / (2 * GRAVITY);
    });
  // where in its spacing the thrust rose is not known: a speed in error from the start
  const spacing = 1 / record.rate;
  const fit = dampedFit(residualsAt, [0, 1, usualLag.time, 0, 0, 0], {
    leastResidual: 0.7 * record.heightError,
    steps: [1, 0.05, 0.05, 1, 1, 0.01],
    priors: [
      [0, record.heightError],
      [1, 0.05],
      [usualLag.time - accelerometerLag.time, 0.04],
      [0, 1],
      [0, 0.2 + 25 * spacing],
      [0, portError],
    ],
  });
  // the accelerometer that it is held against is late itself
  const lag = fit.parameters[2]! + accelerometerLag.time;
  const error = Math.hypot(Math.sqrt(fit.covariance[14]!), accelerometerLag.error);
  return lag > -0.05 && lag < 0.4 && error < 0.05 ? { time: Math.max(0, lag), error } : usualLag;
}
