import { type FlightRecord, type FlightResult, type FoundEvents, thinned } from "@delaywright/engine";
import type { DebriefCurves } from "../answer/debrief-data.js";
import type { PlannedOpening } from "./planned-opening.js";

/** Points of a curve that a picture can show. */
const MOST_POINTS = 1200;
const PLANNED_POINTS = 300;

/** Shown before lift-off and after landing [s]. */
const AROUND = 2;

/** The flight as recorded, thinned so that no spike is lost; times from lift-off. */
export function flownCurve({ time, height }: FlightRecord, { liftOff, landing }: FoundEvents): DebriefCurves["flown"] {
  const zero = liftOff?.time ?? 0;
  const end = landing === null ? (time[time.length - 1] ?? 0) : landing.time + AROUND;
  const { x, y } = thinned(time, height, zero - AROUND, end, MOST_POINTS);
  return { time: Array.from(x, (each) => each - zero), height: Array.from(y) };
}

/** The flight as predicted, opened where it should open; times from lift-off. */
export function plannedCurve(flight: FlightResult, { opens, opened }: PlannedOpening): DebriefCurves["predicted"] {
  const { liftOff, landing } = flight.events;
  if (liftOff === null || landing === null) return { time: [], height: [], speed: [] };
  const up = evenly(liftOff.time, opens ?? landing.time);
  const down = opened === null || opens === null ? [] : evenly(opens, opened.landing?.time ?? opens).slice(1);
  const motions = [
    ...up.map((time) => flight.at(time)),
    ...down.flatMap((time) => (opened === null ? [] : [opened.at(time)])),
  ];
  return {
    time: [...up, ...down].map((time) => time - liftOff.time),
    height: motions.map(({ position }) => position[2]),
    speed: motions.map(({ velocity }) => velocity[2]),
  };
}

function evenly(from: number, to: number): number[] {
  return Array.from({ length: PLANNED_POINTS }, (_, i) => from + ((to - from) * i) / (PLANNED_POINTS - 1));
}
