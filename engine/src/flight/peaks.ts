import { alignedRates } from "./aligned.js";
import { guideRates } from "./guide.js";
import { type DenseStep, type Derivatives, denseSlope, evaluateDense } from "./integrate.js";
import type { FlightModel, Stretch } from "./model.js";
import { pitchingRates } from "./pitching.js";
import type { Peaks } from "./result.js";
import { type FlownPhase, kinematicsOf, type Leg, trajectoryAt } from "./trajectory.js";

/** The right-hand side of a phase. */
export function ratesOf(model: FlightModel, phase: FlownPhase, stretch: Stretch): Derivatives {
  if (phase === "guide") return guideRates(model, stretch);
  if (phase === "pitching") return pitchingRates(model, stretch);
  return alignedRates(model, stretch, model.options.model !== "aligned");
}

type Measure = (time: number, y: Float64Array) => number;

/** The largest value of a measure: looked for at both ends and the middle of every step, refined in the best ones' neighbourhood. */
function largest(legs: readonly Leg[], measureOf: (leg: Leg) => Measure): { time: number; value: number } {
  let best = { time: 0, value: 0 };
  let refine = (): { time: number; value: number } => best;
  for (const leg of legs) {
    const measure = measureOf(leg);
    const state = new Float64Array((leg.steps[0] as DenseStep).coefficients.length / 5);
    for (const step of leg.steps) {
      const half = 0.5 * (step.to - step.from);
      const at = (t: number): number => measure(t, evaluateDense(step, t, state));
      for (let i = 0; i <= 2; i++) {
        const time = step.from + i * half;
        const value = at(time);
        if (value <= best.value) continue;
        best = { time, value };
        refine = () => goldenLargest(at, Math.max(step.from, time - half), Math.min(step.to, time + half));
      }
    }
  }
  const refined = refine();
  return refined.value > best.value ? refined : best;
}

function goldenLargest(f: (x: number) => number, from: number, to: number): { time: number; value: number } {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  for (let i = 0; i < 50 && high - low > 1e-9; i++) {
    const left = high - ratio * (high - low);
    const right = low + ratio * (high - low);
    if (f(left) > f(right)) high = right;
    else low = left;
  }
  const time = 0.5 * (low + high);
  return { time, value: f(time) };
}

/**
 * The largest acceleration: the slope of the dense output, which at both ends of a step is the right-hand side itself. The
 * thrust curve's knots are such ends, and it is there that the acceleration peaks.
 */
function hardestOf(legs: readonly Leg[]): { time: number; value: number } {
  let best = { time: 0, value: 0 };
  for (const leg of legs) {
    const first = leg.phase === "guide" ? 1 : 3;
    const count = leg.phase === "guide" ? 1 : 3;
    for (const step of leg.steps)
      for (const share of [0, 0.25, 0.5, 0.75, 1]) {
        let square = 0;
        for (let i = first; i < first + count; i++) square += denseSlope(step, i, share) ** 2;
        const value = Math.sqrt(square);
        if (value > best.value) best = { time: step.from + share * (step.to - step.from), value };
      }
  }
  return best;
}

/**
 * Peak speed, acceleration and Mach number on the way up; zeros where it never moved.
 *
 * @param until time of apogee [s]: steps that start later are left out
 */
export function peaksOf(model: FlightModel, flown: readonly Leg[], until: number): Peaks {
  const legs = flown.flatMap((leg) => {
    const steps = leg.steps.filter((step) => step.from < until);
    return steps.length > 0 ? [{ ...leg, steps }] : [];
  });
  const fastest = largest(legs, (leg) =>
    leg.phase === "guide" ? (_, y) => Math.abs(y[1]!) : (_, y) => Math.hypot(y[3]!, y[4]!, y[5]!),
  );
  const highestMach = largest(legs, (leg) => (t, y) => kinematicsOf(model, leg.phase, t, y).mach);
  const hardest = hardestOf(legs);
  return {
    fastest: {
      time: fastest.time,
      speed: fastest.value,
      mach: legs.length > 0 ? trajectoryAt(model, legs, fastest.time).mach : 0,
    },
    hardest: { time: hardest.time, acceleration: hardest.value },
    highestMach: highestMach.value,
  };
}
