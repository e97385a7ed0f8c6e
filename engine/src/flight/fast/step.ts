import * as dp from "../../math/dormand-prince-numbers.js";
import type { Doubles, f64, i32 } from "../../math/doubles.js";
import { alignedRates, coastRates, guideRates, pitchingRates } from "./rates.js";
import { recordSize, rowSize } from "./sizes.js";
import type { FastWork } from "./work.js";

export type FastPhase = i32;
export const GUIDE: FastPhase = 0;
export const PITCHING: FastPhase = 1;
export const ALIGNED: FastPhase = 2;
/** Aligned, after the thrust curve's last point. */
export const COASTING: FastPhase = 3;

const R1 = rowSize;
const R2 = 2 * rowSize;
const R3 = 3 * rowSize;
const R4 = 4 * rowSize;
const R5 = 5 * rowSize;
const R6 = 6 * rowSize;

/** Numbers of a state. */
function sizeOf(phase: FastPhase): i32 {
  return phase === PITCHING ? 10 : phase === GUIDE ? 2 : 4;
}

/** Magnitude below which only absolute error counts: way, speed; height, velocity, axis, its rate. */
function scaleOf(phase: FastPhase, i: i32): f64 {
  if (phase === GUIDE) return i === 0 ? 1 : 10;
  return i === 0 ? 100 : i < 4 ? 10 : 1;
}

export function rates(w: FastWork, phase: FastPhase, t: f64, y: Doubles, row: i32): void {
  if (phase === COASTING) coastRates(w, y, w.k, row);
  else if (phase === ALIGNED) alignedRates(w, t, y, w.k, row);
  else if (phase === PITCHING) pitchingRates(w, t, y, w.k, row);
  else guideRates(w, t, y, w.k, row);
}

/**
 * Tries one step from `y` (rates in row 0) to `next` (rates in row 6).
 *
 * @returns the error's root mean square in units of the tolerance
 */
export function tryStep(w: FastWork, phase: FastPhase, t: f64, h: f64, tolerance: f64): f64 {
  return phase === GUIDE || phase === PITCHING ? tryAny(w, phase, t, h, tolerance) : tryFour(w, phase, t, h, tolerance);
}

function tryAny(w: FastWork, phase: FastPhase, t: f64, h: f64, tolerance: f64): f64 {
  const k = w.k;
  const y = w.y;
  const stage = w.stage;
  const next = w.next;
  const n = sizeOf(phase);
  for (let i = 0; i < n; i++) stage[i] = y[i]! + h * dp.a21 * k[i]!;
  rates(w, phase, t + dp.c2 * h, stage, R1);
  for (let i = 0; i < n; i++) stage[i] = y[i]! + h * (dp.a31 * k[i]! + dp.a32 * k[R1 + i]!);
  rates(w, phase, t + dp.c3 * h, stage, R2);
  for (let i = 0; i < n; i++) stage[i] = y[i]! + h * (dp.a41 * k[i]! + dp.a42 * k[R1 + i]! + dp.a43 * k[R2 + i]!);
  rates(w, phase, t + dp.c4 * h, stage, R3);
  for (let i = 0; i < n; i++)
    stage[i] = y[i]! + h * (dp.a51 * k[i]! + dp.a52 * k[R1 + i]! + dp.a53 * k[R2 + i]! + dp.a54 * k[R3 + i]!);
  rates(w, phase, t + dp.c5 * h, stage, R4);
  for (let i = 0; i < n; i++)
    stage[i] =
      y[i]! +
      h * (dp.a61 * k[i]! + dp.a62 * k[R1 + i]! + dp.a63 * k[R2 + i]! + dp.a64 * k[R3 + i]! + dp.a65 * k[R4 + i]!);
  rates(w, phase, t + h, stage, R5);
  for (let i = 0; i < n; i++)
    next[i] =
      y[i]! + h * (dp.b1 * k[i]! + dp.b3 * k[R2 + i]! + dp.b4 * k[R3 + i]! + dp.b5 * k[R4 + i]! + dp.b6 * k[R5 + i]!);
  rates(w, phase, t + h, next, R6);
  let squares: f64 = 0;
  for (let i = 0; i < n; i++) {
    const error =
      dp.e1 * k[i]! +
      dp.e3 * k[R2 + i]! +
      dp.e4 * k[R3 + i]! +
      dp.e5 * k[R4 + i]! +
      dp.e6 * k[R5 + i]! +
      dp.e7 * k[R6 + i]!;
    let scale = scaleOf(phase, i);
    const size = Math.abs(next[i]!);
    if (size > scale) scale = size;
    const relative = error / scale;
    squares += relative * relative;
  }
  return (h * Math.sqrt(squares / n)) / tolerance;
}

