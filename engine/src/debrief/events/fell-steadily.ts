import { slopeOver } from "./landing.js";
import type { Look } from "./look.js";

/** So long is looked at before a late opening [s]; no rocket falls steadily slower without a canopy [m/s]. */
const STEADY_TIME = 4;
const LEAST_TERMINAL = 40;

/** Whether the fall before a late opening was steady and slow: something had opened by then, anywhere since the top. */
export function fellSteadily(look: Look, time: number, apogee: number): boolean {
  if (time < apogee + STEADY_TIME + 2) return false;
  const half = 0.5 * STEADY_TIME;
  const early = slopeOver(look, time - 1 - STEADY_TIME, time - 1 - half);
  const late = slopeOver(look, time - 1 - half, time - 1);
  return Math.abs(late - early) < 0.15 * early + 0.5 && late < LEAST_TERMINAL;
}
