import type { f64 } from "../../math/doubles.js";
import * as at from "./slots.js";
import { COASTING, type FastPhase, GUIDE, PITCHING } from "./step.js";
import type { FastWork } from "./work.js";

/** Part of the swing's radian that one step may cover: longer ones are rejected at the draws' tolerance. */
const swingShare = 0.62;

/** Part of the time in which gravity turns the path that one step may cover on the way to the top. */
const turnShare = 0.3;

/** Below this height on the way down nothing but the landing is asked of a step [m]. */
const landingHeight = 60;

const landingSlack = 100;

/** A kink of the wind's profile nearer than this is passed, not aimed at [m]. */
const knotReach = 2;

/** A step ends a little short of a kink, since drag changes on the way; the next one takes the rest. */
const shortOfKnot = 0.96;

/** Time to the next kink of the wind's profile on the way [s], gravity and drag as they are now; Infinity where there is none. */
function timeToKnot(w: FastWork): f64 {
  const y = w.y;
  const k = w.k;
  const knots = w.windKnots;
  const count = w.windKnotCount;
  const z = y[0]!;
  const climb = y[3]!;
  const bend = k[3]!;
  for (let i = 0; i < count; i++) {
    const way = knots[climb > 0 ? i : count - 1 - i]! - z;
    if (climb > 0 ? way < knotReach : way > -knotReach) continue;
    const reach = climb * climb + 2 * bend * way;
    if (!(reach > 0)) return Number.POSITIVE_INFINITY;
    return (shortOfKnot * 2 * way) / (climb + Math.sign(climb) * Math.sqrt(reach));
  }
  return Number.POSITIVE_INFINITY;
}

/** From this Mach number on the drag bends sharply, and a step may change the Mach number by no more than this. */
const bentFrom = 0.82;
const bentStep = 0.05;

/**
 * Longest step worth trying: near the pace of the swing, of the turn at the top, and of the transonic drag rise, which the
 * error of the last step cannot foresee.
 *
 * @returns [s]; Infinity where only the error rules
 */
export function longestStep(w: FastWork, phase: FastPhase): f64 {
  const c = w.slots;
  const y = w.y;
  const k = w.k;
  if (phase === GUIDE) return Number.POSITIVE_INFINITY;
  let longest = Number.POSITIVE_INFINITY;
  if (phase === PITCHING) {
    const frequency2 = c[at.SWING_FREQUENCY2]!;
    if (frequency2 > 0) longest = swingShare / Math.sqrt(frequency2);
  }
  const climb = y[3]!;
  longest = Math.min(longest, timeToKnot(w));
  if (climb <= 0) return longest;
  // the path's own speed, wind left out, and the sound's at the pad: only a pace is wanted
  const speed = Math.sqrt(y[1]! * y[1]! + y[2]! * y[2]! + climb * climb);
  if (phase === COASTING) longest = Math.min(longest, (turnShare * (speed + 2)) / c[at.GRAVITY0]!);
  const perSound = w.air[1]!;
  if (speed * perSound > bentFrom) longest = Math.min(longest, bentStep / (perSound * (Math.abs(k[3]!) + 1)));
  return longest;
}

/**
 * Error allowed to a step past the top, in units of the tolerance.
 *
 * The wind's profile has an endless slope at the ground, on which the last steps of the fall would be broken to pieces.
 */
export function allowedError(w: FastWork): f64 {
  return w.next[0]! < landingHeight ? landingSlack : 1;
}

/** Factor from a step to the next, or to its next try. */
export function stepFactor(error: f64): f64 {
  if (!(error < 1e300)) return 0.2;
  if (error < 1e-4) return 4;
  return Math.min(4, Math.max(0.2, 0.87 / Math.sqrt(Math.sqrt(error))));
}
