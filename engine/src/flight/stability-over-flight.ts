import { staticMargin } from "../rocket/margin.js";
import { cpOf } from "../rocket/normal-force/parts.js";
import { marginAt, stretchAt } from "./margin-over-flight.js";
import { type FlightModel, massIn } from "./model.js";
import type { FlightResult } from "./result.js";
import { trimAt } from "./settled.js";

/** Static margin above which a rocket turns into the wind more than it need [calibres]. Common practice, no source: 2.5 to 3. */
export const mostMargin = 3;

/** Static margin below which a rocket is looked at [calibres]. Common practice, no source. */
export const leastMargin = 1;

/** Damping ratio of the swing below which it goes on for many swings. Common practice for finned rockets, 0.05 to 0.3; memory. */
export const leastDamping = 0.05;

/** A figure of the stability that passes what is usual, where it does so most. */
export interface StabilityFinding {
  /** `unstable`: the centre of pressure lies at the balance point or ahead of it; `low-margin` where it does not, but nearly. */
  readonly code: "unstable" | "low-margin" | "over-stable" | "under-damped";
  /** Where it is worst. */
  readonly value: number;
  readonly limit: number;
  /** Of that [s] after ignition. */
  readonly time: number;
  /** First and last time at which the limit is passed [s] after ignition. */
  readonly from: number;
  readonly to: number;
}

/** Stability from the guide's end to the top, by columns of one length. */
export interface StabilityOverFlight {
  /** From ignition [s]. */
  readonly time: Float64Array;
  readonly mach: Float64Array;
  /** [kg] */
  readonly mass: Float64Array;
  /** Balance point and centre of pressure from the nose tip [m]; the latter at zero angle of attack. */
  readonly balance: Float64Array;
  readonly cp: Float64Array;
  /** Static margin [calibres]. */
  readonly margin: Float64Array;
  /** Undamped frequency of the swing [rad/s]; 0 where the body is not stable. */
  readonly frequency: Float64Array;
  /** Damping ratio of the swing about the balance point, jet damping included; 0 where the body is not stable. */
  readonly dampingRatio: Float64Array;
  /** [rad] */
  readonly angleOfAttack: Float64Array;
  /** Between airflow and guide as the rocket leaves it [rad]: in the mean wind, and with the gust added square across; null where it never left. */
  readonly guideExitAngle: { readonly mean: number; readonly highest: number } | null;
  readonly findings: readonly StabilityFinding[];
}

/** At the very end of the guide a flight still tells the guide's own leg, which has no angle of attack [s]. */
const JUST_AFTER = 1e-9;

function exitAngle({ events, model }: FlightResult, gust: number): StabilityOverFlight["guideExitAngle"] {
  const exit = events.guideExit;
  if (exit === null) return null;
  const wind = model.windAt(exit.position[2]);
  const guide = model.guideDirection;
  const through = exit.velocity.map((v, i) => v - wind[i]!);
  const along = through.reduce((sum, v, i) => sum + v * guide[i]!, 0);
  const across = Math.sqrt(Math.max(0, through.reduce((sum, v) => sum + v * v, 0) - along * along));
  return { mean: Math.atan2(across, along), highest: Math.atan2(across + gust, along) };
}

/**
 * Stability of one flight from the guide's end to its top: margin, frequency and damping of the swing, angle of attack.
 *
 * Frequency and damping are those of small swings about the balance point at the moment's speed, air and mass; the swing of the path is
 * left out, which adds to the damping.
 *
 * @param flight of any model; the angle of attack is its own, 0 once nose-first
 * @param options gust [m/s] that may blow across as the rocket leaves the guide, 0 where left out; rows, ≥ 2; the least margin that
 * is asked for [calibres], null for none, `leastMargin` where left out
 * @returns columns of no rows where it never left the guide
 * @source frequency √(K/I), ratio c/(2 √(K I)) with K and c as in `trimAt`; margin by definition
 * @example
 * stabilityOverFlight(fly(inputs), { gust: 2 }).findings.map(({ code }) => code); // ["over-stable"]
 */
