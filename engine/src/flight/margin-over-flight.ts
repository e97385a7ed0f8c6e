import { type StaticMargin, staticMargin } from "../rocket/margin.js";
import { cpOf } from "../rocket/normal-force/parts.js";
import { type FlightModel, massIn, type Stretch } from "./model.js";
import type { FlightResult } from "./result.js";

/** Static margin at one moment of a flight. */
export interface FlownMargin extends StaticMargin {
  /** From ignition [s]. */
  readonly time: number;
  readonly mach: number;
  /** Centre of pressure at no angle of attack, and balance point, from the nose tip [m]. */
  readonly cp: number;
  readonly balance: number;
}

/** The stretch of a flight's model that holds at a time. */
export function stretchAt(model: FlightModel, time: number): Stretch {
  return model.stretches.find((s) => time >= s.from && time <= s.to) ?? model.stretches[model.stretches.length - 1]!;
}

/**
 * Static margin at a time and Mach number of a flight.
 *
 * @param time from ignition [s]
 */
export function marginAt(model: FlightModel, time: number, mach: number): FlownMargin {
  const { diameter, length } = model.inputs.rocket;
  const { balance } = massIn(model, stretchAt(model, time), time);
  const cp = cpOf(model.parts, model.options.compressibility ? mach : 0);
  return { ...staticMargin({ cp, balance, diameter, length }), time, mach, cp, balance };
}

/** Moments of the least and the most margin, beside guide exit, fastest and burnout. */
const MOMENTS = 24;

/**
 * The least and the most static margin from the guide's end to the top, at some moments that lie closer at the beginning, at burnout and
 * where it is fastest.
 *
 * @returns null where it never left the guide, or has no top
 * @example
 * marginExtremes(fly(inputs))?.least.calibres; // 2.2
 */
export function marginExtremes(
  flight: FlightResult,
): { readonly least: FlownMargin; readonly most: FlownMargin } | null {
  const { model, events } = flight;
  const from = events.guideExit?.time;
  const to = events.apogee?.time;
  if (from === undefined || to === undefined) return null;
  const times = Array.from({ length: MOMENTS }, (_, i) => from + (i / (MOMENTS - 1)) ** 2 * (to - from));
  const special = [flight.peaks().fastest.time, events.burnout?.time ?? from];
  const margins = [...times, ...special.filter((time) => time > from && time < to)].map((time) =>
    marginAt(model, time, flight.at(time).mach),
  );
  return {
    least: margins.reduce((a, b) => (b.calibres < a.calibres ? b : a)),
    most: margins.reduce((a, b) => (b.calibres > a.calibres ? b : a)),
  };
}
