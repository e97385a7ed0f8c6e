import { dormandPrince } from "../math/dormand-prince.js";
import { rootBetween } from "../math/root.js";

const [[a21], [a31, a32], [a41, a42, a43], [a51, a52, a53, a54], [a61, a62, a63, a64, a65], [b1, , b3, b4, b5, b6]] =
  dormandPrince.matrix;
const [e1, , e3, e4, e5, e6, e7] = dormandPrince.error;
const [d1, , d3, d4, d5, d6, d7] = dormandPrince.dense;
const [, c2, c3, c4, c5] = dormandPrince.nodes;

type Stages = [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];

/** Right-hand side: writes dy/dt at (t, y) into `rates`. */
export type Derivatives = (t: number, y: Float64Array, rates: Float64Array) => void;

/** A moment to find: a sign change of `value`. */
export interface EventSpec {
  readonly name: string;
  readonly value: (t: number, y: Float64Array) => number;
  /** 1: rising through zero, -1: falling through zero. */
  readonly direction: 1 | -1;
  /** End the integration there. */
  readonly stops: boolean;
}

export interface EventHit {
  readonly name: string;
  readonly time: number;
  readonly state: Float64Array;
}

/** One accepted step with its continuous extension. A class: literals of it, one of which begins at a whole 0, had its maker compiled anew. */
export class DenseStep {
  readonly from: number;
  readonly to: number;
  /** Five coefficients a component, component by component. */
  readonly coefficients: Float64Array;

  constructor(from: number, to: number, coefficients: Float64Array) {
    this.from = from;
    this.to = to;
    this.coefficients = coefficients;
  }
}

export type EndReason = "reached-end" | "event" | "step-too-small" | "not-finite" | "too-many-steps";

export interface Integration {
  readonly ended: EndReason;
  readonly time: number;
  readonly state: Float64Array;
  readonly steps: readonly DenseStep[];
  readonly hits: readonly EventHit[];
  /** Calls of the right-hand side. */
  readonly calls: number;
}

export interface IntegrateOptions {
  /** Relative tolerance; the absolute one is this times `scales`. */
  readonly tolerance: number;
  /** Magnitude of each component below which only absolute error counts, length of the state. */
  readonly scales: readonly number[];
  readonly events?: readonly EventSpec[];
  readonly firstStep?: number;
  readonly fixedStep?: number;
}

/** Evaluates a dense step at time `t` into `out`. */
export function evaluateDense(step: DenseStep, t: number, out: Float64Array): Float64Array {
  const s = (t - step.from) / (step.to - step.from);
  const r = 1 - s;
  const c = step.coefficients;
  for (let i = 0, k = 0; i < out.length; i++, k += 5)
    out[i] =
      (c[k] as number) +
      s * ((c[k + 1] as number) + r * ((c[k + 2] as number) + s * ((c[k + 3] as number) + r * (c[k + 4] as number))));
  return out;
}

/** Rate of change of one component at a share 0…1 of a dense step. */
export function denseSlope(step: DenseStep, component: number, share: number): number {
  const c = step.coefficients;
  const k = 5 * component;
  const r = 1 - share;
  // derivative of c0 + s (c1 + r (c2 + s (c3 + r c4))), r = 1 − s
  const inner = (c[k + 3] as number) + r * (c[k + 4] as number);
  const middle = (c[k + 2] as number) + share * inner;
  const middleSlope = inner - share * (c[k + 4] as number);
  const outerSlope = r * middleSlope - middle;
  return ((c[k + 1] as number) + r * middle + share * outerSlope) / (step.to - step.from);
}

function crosses({ direction }: EventSpec, before: number, after: number): boolean {
  return direction * before < 0 && direction * after >= 0;
}

/** Events that a step crosses, the first one first. */
function crossedIn(
  step: DenseStep,
  events: readonly EventSpec[],
  before: ArrayLike<number>,
  after: ArrayLike<number>,
  probe: Float64Array,
): { readonly event: EventSpec; readonly time: number }[] {
  const { from, to } = step;
  return events
    .filter((event, i) => crosses(event, before[i]!, after[i]!))
    .map((event) => {
      const at = (time: number): number => event.value(time, evaluateDense(step, time, probe));
      return { event, time: rootBetween(at, from, to, 1e-13 * Math.max(1, from)) };
    })
    .sort((a, b) => a.time - b.time);
}

const mostSteps = 200_000;

const stepsInBlock = 64;

/**
 * One step after another, with the memory that they share.
 *
 * A class, and not functions made anew for each integration: what was compiled for those is thrown away with them, and
 * compiled again for the next flight (docs/decisions/0017-code-that-stays.md).
 */
