import { timeToFill } from "../../packing/canopy.js";
import { type DampedFit, dampedFit } from "../fit/damped-fit.js";
import { interpolated } from "../interpolated.js";
import { between, type Fall, fallUnder, usualFill } from "./canopy-fall.js";
import { feltPull, hangOf } from "./felt-pull.js";
import { lagged } from "./lagged.js";
import { accelerometerLag, type Lag, type Look, rowsBetween } from "./look.js";
import { noiseOfRows } from "./noise-of-rows.js";

const GRAVITY = 9.80665;

/** A main canopy's opening. */
export interface MainFit {
  /** Line stretch, the barometer's lag taken off [s], and one sigma of it. */
  readonly time: number;
  readonly error: number;
}

/** What is known before the fit. */
export interface MainGuess {
  /** On the barometer's late clock [s]. */
  readonly time: number;
  /** Stretch of the fit [s]. */
  readonly from: number;
  readonly to: number;
  /** Steady descent before the opening and under it [m/s]. */
  readonly before: number;
  readonly after: number;
}

/**
 * One sigma of the logarithm of a known way that a canopy covers while it fills: texts differ by 0.3 on one kind of canopy, and how its
 * drag grows is fitted apart. Own default, no source.
 */
const KNOWN_FILL = 0.25;
/** Power of the filling time by which the drag area grows, and one sigma. T. W. Knacke, NWC TP 6575 (1991), 5.4, memory; its error own default. */
const growth: [number, number] = [2, 0.3];
/** A canopy that carries falls steadily up to this [m/s], one sigma. Own default, no source. */
const STEADY = 0.5;
/** The path begins so long before its first row: the bay's lag dies away [s]. */
const RUN_IN = 0.3;
/** Pull is looked at so long before the opening and after the filling [s]. */
const BEFORE = 1;
const AFTER = 0.7;
/** A pull that moves the opening by more than so many sigma of what heights tell is not the canopy's. */
const CONTRADICTS = 3;
/** A rocket that hangs otherwise by more than this factor, or the other way round, turned as its main canopy opened: the pull is not the canopy's alone. */
const TURNED = 2;

/**
 * Fits when a second canopy stretched its lines: a point in steady fall whose drag grows while the canopy fills, seen by a barometer
 * with a first-order lag and, where there is one, felt by an accelerometer. Heights alone hang on the way that it takes to fill;
 * the pull shows that way too. How the rocket hangs is fitted along, before and after apart; one that turns over is told by heights.
 *
 * @param lag of the barometer, known as well as it states
 */
export function mainFit(look: Look, guess: MainGuess, lag: Lag): MainFit | null {
  const { time, height } = look.record;
  const rows = rowsBetween(look, guess.from, guess.to, 160);
  if (rows.length < 10) return null;
  const noise = noiseOfRows(look, rows);
  const start = guess.from - RUN_IN;
  const known = look.hints.fillDistances?.main;
  const fill = timeToFill(known ?? usualFill.way / guess.after, guess.before, GRAVITY);
  const body = GRAVITY / guess.before ** 2;
  // opening, filling time, climb at the start and drag before are told as departures from what is expected
  const pathOf = ([opens, slower, after, h0, off, drag, , power]: readonly number[]): Fall =>
    fallUnder(
      [
        opens!,
        fill * Math.exp(slower!),
        0,
        after!,
        h0!,
        off! - Math.sqrt(GRAVITY / Math.max(1e-4, drag!)),
        drag!,
        power!,
      ],
      start,
      guess.to,
    );
  const heightsLeft = (p: readonly number[], { heights, step }: Fall): Float64Array => {
    const shown = lagged(heights, step, p[6]!);
    return noise(Float64Array.from(rows, (row) => height[row]! - between(shown, (time[row]! - start) / step)));
  };
  const steps = [0.1, 0.2, 0.5, 0.5, 1, 0.1 * body, 0.05, 0.2];
  const priors = [
    null,
    [0, known === undefined ? usualFill.error : KNOWN_FILL],
    [guess.after, 0.3 + 0.05 * guess.after],
    null,
    [0, STEADY],
    [body, 0.15 * body],
    [lag.time, Math.max(0.005, lag.error)],
    growth,
  ] as const;
  const begin = interpolated(time, height, guess.from) + RUN_IN * guess.before;
  const byHeights = dampedFit(
    (p) => heightsLeft(p, pathOf(p)),
    [guess.time - lag.time, 0, guess.after, begin, 0, body, lag.time, growth[0]],
    { leastResidual: 1, steps, priors },
  );
  const [opens] = byHeights.parameters as [number];
  if (!(opens > guess.from && opens < guess.to)) return null;
  const alone = { time: opens, error: errorOf(byHeights) };
  const pull = feltPull(look, opens - BEFORE, opens + fill + AFTER);
  if (pull === null) return alone;

  const pullOf = ({ felt, step }: Fall): Float64Array =>
    // each of the path's figures is the mean of the step that ends there
    pull.times.map((t) => between(felt, (t - accelerometerLag.time - start) / step + 0.5));
  let parameters: readonly number[] = [...byHeights.parameters, ...hangOf(pull, pullOf(pathOf(byHeights.parameters)))];
  let joint: DampedFit | null = null;
  // how the pull may err grows with it: told anew by the better path
  for (let round = 0; round < 2; round++) {
    const [along, level] = parameters.slice(-2) as [number, number];
    const pullNoise = pull.noiseAt(pullOf(pathOf(parameters)).map((x) => along * (x - GRAVITY) + level));
    const residualsAt = (p: readonly number[]): Float64Array => {
      const path = pathOf(p);
      const has = pullOf(path);
      const left = pullNoise(pull.felt.map((x, i) => x - p[8]! * (has[i]! - GRAVITY) - p[9]!));
      return Float64Array.of(...heightsLeft(p, path), ...left);
    };
    joint = dampedFit(residualsAt, parameters, { leastResidual: 1, steps: [...steps, 0.2, 1], priors });
    parameters = joint.parameters;
  }
  const [along, level] = parameters.slice(-2) as [number, number];
  const both = { time: parameters[0]!, error: Math.hypot(errorOf(joint!), accelerometerLag.error) };
  const kept = level / (along * GRAVITY);
  const turned = !(kept > 1 / TURNED && kept < TURNED);
  return turned || Math.abs(both.time - alone.time) > CONTRADICTS * alone.error ? alone : both;
}

const errorOf = (fit: DampedFit): number => Math.hypot(Math.sqrt(fit.covariance[0]!), 0.01);