export function stabilityOverFlight(
  flight: FlightResult,
  {
    gust = 0,
    rows = 96,
    least = leastMargin,
  }: { readonly gust?: number; readonly rows?: number; readonly least?: number | null } = {},
): StabilityOverFlight {
  const { model, events } = flight;
  const from = events.guideExit?.time;
  const to = events.apogee?.time;
  const count = from === undefined || to === undefined ? 0 : rows;
  const column = (): Float64Array => new Float64Array(count);
  const out = {
    time: column(),
    mach: column(),
    mass: column(),
    balance: column(),
    cp: column(),
    margin: column(),
    frequency: column(),
    dampingRatio: column(),
    angleOfAttack: column(),
  };
  for (let i = 0; i < count; i++) {
    const time = i === count - 1 ? to! : from! + (i / (count - 1)) ** 2 * (to! - from!);
    const now = flight.at(Math.max(time, from! + JUST_AFTER));
    const stretch = stretchAt(model, time);
    const { cp, balance, calibres } = marginAt(model, time, now.mach);
    const { density } = model.airAt(now.position[2]);
    const trim = trimAt(model, stretch, { time, density, speed: now.airspeed, mach: now.mach, growth: 0 });
    out.time[i] = time;
    out.mach[i] = now.mach;
    out.mass[i] = massIn(model, stretch, time).mass;
    out.balance[i] = balance;
    out.cp[i] = cp;
    out.margin[i] = calibres;
    out.frequency[i] = trim.frequency;
    out.dampingRatio[i] = trim.frequency > 0 ? trim.damping / (2 * trim.frequency) : 0;
    out.angleOfAttack[i] = now.angleOfAttack;
  }
  return { ...out, guideExitAngle: exitAngle(flight, gust), findings: findingsOf(out, least) };
}

type Columns = Omit<StabilityOverFlight, "guideExitAngle" | "findings">;

function findingsOf({ time, margin, dampingRatio, frequency }: Columns, least: number | null): StabilityFinding[] {
  const lowest = (limit: number): Worst | null => worstOf(time, margin, limit, "below");
  const unstable = lowest(0);
  const low = unstable === null && least !== null ? lowest(least) : null;
  const over = worstOf(time, margin, mostMargin, "above");
  const damping = dampingRatio.map((ratio, i) => (frequency[i]! > 0 ? ratio : Number.NaN));
  const under = worstOf(time, damping, leastDamping, "below");
  return [
    ...(unstable === null ? [] : [{ code: "unstable" as const, ...unstable }]),
    ...(low === null ? [] : [{ code: "low-margin" as const, ...low }]),
    ...(over === null ? [] : [{ code: "over-stable" as const, ...over }]),
    ...(under === null ? [] : [{ code: "under-damped" as const, ...under }]),
  ];
}

type Worst = Omit<StabilityFinding, "code">;

/** Where a column passes a limit: the worst of it, and from when to when; NaN passes none. */
function worstOf(time: Float64Array, column: Float64Array, limit: number, side: "above" | "below"): Worst | null {
  const past = (i: number): number => (side === "above" ? column[i]! - limit : limit - column[i]!);
  // what does not swing back has no margin: at a limit of 0, 0 is past it
  const passes = (i: number): boolean => past(i) > 0 || (limit === 0 && past(i) === 0);
  let [first, last, worst] = [-1, -1, -1];
  for (let i = 0; i < time.length; i++) {
    if (!passes(i)) continue;
    if (first < 0) first = i;
    last = i;
    if (worst < 0 || past(i) > past(worst)) worst = i;
  }
  if (worst < 0) return null;
  const crossing = (inside: number, outside: number): number => {
    if (Number.isNaN(past(outside) - past(inside)) || outside === inside) return time[inside]!;
    return time[inside]! + (past(inside) / (past(inside) - past(outside))) * (time[outside]! - time[inside]!);
  };
  return {
    value: column[worst]!,
    limit,
    time: time[worst]!,
    from: crossing(first, Math.max(0, first - 1)),
    to: crossing(last, Math.min(time.length - 1, last + 1)),
  };
}

/** Static margin over Mach number, with the motor loaded and empty [calibres]: columns of one length. */
export interface MarginOverMach {
  readonly mach: readonly number[];
  readonly loaded: readonly number[];
  readonly empty: readonly number[];
}

/**
 * Static margin at zero angle of attack over Mach number, at the mass of ignition and at that of the empty motor.
 *
 * @param model of a flight
 * @param mach ≥ 0
 * @example
 * marginOverMach(fly(inputs).model, [0, 0.8, 1.1, 2]).loaded[0];
 */
export function marginOverMach(model: FlightModel, mach: readonly number[]): MarginOverMach {
  const { diameter, length } = model.inputs.rocket;
  const [first, last] = [model.stretches[0]!, model.stretches[model.stretches.length - 1]!];
  const balances = [massIn(model, first, first.from).balance, massIn(model, last, last.from).balance];
  const [loaded, empty] = balances.map((balance) =>
    mach.map((m) => staticMargin({ cp: cpOf(model.parts, m), balance, diameter, length }).calibres),
  ) as [number[], number[]];
  return { mach, loaded, empty };
}