class Stepper {
  readonly y: Float64Array;
  /** Where the last step that was tried ends. */
  readonly next: Float64Array;
  /** Calls of the right-hand side. */
  calls = 1;
  private readonly derivatives: Derivatives;
  private readonly tolerance: number;
  private readonly scales: Float64Array;
  private readonly stage: Float64Array;
  private readonly k: Stages;
  private block = new Float64Array();
  private taken = 0;

  constructor(derivatives: Derivatives, start: Float64Array, from: number, { tolerance, scales }: IntegrateOptions) {
    const n = start.length;
    this.derivatives = derivatives;
    this.tolerance = tolerance;
    this.scales = Float64Array.from({ length: n }, (_, c) => scales[c] as number);
    this.k = Array.from({ length: 7 }, () => new Float64Array(n)) as Stages;
    this.stage = new Float64Array(n);
    this.next = new Float64Array(n);
    this.y = Float64Array.from(start);
    derivatives(from, this.y, this.k[0]);
  }

  /** Tries a step from where it stands at a time. Returns its error as a share of what is allowed. */
  tryStep(t: number, h: number): number {
    const { y, next, stage, derivatives, tolerance, scales } = this;
    const [k0, k1, k2, k3, k4, k5, k6] = this.k;
    const n = y.length;
    for (let c = 0; c < n; c++) stage[c] = y[c]! + h * (a21 * k0[c]!);
    derivatives(t + c2 * h, stage, k1);
    for (let c = 0; c < n; c++) stage[c] = y[c]! + h * (a31 * k0[c]! + a32 * k1[c]!);
    derivatives(t + c3 * h, stage, k2);
    for (let c = 0; c < n; c++) stage[c] = y[c]! + h * (a41 * k0[c]! + a42 * k1[c]! + a43 * k2[c]!);
    derivatives(t + c4 * h, stage, k3);
    for (let c = 0; c < n; c++) stage[c] = y[c]! + h * (a51 * k0[c]! + a52 * k1[c]! + a53 * k2[c]! + a54 * k3[c]!);
    derivatives(t + c5 * h, stage, k4);
    for (let c = 0; c < n; c++)
      stage[c] = y[c]! + h * (a61 * k0[c]! + a62 * k1[c]! + a63 * k2[c]! + a64 * k3[c]! + a65 * k4[c]!);
    derivatives(t + h, stage, k5);
    for (let c = 0; c < n; c++)
      next[c] = y[c]! + h * (b1 * k0[c]! + b3 * k2[c]! + b4 * k3[c]! + b5 * k4[c]! + b6 * k5[c]!);
    derivatives(t + h, next, k6);
    this.calls += 6;
    let squares = 0;
    for (let c = 0; c < n; c++) {
      const error = e1 * k0[c]! + e3 * k2[c]! + e4 * k3[c]! + e5 * k4[c]! + e6 * k5[c]! + e7 * k6[c]!;
      const part = (h * error) / (tolerance * Math.max(scales[c]!, Math.abs(y[c]!), Math.abs(next[c]!)));
      squares += part * part;
    }
    return Math.sqrt(squares / n);
  }

  /** The continuous extension of the step that was tried last. */
  denseStep(t: number, h: number): DenseStep {
    const { y, next } = this;
    const [k0, , k2, k3, k4, k5, k6] = this.k;
    const coefficients = this.coefficientsOfOne();
    for (let c = 0; c < y.length; c++) {
      const difference = next[c]! - y[c]!;
      const bend = h * k0[c]! - difference;
      const extra = d1 * k0[c]! + d3 * k2[c]! + d4 * k3[c]! + d5 * k4[c]! + d6 * k5[c]! + d7 * k6[c]!;
      coefficients[5 * c] = y[c]!;
      coefficients[5 * c + 1] = difference;
      coefficients[5 * c + 2] = bend;
      coefficients[5 * c + 3] = difference - h * k6[c]! - bend;
      coefficients[5 * c + 4] = h * extra;
    }
    return new DenseStep(t, t + h, coefficients);
  }

  /** Goes to the end of the step that was tried last. */
  advance(): void {
    this.y.set(this.next);
    this.k[0].set(this.k[6]);
  }

  /** Coefficients of many steps share their memory: a block of its own for each takes longer than the step. */
  private coefficientsOfOne(): Float64Array {
    const size = 5 * this.y.length;
    if (this.taken === this.block.length) {
      this.block = new Float64Array(stepsInBlock * size);
      this.taken = 0;
    }
    this.taken += size;
    return this.block.subarray(this.taken - size, this.taken);
  }
}

