import { fastFlight } from "../src/flight/fast/fast-flight.js";
import { FastOutcome } from "../src/flight/fast/outcome.js";
import { FastWork, row } from "../src/flight/fast/work.js";
import { Doubles } from "../src/math/doubles.js";
import { judgeFlight } from "../src/spread/judge.js";
import { JudgeWork } from "../src/spread/judge-work.js";
import { judgedSize, sampleSize } from "../src/spread/outcomes.js";
import { asked } from "../src/spread/scatter.js";
import { Block } from "./block.js";

const out = new FastOutcome();
const w = new FastWork();
const j = new JudgeWork();

/** What one flight came to, as the engine reads it. */
const told = row(10);
let judged = row(0);
let samples = row(0);

const tables = new Block();
const openings = new Block();

/** Makes room for the tables of another plan. */
export function layTables(
  air: i32,
  wind: i32,
  coasting: i32,
  thrusting: i32,
  windKnots: i32,
  aero: i32,
  stretches: i32,
): void {
  tables.begin(air + wind + coasting + thrusting + windKnots + aero + stretches);
  w.air = tables.take(air);
  w.wind = tables.take(wind);
  w.coasting = tables.take(coasting);
  w.thrusting = tables.take(thrusting);
  w.windKnots = tables.take(windKnots);
  w.aero = tables.take(aero);
  w.stretches = tables.take(stretches);
}

export function countTables(
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

export function turnBy(settled: boolean, pitches: boolean, handsOver: boolean): void {
  w.settled = settled;
  w.pitches = pitches;
  w.handsOver = handsOver;
}

/** Makes room for other settings. */
export function layOpenings(settingCount: i32, sampleCount: i32): void {
  const judgedCount = settingCount * judgedSize;
  const sampledCount = settingCount * sampleCount * sampleSize;
  openings.begin(2 * settingCount + judgedCount + sampledCount);
  j.settingCount = settingCount;
  j.samples = sampleCount;
  j.delays = openings.take(settingCount);
  j.deviations = openings.take(settingCount);
  judged = openings.take(judgedCount);
  samples = openings.take(sampledCount);
}

export function judgeBy(
  fromBurnout: boolean,
  lineStretch: f64,
  speedLimit: f64,
  strengthSpeed: f64,
  floor: f64,
  fillDistance: f64,
  hasElectronics: boolean,
  electronicsDelay: f64,
): void {
  j.fromBurnout = fromBurnout;
  j.lineStretch = lineStretch;
  j.speedLimit = speedLimit;
  j.strengthSpeed = strengthSpeed;
  j.floor = floor;
  j.fillDistance = fillDistance;
  j.hasElectronics = hasElectronics;
  j.electronicsDelay = electronicsDelay;
}

/** Flies one draw; returns whether it flew. */
export function fly(impulse: f64, time: f64, tolerance: f64): boolean {
  fastFlight(w, impulse, time, tolerance, out);
  told[0] = out.liftOff;
  told[1] = out.burnout;
  told[2] = out.guideExitSpeed;
  told[3] = out.apogeeTime;
  told[4] = out.apogeeHeight;
  told[5] = out.landingTime;
  told[6] = out.landingEast;
  told[7] = out.landingNorth;
  told[8] = out.recordCount;
  told[9] = out.calls;
  return out.flew;
}

/** Judges the flight that was flown last. */
export function judge(nominalBurnout: f64, strata: f64): void {
  judgeFlight(j, w, out, nominalBurnout, strata, judged, 0, samples, 0);
}

function addressOf(doubles: Doubles): usize {
  return changetype<usize>(doubles);
}

export function toldAt(): usize {
  return addressOf(told);
}

export function slotsAt(): usize {
  return addressOf(w.slots);
}

export function recordsAt(): usize {
  return addressOf(w.records);
}

/** Where what is asked about the scatter of delays stands. */
export function askedAt(): usize {
  return addressOf(asked);
}

/** Where the tables begin, one behind the other as they were laid. */
export function tablesAt(): usize {
  return addressOf(w.air);
}

/** Where delays begin; deviations, what was judged and samples follow. */
export function openingsAt(): usize {
  return addressOf(j.delays);
}
