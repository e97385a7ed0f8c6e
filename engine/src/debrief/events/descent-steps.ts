import { median } from "../record/rows.js";
import { slopeOver } from "./landing.js";
import { type Look, rowsBetween } from "./look.js";

/** The way down in its steady parts. */
export interface DescentSteps {
  /** Steady descent under what opened first [m/s]. */
  readonly first: number;
  /** Where it slows again, roughly; null where one canopy carries it all the way. */
  readonly main: { readonly time: number; readonly before: number; readonly after: number } | null;
  /** Fastest fall before it steadies, and when [m/s], [s]. */
  readonly fastest: { readonly time: number; readonly speed: number };
}

/** A second slowing: the descent falls to this share or less. */
const SHARE = 0.72;
/** Openings lie so far from the top and from the ground [s]. */
const AFTER_TOP = 4;
const BEFORE_LANDING = 2;
/** Seconds before the slowing that must be steady, and what still is, as a share of the speed. */
const STEADY_TIME = 4;
const STEADY = 0.15;

interface Step {
  readonly time: number;
  readonly speed: number;
}

/** Walks the way down in half seconds; the best of all splits into two steady parts is the second opening. */
export function descentSteps(look: Look, apogee: number, landing: number, descent: number): DescentSteps {
  const speeds: Step[] = [];
  for (let t = apogee - 2; t + 1 <= landing - 0.5; t += 0.5)
    if (rowsBetween(look, t, t + 1, 4).length === 4) speeds.push({ time: t + 0.5, speed: slopeOver(look, t, t + 1) });
  const main = secondSlowing(speeds.filter((s) => s.time > apogee + AFTER_TOP && s.time < landing - BEFORE_LANDING));
  const until = main === null ? landing : main.time - 1;
  let fastest: Step = { time: apogee, speed: 0 };
  for (const s of speeds) if (s.time < until && s.speed > fastest.speed) fastest = s;
  return { first: main === null ? descent : main.before, main: main && { ...main, after: descent }, fastest };
}

function secondSlowing(speeds: readonly Step[]): { time: number; before: number } | null {
  const n = speeds.length;
  const whole = speeds.reduce((sum, s) => sum + s.speed, 0);
  let sum = 0;
  let best = 0;
  let gain = 0;
  for (let k = 1; k < n; k++) {
    sum += speeds[k - 1]!.speed;
    const split = sum ** 2 / k + (whole - sum) ** 2 / (n - k);
    if (split > gain) [gain, best] = [split, k];
  }
  if (best < 4) return null;
  const { time } = speeds[best]!;
  const before = speeds.filter((s) => s.time > time - STEADY_TIME - 1 && s.time <= time - 1).map((s) => s.speed);
  const after = median(speeds.slice(best + 1).map((s) => s.speed));
  const half = before.length >> 1;
  const level = median(before);
  const steady = Math.abs(middleOf(before.slice(0, half)) - middleOf(before.slice(half))) < STEADY * level + 0.5;
  return before.length >= 4 && steady && after < SHARE * level ? { time, before: level } : null;
}

/** Mean of the middle ones: of few speeds one over a gap may be far off. */
function middleOf(speeds: readonly number[]): number {
  const sorted = [...speeds].sort((a, b) => a - b);
  const cut = Math.floor((sorted.length - 1) / 2);
  const kept = sorted.slice(cut, sorted.length - cut);
  return kept.reduce((sum, speed) => sum + speed, 0) / kept.length;
}
