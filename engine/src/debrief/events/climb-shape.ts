import { burnOf } from "../../motor/burn.js";
import type { ThrustCurve } from "../../motor/motor.js";
import { dampedFit } from "../fit/damped-fit.js";
import { interpolated } from "../interpolated.js";
import { type Look, type Placed, portError, rowsBetween, shapeError, usualLag } from "./look.js";
import { fastestRow, topTime } from "./top.js";

const GRAVITY = 9.80665;
const STEP = 0.01;
/** Share of what it is behind that a barometer of the usual lag makes good in a step. */
const FOLLOWS = 1 - Math.exp(-STEP / usualLag.time);
/** Steps of the longest climb that is fitted. */
const LONGEST = 4000;
/** Where no motor's shape is known, its waves are wider, and the end of its tail is not told: shares of the thrust and of the burn. */
const ANY_SHAPE = 0.15;
const ANY_TAIL = 0.04;

/** A thrust of no motor in particular, burn time 1: what is fitted without the motor's own. */
const anyThrust: ThrustCurve = { times: [0, 0.03, 0.85, 1.02], thrusts: [0, 1, 0.85, 0] };

type Shape = readonly [
  start: number,
  stretch: number,
  level: number,
  drag: number,
  fall: number,
  pad: number,
  ports: number,
  wave: number,
  wave2: number,
];

/** A climb as a barometer shows it, and its way above the pad; `STEP` apart. */
interface Climb {
  readonly from: number;
  readonly shown: Float64Array;
  readonly way: Float64Array;
}

/** Events of a climb as a barometer alone tells them. */
export interface ShapedClimb {
  readonly liftOff: Placed;
  readonly burnout: Placed;
  readonly guideExit: Placed | null;
}

/**
 * Fits lift-off and burnout to the heights of the climb: twice the integral of the thrust's shape over a mass that falls, less
 * gravity and a drag by the square of the speed. Level, length, start and shape of the thrust, its fall with the mass, drag, the
 * ports' error and the pad's height are fitted; null where the climb does not hold enough rows.
 *
 * Each flight's heights pull on the break at burnout and at lift-off at once, so both come out without a threshold's delay.
 */