/** The same for four numbers, written out: the loops cost more than the sums. */
function tryFour(w: FastWork, phase: FastPhase, t: f64, h: f64, tolerance: f64): f64 {
  const k = w.k;
  const y = w.y;
  const stage = w.stage;
  const next = w.next;
  const y0 = y[0]!;
  const y1 = y[1]!;
  const y2 = y[2]!;
  const y3 = y[3]!;
  const p0 = k[0]!;
  const p1 = k[1]!;
  const p2 = k[2]!;
  const p3 = k[3]!;
  stage[0] = y0 + h * dp.a21 * p0;
  stage[1] = y1 + h * dp.a21 * p1;
  stage[2] = y2 + h * dp.a21 * p2;
  stage[3] = y3 + h * dp.a21 * p3;
  rates(w, phase, t + dp.c2 * h, stage, R1);
  stage[0] = y0 + h * (dp.a31 * p0 + dp.a32 * k[R1]!);
  stage[1] = y1 + h * (dp.a31 * p1 + dp.a32 * k[R1 + 1]!);
  stage[2] = y2 + h * (dp.a31 * p2 + dp.a32 * k[R1 + 2]!);
  stage[3] = y3 + h * (dp.a31 * p3 + dp.a32 * k[R1 + 3]!);
  rates(w, phase, t + dp.c3 * h, stage, R2);
  const q0 = k[R2]!;
  const q1 = k[R2 + 1]!;
  const q2 = k[R2 + 2]!;
  const q3 = k[R2 + 3]!;
  stage[0] = y0 + h * (dp.a41 * p0 + dp.a42 * k[R1]! + dp.a43 * q0);
  stage[1] = y1 + h * (dp.a41 * p1 + dp.a42 * k[R1 + 1]! + dp.a43 * q1);
  stage[2] = y2 + h * (dp.a41 * p2 + dp.a42 * k[R1 + 2]! + dp.a43 * q2);
  stage[3] = y3 + h * (dp.a41 * p3 + dp.a42 * k[R1 + 3]! + dp.a43 * q3);
  rates(w, phase, t + dp.c4 * h, stage, R3);
  const r0 = k[R3]!;
  const r1 = k[R3 + 1]!;
  const r2 = k[R3 + 2]!;
  const r3 = k[R3 + 3]!;
  stage[0] = y0 + h * (dp.a51 * p0 + dp.a52 * k[R1]! + dp.a53 * q0 + dp.a54 * r0);
  stage[1] = y1 + h * (dp.a51 * p1 + dp.a52 * k[R1 + 1]! + dp.a53 * q1 + dp.a54 * r1);
  stage[2] = y2 + h * (dp.a51 * p2 + dp.a52 * k[R1 + 2]! + dp.a53 * q2 + dp.a54 * r2);
  stage[3] = y3 + h * (dp.a51 * p3 + dp.a52 * k[R1 + 3]! + dp.a53 * q3 + dp.a54 * r3);
  rates(w, phase, t + dp.c5 * h, stage, R4);
  const s0 = k[R4]!;
  const s1 = k[R4 + 1]!;
  const s2 = k[R4 + 2]!;
  const s3 = k[R4 + 3]!;
  stage[0] = y0 + h * (dp.a61 * p0 + dp.a62 * k[R1]! + dp.a63 * q0 + dp.a64 * r0 + dp.a65 * s0);
  stage[1] = y1 + h * (dp.a61 * p1 + dp.a62 * k[R1 + 1]! + dp.a63 * q1 + dp.a64 * r1 + dp.a65 * s1);
  stage[2] = y2 + h * (dp.a61 * p2 + dp.a62 * k[R1 + 2]! + dp.a63 * q2 + dp.a64 * r2 + dp.a65 * s2);
  stage[3] = y3 + h * (dp.a61 * p3 + dp.a62 * k[R1 + 3]! + dp.a63 * q3 + dp.a64 * r3 + dp.a65 * s3);
  rates(w, phase, t + h, stage, R5);
  const n0 = y0 + h * (dp.b1 * p0 + dp.b3 * q0 + dp.b4 * r0 + dp.b5 * s0 + dp.b6 * k[R5]!);
  const n1 = y1 + h * (dp.b1 * p1 + dp.b3 * q1 + dp.b4 * r1 + dp.b5 * s1 + dp.b6 * k[R5 + 1]!);
  const n2 = y2 + h * (dp.b1 * p2 + dp.b3 * q2 + dp.b4 * r2 + dp.b5 * s2 + dp.b6 * k[R5 + 2]!);
  const n3 = y3 + h * (dp.b1 * p3 + dp.b3 * q3 + dp.b4 * r3 + dp.b5 * s3 + dp.b6 * k[R5 + 3]!);
  next[0] = n0;
  next[1] = n1;
  next[2] = n2;
  next[3] = n3;
  rates(w, phase, t + h, next, R6);
  const f0 =
    (dp.e1 * p0 + dp.e3 * q0 + dp.e4 * r0 + dp.e5 * s0 + dp.e6 * k[R5]! + dp.e7 * k[R6]!) / Math.max(100, Math.abs(n0));
  const f1 =
    (dp.e1 * p1 + dp.e3 * q1 + dp.e4 * r1 + dp.e5 * s1 + dp.e6 * k[R5 + 1]! + dp.e7 * k[R6 + 1]!) /
    Math.max(10, Math.abs(n1));
  const f2 =
    (dp.e1 * p2 + dp.e3 * q2 + dp.e4 * r2 + dp.e5 * s2 + dp.e6 * k[R5 + 2]! + dp.e7 * k[R6 + 2]!) /
    Math.max(10, Math.abs(n2));
  const f3 =
    (dp.e1 * p3 + dp.e3 * q3 + dp.e4 * r3 + dp.e5 * s3 + dp.e6 * k[R5 + 3]! + dp.e7 * k[R6 + 3]!) /
    Math.max(10, Math.abs(n3));
  return (h * 0.5 * Math.sqrt(f0 * f0 + f1 * f1 + f2 * f2 + f3 * f3)) / tolerance;
}

