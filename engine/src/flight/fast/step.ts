import { dormandPrince } from "../../math/dormand-prince.js";
import { alignedRates, coastRates, guideRates, pitchingRates } from "./rates.js";
import { type FastWork, recordSize, rowSize } from "./work.js";

export const GUIDE = 0;
export const PITCHING = 1;
export const ALIGNED = 2;
/** Aligned, after the thrust curve's last point. */
export const COASTING = 3;
export type FastPhase = typeof GUIDE | typeof PITCHING | typeof ALIGNED | typeof COASTING;

const [[a21], [a31, a32], [a41, a42, a43], [a51, a52, a53, a54], [a61, a62, a63, a64, a65], [b1, , b3, b4, b5, b6]] =
  dormandPrince.matrix;
const [e1, , e3, e4, e5, e6, e7] = dormandPrince.error;
const [d1, , d3, d4, d5, d6, d7] = dormandPrince.dense;
const [, c2, c3, c4, c5] = dormandPrince.nodes;

const R1 = rowSize;
const R2 = 2 * rowSize;
const R3 = 3 * rowSize;
const R4 = 4 * rowSize;
const R5 = 5 * rowSize;
const R6 = 6 * rowSize;

const sizes = [2, 10, 4, 4] as const;

/** Magnitude below which only absolute error counts: way, speed; height, velocity, axis, its rate. */
const scaleOf = [Float64Array.of(1, 10), Float64Array.of(100, 10, 10, 10, 1, 1, 1, 1, 1, 1)] as const;

