import { alignedRates } from "./aligned.js";
import { guideRates } from "./guide.js";
import { type DenseStep, type Derivatives, evaluateDense } from "./integrate.js";
import type { FlightModel, Stretch } from "./model.js";
import { pitchingRates } from "./pitching.js";
import type { Peaks } from "./result.js";
import { type FlownPhase, kinematicsOf, type Leg, trajectoryAt } from "./trajectory.js";

/** The right-hand side of a phase. */
export function ratesOf(model: FlightModel, phase: FlownPhase, stretch: Stretch): Derivatives {
  if (phase === "guide") return guideRates(model, stretch);
  if (phase === "pitching") return pitchingRates(model, stretch);
  return alignedRates(model, stretch, model.options.model === "pitching");
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

/** Peak speed, acceleration and Mach number of a flight; zeros where it never moved. */
export function peaksOf(model: FlightModel, legs: readonly Leg[]): Peaks {
  const fastest = largest(legs, (leg) =>
    leg.phase === "guide" ? (_, y) => Math.abs(y[1]!) : (_, y) => Math.hypot(y[3]!, y[4]!, y[5]!),
  );
  const highestMach = largest(legs, (leg) => (t, y) => kinematicsOf(model, leg.phase, t, y).mach);
  const hardest = largest(legs, (leg) => {
    const rates = ratesOf(model, leg.phase, leg.stretch);
    const out = new Float64Array((leg.steps[0] as DenseStep).coefficients.length / 5);
    return (t, y) => {
      rates(t, y, out);
      return leg.phase === "guide" ? Math.abs(out[1]!) : Math.hypot(out[3]!, out[4]!, out[5]!);
    };
  });
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
