import { expect, test } from "vitest";
import { type Derivatives, evaluateDense, integrate } from "../../src/flight/integrate.js";
import { attitudeAlong, noseAxis } from "../../src/flight/rigid/attitude.js";
import { rigidBody } from "../../src/flight/rigid/body.js";
import { rigidRates } from "../../src/flight/rigid/rates.js";
import { cpOf, slopeOf } from "../../src/rocket/normal-force/parts.js";
import { uniform, uniformModel } from "../trajectories/uniform.js";

/** SOURCE.md: check values of the pitching flight: undamped frequency [rad/s] and damping ratio at 100 m/s. */
const frequency = 20.50790246;
const dampingRatio = 0.0914716151;

const V = 100;
const model = uniformModel(1e-9, 0, { model: "rigid" });
const body = rigidBody(model);
const stretch = model.stretches[0]!;
const small = 1e-4;
const scales = [1, 1, 1, 1e-2, 1e-2, 1, 1e-4, 1e-4, 1e-4, 1e-4, 1e-3, 1e-3, 1e-3];

/** Flies upwards, tipped a little to the east and a little to the north. */
function tipped(): Float64Array {
  const start = new Float64Array(13);
  start[5] = V;
  start.set(attitudeAlong([small, 0.7 * small, Math.sqrt(1 - 1.49 * small * small)]), 6);
  return start;
}

const free = rigidRates(body, stretch);

/** The same with the motion of the balance point prescribed. */
const held: Derivatives = (t, y, rates) => {
  free(t, y, rates);
  rates.fill(0, 0, 6);
};

function axisAt(rates: Derivatives, t: number): Float64Array {
  return integrate(rates, tipped(), 0, t, { tolerance: 1e-11, scales }).state;
}

const nose = (y: Float64Array) => noseAxis([y[6]!, y[7]!, y[8]!, y[9]!]);

test("rigidRates() swing on a fixed pivot as the damped oscillator, in both planes", () => {
  const decay = dampingRatio * frequency;
  const damped = frequency * Math.sqrt(1 - dampingRatio ** 2);
  for (const t of [0.05, 0.1, 0.3, 0.61, 1.2]) {
    const [east, north] = nose(axisAt(held, t));
    const shape = Math.exp(-decay * t) * (Math.cos(damped * t) + (decay / damped) * Math.sin(damped * t));
    // the sine of the angle departs from the angle by its cube, gathered over four swings
    expect(Math.abs(east - small * shape), `${t} s`).toBeLessThan(1e-6 * small);
    expect(Math.abs(north - 0.7 * small * shape), `${t} s`).toBeLessThan(1e-6 * small);
  }
});

test("rigidRates() of a free body swing with the linear frequency and damping within 1 %", () => {
  // angle of attack of the linear body, free to move across: α̇ = ω − a α + (b/V) ω, I ω̇ = −k α − c ω
  const pressureArea = 0.5 * uniform.rho * V * V * model.area;
  const { parts, airframe } = model;
  const margin = cpOf(parts, 0) - uniform.xg;
  const a = (pressureArea * slopeOf(parts, 0)) / (uniform.mass * V);
  const b = (pressureArea * slopeOf(parts, 0) * margin) / (uniform.mass * V);
  const k = pressureArea * slopeOf(parts, 0) * margin;
  const c =
    (pressureArea / V) * parts.reduce((sum, part) => sum + part.slopeAt(0) * (part.cpAt(0) - uniform.xg) ** 2, 0);
  const decay = 0.5 * (a + c / airframe.inertia);
  const stiffness = (k * (1 + b / V) + a * c) / airframe.inertia;
  const damped = Math.sqrt(stiffness - decay * decay);

  // angle of attack in the plane of the first tilt, from the dense output
  const run = integrate(free, tipped(), 0, 1.4, { tolerance: 1e-11, scales });
  const y = new Float64Array(13);
  const angle = (t: number): number => {
    evaluateDense(run.steps.find((step) => step.to >= t)!, t, y);
    return nose(y)[0] - y[3]! / Math.hypot(y[3]!, y[4]!, y[5]!);
  };
  const times = run.steps.map((step) => step.to);
  const crossings: number[] = [];
  let before = angle(times[0]!);
  for (let i = 1; i < times.length; i++) {
    const after = angle(times[i]!);
    if (before * after < 0) {
      const share = before / (before - after);
      crossings.push(times[i - 1]! + share * (times[i]! - times[i - 1]!));
    }
    before = after;
  }
  expect(crossings.length).toBeGreaterThan(6);
  const measured = (Math.PI * (crossings.length - 1)) / (crossings.at(-1)! - crossings[0]!);
  expect(Math.abs(measured / damped - 1)).toBeLessThan(0.01);
  // a quarter swing after a crossing, and as many whole swings later: the logarithm of the ratio over the time
  const first = crossings[0]! + 0.25 * ((2 * Math.PI) / damped);
  const later = first + 3 * ((2 * Math.PI) / damped);
  const measuredDecay = Math.log(angle(first) / angle(later)) / (later - first);
  expect(Math.abs(measuredDecay / decay - 1)).toBeLessThan(0.01);
});