export function rates(w: FastWork, phase: FastPhase, t: number, y: Float64Array, row: number): void {
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
export function tryStep(w: FastWork, phase: FastPhase, t: number, h: number, tolerance: number): number {
  return phase === GUIDE || phase === PITCHING ? tryAny(w, phase, t, h, tolerance) : tryFour(w, phase, t, h, tolerance);
}

function tryAny(w: FastWork, phase: typeof GUIDE | typeof PITCHING, t: number, h: number, tolerance: number): number {
  const { k, y, stage, next } = w;
  const n = sizes[phase];
  for (let i = 0; i < n; i++) stage[i] = y[i]! + h * a21 * k[i]!;
  rates(w, phase, t + c2 * h, stage, R1);
  for (let i = 0; i < n; i++) stage[i] = y[i]! + h * (a31 * k[i]! + a32 * k[R1 + i]!);
  rates(w, phase, t + c3 * h, stage, R2);
  for (let i = 0; i < n; i++) stage[i] = y[i]! + h * (a41 * k[i]! + a42 * k[R1 + i]! + a43 * k[R2 + i]!);
  rates(w, phase, t + c4 * h, stage, R3);
  for (let i = 0; i < n; i++)
    stage[i] = y[i]! + h * (a51 * k[i]! + a52 * k[R1 + i]! + a53 * k[R2 + i]! + a54 * k[R3 + i]!);
  rates(w, phase, t + c5 * h, stage, R4);
  for (let i = 0; i < n; i++)
    stage[i] = y[i]! + h * (a61 * k[i]! + a62 * k[R1 + i]! + a63 * k[R2 + i]! + a64 * k[R3 + i]! + a65 * k[R4 + i]!);
  rates(w, phase, t + h, stage, R5);
  for (let i = 0; i < n; i++)
    next[i] = y[i]! + h * (b1 * k[i]! + b3 * k[R2 + i]! + b4 * k[R3 + i]! + b5 * k[R4 + i]! + b6 * k[R5 + i]!);
  rates(w, phase, t + h, next, R6);
  const scales = scaleOf[phase];
  let squares = 0;
  for (let i = 0; i < n; i++) {
    const error = e1 * k[i]! + e3 * k[R2 + i]! + e4 * k[R3 + i]! + e5 * k[R4 + i]! + e6 * k[R5 + i]! + e7 * k[R6 + i]!;
    let scale = scales[i]!;
    const size = Math.abs(next[i]!);
    if (size > scale) scale = size;
    const relative = error / scale;
    squares += relative * relative;
  }
  return (h * Math.sqrt(squares / n)) / tolerance;
}

/** The same for four numbers, written out: the loops cost more than the sums. */
function tryFour(w: FastWork, phase: FastPhase, t: number, h: number, tolerance: number): number {
  const { k, y, stage, next } = w;
  const y0 = y[0]!;
  const y1 = y[1]!;
  const y2 = y[2]!;
  const y3 = y[3]!;
  const p0 = k[0]!;
  const p1 = k[1]!;
  const p2 = k[2]!;
  const p3 = k[3]!;
  stage[0] = y0 + h * a21 * p0;
  stage[1] = y1 + h * a21 * p1;
  stage[2] = y2 + h * a21 * p2;
  stage[3] = y3 + h * a21 * p3;
  rates(w, phase, t + c2 * h, stage, R1);
  stage[0] = y0 + h * (a31 * p0 + a32 * k[R1]!);
  stage[1] = y1 + h * (a31 * p1 + a32 * k[R1 + 1]!);
  stage[2] = y2 + h * (a31 * p2 + a32 * k[R1 + 2]!);
  stage[3] = y3 + h * (a31 * p3 + a32 * k[R1 + 3]!);
  rates(w, phase, t + c3 * h, stage, R2);
  const q0 = k[R2]!;
  const q1 = k[R2 + 1]!;
  const q2 = k[R2 + 2]!;
  const q3 = k[R2 + 3]!;
  stage[0] = y0 + h * (a41 * p0 + a42 * k[R1]! + a43 * q0);
  stage[1] = y1 + h * (a41 * p1 + a42 * k[R1 + 1]! + a43 * q1);
  stage[2] = y2 + h * (a41 * p2 + a42 * k[R1 + 2]! + a43 * q2);
  stage[3] = y3 + h * (a41 * p3 + a42 * k[R1 + 3]! + a43 * q3);
  rates(w, phase, t + c4 * h, stage, R3);
  const r0 = k[R3]!;
  const r1 = k[R3 + 1]!;
  const r2 = k[R3 + 2]!;
  const r3 = k[R3 + 3]!;
  stage[0] = y0 + h * (a51 * p0 + a52 * k[R1]! + a53 * q0 + a54 * r0);
  stage[1] = y1 + h * (a51 * p1 + a52 * k[R1 + 1]! + a53 * q1 + a54 * r1);
  stage[2] = y2 + h * (a51 * p2 + a52 * k[R1 + 2]! + a53 * q2 + a54 * r2);
  stage[3] = y3 + h * (a51 * p3 + a52 * k[R1 + 3]! + a53 * q3 + a54 * r3);
  rates(w, phase, t + c5 * h, stage, R4);
  const s0 = k[R4]!;
  const s1 = k[R4 + 1]!;
  const s2 = k[R4 + 2]!;
  const s3 = k[R4 + 3]!;
  stage[0] = y0 + h * (a61 * p0 + a62 * k[R1]! + a63 * q0 + a64 * r0 + a65 * s0);
  stage[1] = y1 + h * (a61 * p1 + a62 * k[R1 + 1]! + a63 * q1 + a64 * r1 + a65 * s1);
  stage[2] = y2 + h * (a61 * p2 + a62 * k[R1 + 2]! + a63 * q2 + a64 * r2 + a65 * s2);
  stage[3] = y3 + h * (a61 * p3 + a62 * k[R1 + 3]! + a63 * q3 + a64 * r3 + a65 * s3);
  rates(w, phase, t + h, stage, R5);
  const n0 = y0 + h * (b1 * p0 + b3 * q0 + b4 * r0 + b5 * s0 + b6 * k[R5]!);
  const n1 = y1 + h * (b1 * p1 + b3 * q1 + b4 * r1 + b5 * s1 + b6 * k[R5 + 1]!);
  const n2 = y2 + h * (b1 * p2 + b3 * q2 + b4 * r2 + b5 * s2 + b6 * k[R5 + 2]!);
  const n3 = y3 + h * (b1 * p3 + b3 * q3 + b4 * r3 + b5 * s3 + b6 * k[R5 + 3]!);
  next[0] = n0;
  next[1] = n1;
  next[2] = n2;
  next[3] = n3;
  rates(w, phase, t + h, next, R6);
  const f0 = (e1 * p0 + e3 * q0 + e4 * r0 + e5 * s0 + e6 * k[R5]! + e7 * k[R6]!) / Math.max(100, Math.abs(n0));
  const f1 = (e1 * p1 + e3 * q1 + e4 * r1 + e5 * s1 + e6 * k[R5 + 1]! + e7 * k[R6 + 1]!) / Math.max(10, Math.abs(n1));
  const f2 = (e1 * p2 + e3 * q2 + e4 * r2 + e5 * s2 + e6 * k[R5 + 2]! + e7 * k[R6 + 2]!) / Math.max(10, Math.abs(n2));
  const f3 = (e1 * p3 + e3 * q3 + e4 * r3 + e5 * s3 + e6 * k[R5 + 3]! + e7 * k[R6 + 3]!) / Math.max(10, Math.abs(n3));
  return (h * 0.5 * Math.sqrt(f0 * f0 + f1 * f1 + f2 * f2 + f3 * f3)) / tolerance;
}

/** Carries the place over ground along an accepted step: the integral of the cubic through both ends' velocities and rates. */
export function carryPlace(w: FastWork, h: number): void {
  const { k, y, next, place } = w;
  for (let i = 0; i < 2; i++) {
    const v = i + 1;
    place[i]! += 0.5 * h * (y[v]! + next[v]!) + ((h * h) / 12) * (k[v]! - k[R6 + v]!);
  }
}

/**
 * Writes an accepted step's continuous extension into the records: start, length, place at its start, then five
 * coefficients each for height and the three velocities.
 */
export function record(w: FastWork, index: number, t: number, h: number): void {
  const { k, y, next, records, place } = w;
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
      h * (d1 * k[i]! + d3 * k[R2 + i]! + d4 * k[R3 + i]! + d5 * k[R4 + i]! + d6 * k[R5 + i]! + d7 * k[R6 + i]!);
    o += 5;
  }
}

/** Makes the step just tried the new start: state and first rates. */
export function accept(w: FastWork, phase: FastPhase): void {
  const { k, y, next } = w;
  const n = sizes[phase];
  for (let i = 0; i < n; i++) {
    y[i] = next[i]!;
    k[i] = k[R6 + i]!;
  }
}
