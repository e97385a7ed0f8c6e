import { dormandPrince } from "../../math/dormand-prince.js";
import { alignedRates, guideRates, pitchingRates } from "./rates.js";
import { type FastWork, recordSize, rowSize } from "./work.js";

export const GUIDE = 0;
export const PITCHING = 1;
export const ALIGNED = 2;
export type FastPhase = typeof GUIDE | typeof PITCHING | typeof ALIGNED;

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

const sizes = [2, 10, 4] as const;

/** Magnitude below which only absolute error counts: way, speed; height, velocity, axis, its rate. */
const scaleOf = [
  Float64Array.of(1, 10),
  Float64Array.of(100, 10, 10, 10, 1, 1, 1, 1, 1, 1),
  Float64Array.of(100, 10, 10, 10),
] as const;

export function rates(w: FastWork, phase: FastPhase, t: number, y: Float64Array, row: number): void {
  if (phase === ALIGNED) alignedRates(w, t, y, w.k, row);
  else if (phase === PITCHING) pitchingRates(w, t, y, w.k, row);
  else guideRates(w, t, y, w.k, row);
}

/**
 * Tries one step from `y` (rates in row 0) to `next` (rates in row 6).
 *
 * @returns the error's root mean square in units of the tolerance
 */
export function tryStep(w: FastWork, phase: FastPhase, t: number, h: number, tolerance: number): number {
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
