import { Solver } from "odex";
import { settledSwing } from "../src/flight/bounds.js";
import { pullAtRest } from "../src/flight/guide.js";
import { swingLeft } from "../src/flight/hand-over.js";
import type { FlightModel, Stretch } from "../src/flight/model.js";
import { ratesOf } from "../src/flight/peaks.js";
import { type FlownPhase, kinematicsOf } from "../src/flight/trajectory.js";
import { rootBetween } from "../src/math/root.js";

/** What a flight by the general-purpose library came to. */
export interface OdexFlight {
  readonly apogeeTime: number;
  readonly apogeeHeight: number;
  readonly landingTime: number;
  /** Right-hand sides called. */
  readonly calls: number;
}

/** Magnitudes below which only absolute error counts, as in `fly`. */
const scales: Readonly<Record<Exclude<FlownPhase, "pivot" | "rigid">, readonly number[]>> = {
  guide: [1, 10],
  pitching: [100, 100, 100, 10, 10, 10, 1, 1, 1, 1, 1, 1],
  aligned: [100, 100, 100, 10, 10, 10],
};

/** The moments at which a phase ends, each by a sign that falls. */
function endOf(model: FlightModel, phase: FlownPhase, pastApogee: boolean): (y: readonly number[]) => number {
  if (phase === "guide") return (y) => model.inputs.guide.travel - y[0]!;
  return pastApogee ? (y) => y[2]! : (y) => y[5]!;
}

/** How far the swing is above the bound of the hand-over. */
function swingAbove(model: FlightModel, stretch: Stretch, t: number, y: readonly number[]): number {
  return swingLeft(model, stretch, t, Float64Array.from(y)).amplitude - settledSwing;
}

function handedOver(model: FlightModel, stretch: Stretch, t: number, y: readonly number[]): number[] {
  const { impulse } = swingLeft(model, stretch, t, Float64Array.from(y));
  return [...y.slice(0, 3), y[3]! + impulse[0], y[4]! + impulse[1], y[5]! + impulse[2]];
}

/**
 * Flies the pitching body with its hand-over from ignition to the ground: the same right-hand sides as `fly`, integrated by
 * npm `odex`, events found on its dense output. Stretch by stretch, because the thrust curve has knots.
 *
 * @param tolerance relative; the absolute one is this times the magnitudes above
 */
export function odexFlight(model: FlightModel, tolerance: number): OdexFlight {
  let calls = 0;
  let apogee = { time: 0, height: 0 };
  const lifting = model.stretches.find((s) => pullAtRest(model, s, s.to) > 0) as Stretch;
  let time =
    pullAtRest(model, lifting, lifting.from) > 0
      ? lifting.from
      : rootBetween((t) => pullAtRest(model, lifting, t), lifting.from, lifting.to, 1e-12);
  let phase: FlownPhase = "guide";
  let state = [0, 0];
  let pastApogee = false;

  for (const stretch of model.stretches) {
    while (time < stretch.to) {
      const n = state.length;
      const rates = ratesOf(model, phase, stretch);
      const buffer = new Float64Array(n);
      const out = new Float64Array(n);
      const solver = new Solver(n);
      solver.denseOutput = true;
      solver.relativeTolerance = tolerance;
      solver.absoluteTolerance = scales[phase].map((scale) => tolerance * scale);
      const end = endOf(model, phase, pastApogee);
      const pitching = phase === "pitching";
      let stop: { time: number; state: number[]; settled: boolean } | null = null;
      const run = solver.solve(
        (t, y) => {
          buffer.set(y);
          rates(t, buffer, out);
          return Array.from(out);
        },
        time,
        state,
        stretch.to,
        (_, from, to, y, dense) => {
          if (dense === undefined || to === from) return true;
          const at = (t: number): number[] => Array.from({ length: n }, (_, i) => dense(i, t));
          if (end(y) <= 0) {
            const when = rootBetween((t) => end(at(t)), from, to, 1e-12);
            stop = { time: when, state: at(when), settled: false };
            return false;
          }
          if (!pitching || swingAbove(model, stretch, to, y) >= 0) return true;
          const above = (t: number): number => swingAbove(model, stretch, t, at(t));
          const when = above(from) < 0 ? from : rootBetween(above, from, to, 1e-9);
          stop = { time: when, state: handedOver(model, stretch, when, at(when)), settled: true };
          return false;
        },
      );
      calls += run.nEval;
      const stopped = stop as { time: number; state: number[]; settled: boolean } | null;
      time = stopped?.time ?? stretch.to;
      state = stopped?.state ?? run.y;
      if (stopped === null) break;
      if (stopped.settled) phase = "aligned";
      else if (phase === "guide") {
        const now = kinematicsOf(model, "guide", time, Float64Array.from(state));
        phase = "pitching";
        state = [...now.position, ...now.velocity, ...now.axis, 0, 0, 0];
      } else if (!pastApogee) {
        pastApogee = true;
        apogee = { time, height: state[2]! };
        phase = "aligned";
        state = state.slice(0, 6);
      } else return { apogeeTime: apogee.time, apogeeHeight: apogee.height, landingTime: time, calls };
    }
  }
  throw new Error("did not land");
}