/** Carries the place over ground along an accepted step: the integral of the cubic through both ends' velocities and rates. */
export function carryPlace(w: FastWork, h: f64): void {
  const k = w.k;
  const y = w.y;
  const next = w.next;
  const place = w.place;
  for (let i = 0; i < 2; i++) {
    const v = i + 1;
    place[i]! += 0.5 * h * (y[v]! + next[v]!) + ((h * h) / 12) * (k[v]! - k[R6 + v]!);
  }
}

/**
 * Writes an accepted step's continuous extension into the records: start, length, place at its start, then five
 * coefficients each for height and the three velocities.
 */
export function record(w: FastWork, index: i32, t: f64, h: f64): void {
  const k = w.k;
  const y = w.y;
  const next = w.next;
  const records = w.records;
  const place = w.place;
  let o = index * recordSize;
  records[o] = t;
  records[o + 1] = h;
  records[o + 2] = place[0]!;
  records[o + 3] = place[1]!;
  o += 4;
  for (let i = 0; i < 4; i++) {
    const difference = next[i]! - y[i]!;
    const bend = h * k[i]! - difference;
    records[o] = y[i]!;
    records[o + 1] = difference;
    records[o + 2] = bend;
    records[o + 3] = difference - h * k[R6 + i]! - bend;
    records[o + 4] =
      h *
      (dp.d1 * k[i]! +
        dp.d3 * k[R2 + i]! +
        dp.d4 * k[R3 + i]! +
        dp.d5 * k[R4 + i]! +
        dp.d6 * k[R5 + i]! +
        dp.d7 * k[R6 + i]!);
    o += 5;
  }
}

/** Makes the step just tried the new start: state and first rates. */
export function accept(w: FastWork, phase: FastPhase): void {
  const k = w.k;
  const y = w.y;
  const next = w.next;
  const n = sizeOf(phase);
  for (let i = 0; i < n; i++) {
    y[i] = next[i]!;
    k[i] = k[R6 + i]!;
  }
}
