import { eventNames, type FlightRecord, type FoundEvents, movableRange, thinned } from "@delaywright/engine";
import type { DebriefTold, FlownLines, Stretch, StretchAsk, ThinLine } from "./protocol.js";

/** Shown before lift-off and after landing [s]. */
const AROUND = 2;

/** A stretch of a record as lines, on a clock that is zero at lift-off. */
export function linesOf(record: FlightRecord, zero: number, { from, to, most }: StretchAsk): FlownLines {
  const thin = (column: Float64Array): ThinLine => {
    const { x, y } = thinned(record.time, column, from + zero, to + zero, Math.max(4, Math.min(20_000, most)));
    return { time: x.map((time) => time - zero), value: y };
  };
  return {
    height: thin(record.height),
    speed: thin(record.speed),
    acceleration: record.acceleration === null ? null : thin(record.acceleration),
  };
}

/** All of a flight that is worth looking at. */
export function wholeOf({ time }: FlightRecord, { landing }: FoundEvents, zero: number): Stretch {
  const first = (time[0] ?? 0) - zero;
  const last = (time[time.length - 1] ?? 0) - zero;
  return { from: Math.max(first, -AROUND), to: landing === null ? last : Math.min(last, landing.time - zero + AROUND) };
}

/** Where each event that was found may be moved, after lift-off. */
export function rangesOf(
  record: FlightRecord,
  events: FoundEvents,
  zero: number,
): NonNullable<DebriefTold["plot"]>["ranges"] {
  return Object.fromEntries(
    eventNames.flatMap((name) => {
      if (events[name] === null) return [];
      const [from, to] = movableRange(record, events, name);
      return [[name, { from: from - zero, to: to - zero }]];
    }),
  );
}

/** The vertical speed as predicted. */
export function predictedSpeedOf(curves: DebriefTold["data"]["curves"]): ThinLine {
  const { time, speed } = curves?.predicted ?? { time: [], speed: [] };
  return { time: Float64Array.from(time), value: Float64Array.from(speed) };
}