/**
 * Integrates dy/dt = f(t, y) with an embedded Runge-Kutta pair of order 5(4), step control and dense output.
 *
 * Knows nothing of rockets. Events are found on the dense output; a stopping event is refined with real steps, so that the
 * state returned has the integrator's own accuracy. With `fixedStep` it takes equal steps and no error control (order tests).
 *
 * @param derivatives right-hand side
 * @param start initial state, left unchanged
 * @param from first time
 * @param to last time, > from
 * @returns the steps, the events hit and why it ended; never throws
 * @source Hairer, Nørsett, Wanner, Solving Ordinary Differential Equations I (1993), II.4 (step control) and II.6 (dense output)
 * @example
 * const fall = (t, y, rates) => { rates[0] = y[1]; rates[1] = -9.80665; };
 * integrate(fall, Float64Array.of(10, 0), 0, 5, { tolerance: 1e-9, scales: [1, 1],
 *   events: [{ name: "ground", value: (t, y) => y[0], direction: -1, stops: true }] }).time; // 1.4281
 */
export function integrate(
  derivatives: Derivatives,
  start: Float64Array,
  from: number,
  to: number,
  options: IntegrateOptions,
): Integration {
  const { events = [], fixedStep } = options;
  const stepper = new Stepper(derivatives, start, from, options);
  const { y, next } = stepper;
  const steps: DenseStep[] = [];
  const hits: EventHit[] = [];
  const probe = new Float64Array(start.length);
  let t = from;
  const done = (ended: EndReason, time: number): Integration => {
    const { calls } = stepper;
    return { ended, time, state: y, steps, hits, calls };
  };

  let h = fixedStep ?? options.firstStep ?? Math.min((to - from) / 8, 0.01);
  let lastError = 1e-4;
  const before = events.map((e) => e.value(from, y));
  const after = new Float64Array(events.length);
  for (let count = 0; t < to; count++) {
    if (count > mostSteps) return done("too-many-steps", t);
    const last = t + h * 1.000001 >= to;
    const length = last ? to - t : h;
    const error = stepper.tryStep(t, length);
    if (!Number.isFinite(error)) {
      if (length < 1e-12 * Math.max(1, Math.abs(t))) return done("not-finite", t);
      h = length / 8;
      continue;
    }
    if (fixedStep === undefined && error > 1) {
      h = length * Math.max(0.2, 0.9 * error ** -0.2);
      if (h < 1e-14 * Math.max(1, Math.abs(t))) return done("step-too-small", t);
      continue;
    }
    const dense = stepper.denseStep(t, length);
    let hit = false;
    for (let i = 0; i < events.length; i++) {
      const event = events[i]!;
      after[i] = event.value(t + length, next);
      if (crosses(event, before[i]!, after[i]!)) hit = true;
    }
    const crossed = hit ? crossedIn(dense, events, before, after, probe) : [];
    const stop = crossed.find(({ event }) => event.stops);
    for (const { event, time } of crossed)
      if (!event.stops && (stop === undefined || time < stop.time))
        hits.push({ name: event.name, time, state: Float64Array.from(evaluateDense(dense, time, probe)) });
    if (stop !== undefined) {
      let span = stop.time - t;
      if (span > 0) {
        const begin = t;
        const value = (x: number): number => {
          stepper.tryStep(begin, x);
          return stop.event.value(begin + x, next);
        };
        const nudge = Math.min(1e-6, 0.01 * span);
        for (let i = 0; i < 3; i++) {
          const here = value(span);
          const slope = (here - value(span - nudge)) / nudge;
          if (slope === 0 || !Number.isFinite(slope)) break;
          const better = span - here / slope;
          if (!(better > 0 && better <= length)) break;
          span = better;
        }
        stepper.tryStep(t, span);
        steps.push(stepper.denseStep(t, span));
        stepper.advance();
        t += span;
      }
      hits.push({ name: stop.event.name, time: t, state: y });
      return done("event", t);
    }
    steps.push(dense);
    stepper.advance();
    t = last ? to : t + length;
    for (let i = 0; i < after.length; i++) before[i] = after[i]!;
    if (fixedStep === undefined) {
      const grow = 0.9 * Math.max(error, 1e-10) ** -0.17 * lastError ** 0.04;
      h = length * Math.min(5, Math.max(0.2, grow));
      lastError = Math.max(error, 1e-4);
    }
  }
  return done("reached-end", t);
}
