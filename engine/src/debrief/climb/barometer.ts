import { type Climb, gridStep } from "./climb-flights.js";

/**
 * What a barometer that lags shows of a climb: a first-order low-pass.
 *
 * @param lag time constant [s], ≥ 0
 * @source exact step of dy/dt = (h − y)/τ for heights that are straight between the grid's times
 */
export function lagged(climb: Climb, lag: number): Climb {
  if (!(lag > 0.01 * gridStep)) return climb;
  const kept = Math.exp(-gridStep / lag);
  const slope = lag / gridStep;
  const shown = new Float64Array(climb.length);
  for (let i = 1; i < climb.length; i++) {
    const rise = climb[i]! - climb[i - 1]!;
    const behind = (shown[i - 1]! - climb[i - 1]!) * kept + slope * rise * (kept - 1);
    shown[i] = climb[i]! + behind;
  }
  return shown;
}

/** Heights at times after lift-off, straight between the grid's; 0 before lift-off, the last beyond the grid. */
export function shownAt(shown: Climb, times: Float64Array, shift: number): Float64Array {
  return times.map((time) => {
    const place = (time - shift) / gridStep;
    if (place <= 0) return 0;
    const i = Math.min(shown.length - 2, Math.floor(place));
    const part = Math.min(1, place - i);
    return shown[i]! + part * (shown[i + 1]! - shown[i]!);
  });
}
