import { type CanopyFit, canopyFit } from "./canopy-fit.js";
import type { DescentSteps } from "./descent-steps.js";
import { fellSteadily } from "./fell-steadily.js";
import type { Firing } from "./firings.js";
import { departure, type Lag, type Look, type Placed } from "./look.js";
import { mainFit } from "./main-fit.js";

/** Charges are tried this far from what the fall tells [s], and so many of them. */
const FARTHEST = 6;
const MOST_FIRINGS = 4;
/** A charge may make the path fit so much worse and is still taken for what opened it: factor on the cost, and an addition. Own default, no source. */
const WORSE = 1.1;
const WORSE_BY = 8;
/** The factor for a charge that both instruments saw. */
const TWICE_WORSE = 1.5;
/** One sigma of a line stretch that is not known [s]. */
const UNKNOWN_STRETCH = 0.5;

/** The first opening, when its charge fired [s], and the path about it. */
export interface Opened {
  readonly placed: Placed;
  readonly fires: number;
  readonly fit: CanopyFit;
}

/**
 * The first opening: line stretch, as the flight model has it. The fall tells it roughly, a charge seen to fire near it exactly:
 * then it is placed the hinted line stretch after the firing.
 */
export function openingOf(
  look: Look,
  burnout: number,
  apogee: number,
  landing: number,
  steps: DescentSteps,
  firings: readonly Firing[],
  lag: Lag,
): Opened | null {
  const end = Math.min(landing - 0.5, steps.main === null ? Number.POSITIVE_INFINITY : steps.main.time - 0.5);
  const late = steps.fastest.speed > steps.first + 6 ? [steps.fastest.time - 0.5, steps.fastest.time] : [];
  const guesses = [...late, apogee - 2.5, apogee - 1, apogee, apogee + 1, apogee + 2.5];
  const tries = guesses.flatMap((guess) => {
    const from = Math.max(burnout + 0.4, Math.min(guess, apogee) - 1.2);
    const to = Math.min(end, Math.max(guess, apogee) + 4);
    if (to - from < 1.5 || guess < from) return [];
    const fit = canopyFit(look, { time: guess, from, to, after: steps.first });
    return fit === null ? [] : [{ fit, from, to }];
  });
  const best = bestOf(look, tries, steps.first);
  if (best === null) return null;
  const doubt = (time: number): number => (fellSteadily(look, time, apogee) ? time - apogee : 0);
  const stretch = look.hints.lineStretch ?? 0;
  const seen = best.time - lag.time;
  const near = firings
    .filter((f) => f.time > burnout && f.time + stretch < end && Math.abs(f.time + stretch - seen) < FARTHEST)
    .sort((a, b) => Math.abs(a.time + stretch - seen) - Math.abs(b.time + stretch - seen))
    .slice(0, MOST_FIRINGS);
  const tried = near.map((firing) =>
    tryFiring(look, firing, stretch, apogee, burnout, end, best.time, steps.first, lag),
  );
  for (const reason of ["pressure-spike", "acceleration-spike"] as const) {
    const fitting = tried.filter((t) => t !== null && t.firing.reason === reason && t.fits) as Tried[];
    fitting.sort((a, b) => a.worse - b.worse);
    const own = fitting[0];
    if (own === undefined) continue;
    const opens = own.firing.time + stretch;
    return {
      placed: { time: opens, error: Math.hypot(own.firing.error, doubt(opens)), reason },
      fires: own.firing.time,
      fit: own.fit,
    };
  }
  return {
    placed: { time: seen, error: Math.hypot(best.error, lag.error, doubt(seen)), reason: "descent-slows" },
    fires: seen - stretch,
    fit: best,
  };
}

interface Stretch {
  readonly fit: CanopyFit;
  readonly from: number;
  readonly to: number;
}

/** The fit whose opening makes the path over all stretches together fit best; of those that do so nearly alike the one that fits its own best. */
function bestOf(look: Look, tries: readonly Stretch[], after: number): CanopyFit | null {
  const from = Math.min(...tries.map((t) => t.from));
  const to = Math.max(...tries.map((t) => t.to));
  const costs = tries.map(
    ({ fit }) => canopyFit(look, { time: fit.time, from, to, after })?.cost ?? Number.POSITIVE_INFINITY,
  );
  const least = Math.min(...costs);
  const alike = tries.filter((_, k) => costs[k]! <= least + WORSE_BY);
  const worth = ({ fit, from, to }: Stretch): number => fit.cost / (to - from);
  return alike.reduce<Stretch | null>((a, b) => (a === null || worth(b) < worth(a) ? b : a), null)?.fit ?? null;
}

interface Tried {
  readonly firing: Firing;
  readonly fit: CanopyFit;
  /** By how much the path fits worse than with its time free. */
  readonly worse: number;
  readonly fits: boolean;
}

/** The path with its opening held where a charge would have it, against the same path with the time free, by what heights may err together. */
function tryFiring(
  look: Look,
  firing: Firing,
  stretch: number,
  apogee: number,
  burnout: number,
  end: number,
  free: number,
  after: number,
  lag: Lag,
): Tried | null {
  const opens = firing.time + stretch + lag.time;
  const from = Math.max(burnout + 0.4, Math.min(opens, apogee, free) - 1.2);
  const to = Math.min(end, Math.max(opens, apogee, free) + 4);
  const guess = { from, to, after };
  const timeError = look.hints.lineStretch === undefined ? UNKNOWN_STRETCH : Math.hypot(firing.error, lag.error);
  const held = canopyFit(look, { ...guess, time: opens, timeError });
  if (held === null) return null;
  // a quiet barometer sees what gusts and a flight's own departure do to both paths: it must not count against the charge
  const departsOver = departure.together * Math.max(apogee, 1);
  const charged = canopyFit(look, { ...guess, time: opens, timeError, departsOver });
  const loose = canopyFit(look, { ...guess, time: free, departsOver });
  if (charged === null || loose === null) return { firing, fit: held, worse: 0, fits: loose === null };
  const factor = firing.twice ? TWICE_WORSE : WORSE;
  return {
    firing,
    fit: held,
    worse: charged.cost - loose.cost,
    fits: charged.cost < factor * loose.cost + WORSE_BY,
  };
}

/** The second opening: the descent slows again. */
export function mainOf(look: Look, landing: number, steps: DescentSteps, lag: Lag): Placed | null {
  if (steps.main === null) return null;
  const { time, before, after } = steps.main;
  const guess = { time: time - 0.3, from: time - 3, to: Math.min(time + 4, landing - 0.3), before, after };
  const fit = mainFit(look, guess, lag);
  if (fit === null) return { time: time - lag.time, error: 0.7, reason: "descent-slows-again" };
  return { ...fit, reason: "descent-slows-again" };
}
