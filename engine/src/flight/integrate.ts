import { dormandPrince } from "../math/dormand-prince.js";
import { rootBetween } from "../math/root.js";

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

/** One accepted step with its continuous extension. */
export interface DenseStep {
  readonly from: number;
  readonly to: number;
  /** Five coefficients a component, component by component. */
  readonly coefficients: Float64Array;
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

const mostSteps = 200_000;

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
  const n = start.length;
  const { tolerance, scales, events = [], fixedStep } = options;
  const k = dormandPrince.nodes.map(() => new Float64Array(n));
  const [k0, k6] = [k[0] as Float64Array, k[6] as Float64Array];
  const stage = new Float64Array(n);
  const next = new Float64Array(n);
  let y = Float64Array.from(start);
  let t = from;
  let calls = 1;
  const steps: DenseStep[] = [];
  const hits: EventHit[] = [];
  derivatives(t, y, k0);

  const tryStep = (h: number): number => {
    for (let i = 1; i < 7; i++) {
      const row = dormandPrince.matrix[i - 1] as readonly number[];
      const target = i === 6 ? next : stage;
      for (let c = 0; c < n; c++) {
        let sum = 0;
        for (let j = 0; j < row.length; j++) sum += (row[j] as number) * (k[j] as Float64Array)[c]!;
        target[c] = y[c]! + h * sum;
      }
      derivatives(t + (dormandPrince.nodes[i] as number) * h, target, k[i] as Float64Array);
      calls += 1;
    }
    let squares = 0;
    for (let c = 0; c < n; c++) {
      let error = 0;
      for (let j = 0; j < 7; j++) error += (dormandPrince.error[j] as number) * (k[j] as Float64Array)[c]!;
      const scale = tolerance * Math.max(scales[c] as number, Math.abs(y[c]!), Math.abs(next[c]!));
      squares += ((h * error) / scale) ** 2;
    }
    return Math.sqrt(squares / n);
  };

  const denseStep = (h: number): DenseStep => {
    const coefficients = new Float64Array(5 * n);
    for (let c = 0; c < n; c++) {
      const difference = next[c]! - y[c]!;
      const bend = h * k0[c]! - difference;
      let extra = 0;
      for (let j = 0; j < 7; j++) extra += (dormandPrince.dense[j] as number) * (k[j] as Float64Array)[c]!;
      coefficients.set([y[c]!, difference, bend, difference - h * k6[c]! - bend, h * extra], 5 * c);
    }
    return { from: t, to: t + h, coefficients };
  };

  const done = (ended: EndReason): Integration => ({ ended, time: t, state: y, steps, hits, calls });

  let h = fixedStep ?? options.firstStep ?? Math.min((to - from) / 8, 0.01);
  let lastError = 1e-4;
  let before = events.map((e) => e.value(t, y));
  for (let count = 0; t < to; count++) {
    if (count > mostSteps) return done("too-many-steps");
    const last = t + h * 1.000001 >= to;
    const length = last ? to - t : h;
    const error = tryStep(length);
    if (!Number.isFinite(error)) {
      if (length < 1e-12 * Math.max(1, Math.abs(t))) return done("not-finite");
      h = length / 8;
      continue;
    }
    if (fixedStep === undefined && error > 1) {
      h = length * Math.max(0.2, 0.9 * error ** -0.2);
      if (h < 1e-14 * Math.max(1, Math.abs(t))) return done("step-too-small");
      continue;
    }
    let dense = denseStep(length);
    const after = events.map((e) => e.value(t + length, next));
    const probe = new Float64Array(n);
    const at = (e: EventSpec) => (time: number) => e.value(time, evaluateDense(dense, time, probe));
    const crossed = events
      .map((event, i) => ({
        event,
        crosses: event.direction * (before[i] as number) < 0 && event.direction * (after[i] as number) >= 0,
      }))
      .filter((e) => e.crosses)
      .map(({ event }) => ({ event, time: rootBetween(at(event), t, t + length, 1e-13 * Math.max(1, t)) }))
      .sort((a, b) => a.time - b.time);
    const stop = crossed.find(({ event }) => event.stops);
    for (const { event, time } of crossed)
      if (!event.stops && (stop === undefined || time < stop.time))
        hits.push({ name: event.name, time, state: Float64Array.from(evaluateDense(dense, time, probe)) });
    if (stop !== undefined) {
      let span = stop.time - t;
      if (span > 0) {
        const value = (x: number): number => {
          tryStep(x);
          return stop.event.value(t + x, next);
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
        tryStep(span);
        dense = denseStep(span);
        steps.push(dense);
        t += span;
        y = Float64Array.from(next);
      }
      hits.push({ name: stop.event.name, time: t, state: y });
      return done("event");
    }
    steps.push(dense);
    t = last ? to : t + length;
    y = Float64Array.from(next);
    k0.set(k6);
    before = after;
    if (fixedStep === undefined) {
      const grow = 0.9 * Math.max(error, 1e-10) ** -0.17 * lastError ** 0.04;
      h = length * Math.min(5, Math.max(0.2, grow));
      lastError = Math.max(error, 1e-4);
    }
  }
  return done("reached-end");
}