export function climbByShape(look: Look): ShapedClimb | null {
  const { record, hints } = look;
  const fastest = fastestRow(look);
  if (fastest === null) return null;
  const { time, height, speed } = record;
  const own = hints.thrust !== undefined;
  const shape = hints.thrust ?? anyThrust;
  const burn = burnOf(shape);
  const seenLength = Math.min(15, Math.max(0.2, (1.9 * height[fastest]!) / Math.max(5, speed[fastest]!)));
  const known = own ? burn.end : hints.burnTime;
  const length = known ?? seenLength;
  const end = time[fastest]!;
  const top = topTime(look);
  const until = end + Math.min(2, Math.max(0.6, 0.45 * (top - end)));
  const rows = rowsBetween(look, end - length - 1.5, until);
  if (rows.length < 12) return null;
  const thrusts = Float64Array.from(shape.thrusts);
  const times = Float64Array.from(shape.times);
  const mean = burn.averageThrust;
  const push = (speed[fastest]! + GRAVITY * length) / length;

  const climbOf = (p: readonly number[]): Climb => {
    const [start, stretch, level, drag, fall, pad, ports, wave, wave2] = p as unknown as Shape;
    // a start that the fit throws far off is no flight's: its heights stay those of the pad
    const count = Math.min(LONGEST, Math.max(2, Math.ceil((until - start) / STEP) + 2));
    const shown = new Float64Array(count);
    const way = new Float64Array(count);
    const s = Math.max(0.2, stretch) * (own ? 1 : length);
    let v = 0;
    let h = 0;
    let k = 0;
    const at = (t: number): number => {
      const x = t / s;
      if (x >= times[times.length - 1]!) return 0;
      while (k > 0 && times[k]! > x) k--;
      while (k + 2 < times.length && times[k + 1]! < x) k++;
      const part = (x - times[k]!) / (times[k + 1]! - times[k]!);
      const thrust = (thrusts[k]! + (thrusts[k + 1]! - thrusts[k]!) * part) / mean;
      const turn = (Math.PI * x) / burn.end;
      const waved = 1 + wave * Math.cos(turn) + wave2 * Math.cos(2 * turn);
      return level * thrust * waved * (1 + (fall * x) / burn.end);
    };
    shown[0] = pad;
    let moving = false;
    let behind = 0;
    for (let i = 1; i < count; i++) {
      const a = at((i - 0.5) * STEP) - GRAVITY - drag * v * Math.abs(v);
      moving ||= a > 0;
      if (moving) {
        h += v * STEP + 0.5 * a * STEP * STEP;
        v += a * STEP;
      }
      behind += FOLLOWS * (h + (ports * v * v) / (2 * GRAVITY) - behind);
      shown[i] = pad + behind;
      way[i] = h;
    }
    return { from: start, shown, way };
  };
  const residualsAt = (p: readonly number[]): Float64Array => {
    const { from, shown } = climbOf(p);
    return Float64Array.from(rows, (row) => {
      const place = (time[row]! - from) / STEP;
      if (place <= 0) return height[row]! - shown[0]!;
      const i = Math.min(Math.floor(place), shown.length - 2);
      return height[row]! - shown[i]! - (shown[i + 1]! - shown[i]!) * Math.min(1, place - i);
    });
  };
  const fits = [1, 0.75, 1.3].map((longer) =>
    dampedFit(residualsAt, [end - length * longer - usualLag.time, longer, push / longer, 0.001, 0.1, 0, 0, 0, 0], {
      leastResidual: 0.7 * record.heightError,
      steps: [0.1, 0.1, 10, 0.001, 0.1, 1, 0.01, 0.1, 0.1],
      priors: [
        null,
        [1, own ? 0.1 : known === undefined ? 0.5 : 0.15],
        null,
        [0.001, 0.002],
        [0.1, own ? 0.1 : 0.3],
        [0, record.heightError],
        [0, portError],
        [0, own ? shapeError : ANY_SHAPE],
        [0, own ? shapeError : ANY_SHAPE],
      ],
    }),
  );
  const fit = fits.reduce((a, b) => (b.cost < a.cost ? b : a));
  const [t0, stretch, level] = fit.parameters as [number, number, number];
  const s = own ? stretch : stretch * length;
  const v = fit.covariance;
  const n = fit.parameters.length;
  const e = own ? burn.end : length * burn.end;
  const varianceAt = (x: number): number => v[0]! + 2 * x * v[1]! + x * x * v[n + 1]!;
  const misfit = own ? 0 : ANY_TAIL * s * burn.end;
  // thrust carries the weight where its share of the mean reaches 1 g
  let lift = 0;
  while (lift < 0.3 * burn.end && (interpolated(times, thrusts, lift) / mean) * level < GRAVITY)
    lift += 0.002 * burn.end;
  const place = (x: number, more: number): number =>
    Math.sqrt(Math.max(0, varianceAt(x)) + more * more + usualLag.error ** 2);
  const liftOff: Placed = { time: t0 + lift * s, error: place(0, 0.005), reason: "height-leaves-noise" };
  const burnout: Placed = { time: t0 + burn.end * s, error: place(e, misfit), reason: "speed-highest" };
  return { liftOff, burnout, guideExit: exitOn(climbOf(fit.parameters), hints.guideTravel, liftOff) };
}

function exitOn({ from, way }: Climb, travel: number | undefined, liftOff: Placed): Placed | null {
  if (travel === undefined) return null;
  const i = way.findIndex((h) => h >= travel);
  if (i < 1) return null;
  const part = (travel - way[i - 1]!) / (way[i]! - way[i - 1]!);
  const time = from + (i - 1 + part) * STEP;
  return { time, error: Math.hypot(liftOff.error, 0.03 * (time - liftOff.time)), reason: "travelled-guide" };
}
