import { fastFlight } from "../src/flight/fast/fast-flight.js";
import { FastOutcome } from "../src/flight/fast/outcome.js";
import { Doubles } from "../src/math/doubles.js";
import { FastWork } from "../src/flight/fast/work.js";

const out = new FastOutcome();
const w = new FastWork();

export function lay(
  air: i32,
  wind: i32,
  coasting: i32,
  thrusting: i32,
  windKnots: i32,
  aero: i32,
  stretches: i32,
): void {
  w.lay(air, wind, coasting, thrusting, windKnots, aero, stretches);
}

export function count(
  machCount: i32,
  lastAirCell: i32,
  lastWindCell: i32,
  lastMachCell: i32,
  lastDragRow: i32,
  windKnotCount: i32,
  aeroStride: i32,
  partCount: i32,
  stretchCount: i32,
): void {
  w.machCount = machCount;
  w.lastAirCell = lastAirCell;
  w.lastWindCell = lastWindCell;
  w.lastMachCell = lastMachCell;
  w.lastDragRow = lastDragRow;
  w.windKnotCount = windKnotCount;
  w.aeroStride = aeroStride;
  w.partCount = partCount;
  w.stretchCount = stretchCount;
}

export function turn(settled: boolean, pitches: boolean, handsOver: boolean): void {
  w.settled = settled;
  w.pitches = pitches;
  w.handsOver = handsOver;
}

export function fly(impulse: f64, time: f64, tolerance: f64): boolean {
  fastFlight(w, impulse, time, tolerance, out);
  return out.flew;
}

function addressOf(row: Doubles): usize {
  return changetype<usize>(row);
}

export function slotsAt(): usize {
  return addressOf(w.slots);
}
export function recordsAt(): usize {
  return addressOf(w.records);
}
export function airAt(): usize {
  return addressOf(w.air);
}
export function windAt(): usize {
  return addressOf(w.wind);
}
export function coastingAt(): usize {
  return addressOf(w.coasting);
}
export function thrustingAt(): usize {
  return addressOf(w.thrusting);
}
export function windKnotsAt(): usize {
  return addressOf(w.windKnots);
}
export function aeroAt(): usize {
  return addressOf(w.aero);
}
export function stretchesAt(): usize {
  return addressOf(w.stretches);
}

export function liftOff(): f64 {
  return out.liftOff;
}
export function burnout(): f64 {
  return out.burnout;
}
export function guideExitSpeed(): f64 {
  return out.guideExitSpeed;
}
export function apogeeTime(): f64 {
  return out.apogeeTime;
}
export function apogeeHeight(): f64 {
  return out.apogeeHeight;
}
export function landingTime(): f64 {
  return out.landingTime;
}
export function landingEast(): f64 {
  return out.landingEast;
}
export function landingNorth(): f64 {
  return out.landingNorth;
}
export function recordCount(): i32 {
  return out.recordCount;
}
export function calls(): i32 {
  return out.calls;
}
