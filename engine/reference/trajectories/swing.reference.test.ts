import { expect, test } from "vitest";
import { type Derivatives, integrate } from "../../src/flight/integrate.js";
import { type FlightModel, massIn, type Stretch } from "../../src/flight/model.js";
import { pitchingRates } from "../../src/flight/pitching.js";
import { trimAt } from "../../src/flight/settled.js";
import { inertiaFromSwing } from "../../src/rocket/inertia.js";
import { cpOf, normalForceParts, slopeOf } from "../../src/rocket/normal-force/parts.js";
import { referenceRocket } from "./inputs.js";
import { uniform, uniformModel } from "./uniform.js";

/** SOURCE.md: the pitching flight, checks with closed forms. Inputs of that table. */
const V = 100;
const { rho, xg, inertia, mass } = uniform;

const rows = {
  stiffness: 84.11481267,
  damping: 0.7503563841,
  frequency: 20.50790246,
  dampingRatio: 0.0914716151,
  swingLength: 30.63787396,
};
/** Of the page, closed forms: relative. */
const within = 1e-8;

function near(value: number, expected: number, tolerance: number, what = ""): void {
  expect(Math.abs(value - expected), `${what} ${value}`).toBeLessThanOrEqual(tolerance * Math.abs(expected));
}

const firstStretch = (model: FlightModel): Stretch => model.stretches[0]!;

test("normalForceParts() gives the parts that the closed forms rest on", () => {
  const parts = normalForceParts(referenceRocket);
  expect(parts).toHaveLength(2);
  // printed to ten digits
  near(parts[0]!.at, 0.139447968, 1e-8, "nose");
  near(parts[0]!.slope, 2, 1e-12, "nose");
  near(parts[1]!.slope, 15.30045687, 1e-9, "fins");
  near(parts[1]!.at, 1.363333333, 1e-9, "fins");
  near(cpOf(parts, 0), 1.221847432, within, "centre of pressure");
});

test("stiffness, damping, frequency, damping ratio and length of one swing have their closed forms", () => {
  expect(Object.keys(rows)).toHaveLength(5);
  const parts = normalForceParts(referenceRocket);
  const area = (Math.PI * 0.066 ** 2) / 4;
  const stiffness = 0.5 * rho * V * V * area * slopeOf(parts, 0) * (cpOf(parts, 0) - xg);
  const damping = 0.5 * rho * V * area * parts.reduce((sum, p) => sum + p.slope * (p.at - xg) ** 2, 0);
  const frequency = Math.sqrt(stiffness / inertia);
  near(stiffness, rows.stiffness, within, "stiffness");
  near(damping, rows.damping, within, "damping");
  near(frequency, rows.frequency, within, "frequency");
  near(damping / (2 * inertia * frequency), rows.dampingRatio, within, "damping ratio");
  near((2 * Math.PI * V) / frequency, rows.swingLength, within, "length of one swing");
});

test("trimAt() gives frequency, damping and the steady lag, and a swing length that no speed changes", () => {
  const model = uniformModel(1e-9, 0);
  const trim = trimAt(model, firstStretch(model), { time: 0, density: rho, speed: V, mach: 0, growth: 0 });
  near(trim.momentForce, rows.stiffness, within, "stiffness");
  near(trim.damping * inertia, rows.damping, within, "damping");
  near(trim.frequency, rows.frequency, within, "frequency");
  near(trim.damping / (2 * trim.frequency), rows.dampingRatio, within, "damping ratio");
  // the page's sum CNi (xi - xg)^2 / (V CN (CP - xg)) is damping over stiffness
  near(trim.lag, rows.damping / rows.stiffness, within, "lag");
  for (const speed of [20, 60, 250]) {
    const { frequency } = trimAt(model, firstStretch(model), { time: 0, density: rho, speed, mach: 0, growth: 0 });
    near((2 * Math.PI * speed) / frequency, rows.swingLength, within, `swing at ${speed} m/s`);
  }
});

test("inertiaFromSwing() gives the swing on two strings", () => {
  const swing = { mass: 1.95, gravity: 9.80665, apart: 0.8, strings: 1.2, period: 1.9 };
  // tolerance of the page: 1e-7
  near(inertiaFromSwing(swing), 0.23315326, 1e-7);
});

/** The pitching equations with the motion of the balance point prescribed: velocity as given, no travel. */
function held(model: FlightModel, velocityAt: (t: number) => readonly [number, number, number]): Derivatives {
  const free = pitchingRates(model, firstStretch(model));
  const state = new Float64Array(12);
  return (t, y, rates) => {
    state.set(y);
    state.set(velocityAt(t), 3);
    free(t, state, rates);
    rates.fill(0, 0, 6);
  };
}

const scales = [1, 1, 1, 1, 1, 1, 1e-4, 1e-4, 1, 1e-3, 1e-3, 1e-3];

test("pitchingRates() swing on a fixed pivot as the damped oscillator", () => {
  const model = uniformModel(1e-9, 0);
  const small = 1e-4;
  const start = Float64Array.of(0, 0, 0, 0, 0, V, Math.sin(small), 0, Math.cos(small), 0, 0, 0);
  const decay = rows.dampingRatio * rows.frequency;
  const damped = rows.frequency * Math.sqrt(1 - rows.dampingRatio ** 2);
  const rates = held(model, () => [0, 0, V]);
  for (const t of [0.05, 0.1, 0.3, 0.61, 1.2]) {
    const { state } = integrate(rates, start, 0, t, { tolerance: 1e-11, scales });
    const expected = small * Math.exp(-decay * t) * (Math.cos(damped * t) + (decay / damped) * Math.sin(damped * t));
    // the sine of the angle departs from the angle by its cube: 1e-8 of the amplitude, gathered over four swings
    expect(Math.abs(state[6]! - expected), `${t} s`).toBeLessThan(1e-7 * small);
  }
});

test("pitchingRates() in a steady turn lag by the trim angle of trimAt()", () => {
  const model = uniformModel(1e-9, 0);
  const { lag } = trimAt(model, firstStretch(model), { time: 0, density: rho, speed: V, mach: 0, growth: 0 });
  const turn = 0.01;
  const rates = held(model, (t) => [V * Math.sin(turn * t), 0, V * Math.cos(turn * t)]);
  const start = Float64Array.of(0, 0, 0, 0, 0, V, 0, 0, 1, 0, turn, 0);
  const end = 10;
  const { state } = integrate(rates, start, 0, end, { tolerance: 1e-11, scales });
  const angle = turn * end - Math.atan2(state[6]!, state[8]!);
  // the first swing has died to exp(-18); the tube's turn within the lag is of second order in an angle of 1e-4
  near(angle, lag * turn, 1e-6, "lag");
});

/** Leaving the guide into a steady cross-wind: time after exit, sideways speed, axis angle, at 5 m/s of wind. */
const crossWind = [
  [0.1, 0.25641068, -0.02929133],
  [0.2, -0.86368829, -0.10397349],
  [0.4, -6.73286226, -0.10199473],
  [0.8, -14.9771912, -0.10862264],
  [1.5, -30.0531595, -0.10802594],
] as const;

/** Sideways speed and axis angle at a time after leaving 1.5 m of guide at 200 m/s². */
function leaveInto(wind: number, after: number): readonly [speed: number, angle: number] {
  const model = uniformModel(200 * mass, wind);
  const exitSpeed = Math.sqrt(2 * 200 * 1.5);
  const start = Float64Array.of(0, 0, 1.5, 0, 0, exitSpeed, 0, 0, 1, 0, 0, 0);
  const small = 1e-3 * wind;
  const { state } = integrate(pitchingRates(model, firstStretch(model)), start, 0, after, {
    tolerance: 1e-11,
    scales: [wind, 1, 1, wind, 1, 1, small, small, 1, small, small, small],
  });
  return [state[3]!, Math.atan2(state[6]!, state[8]!)];
}

test("pitchingRates() leave the guide into a cross-wind as the linear system does", () => {
  expect(crossWind).toHaveLength(5);
  const model = uniformModel(200 * mass, 0);
  const body = massIn(model, firstStretch(model), 1);
  near(body.mass, mass, 1e-12, "mass");
  near(body.balance, xg, 1e-12, "balance");
  near(body.inertia, inertia, 1e-12, "inertia");
  for (const [after, speed, angle] of crossWind) {
    const [smallSpeed, smallAngle] = leaveInto(0.005, after);
    // 5 mm/s of wind, times 1000; agreement given by the page
    near(1000 * smallSpeed, speed, 1e-6, `sideways speed ${after} s`);
    near(1000 * smallAngle, angle, 1e-6, `axis angle ${after} s`);
  }
});

test("pitchingRates() at 5 m/s of wind differ from the linear system by up to 1.5 %, as the page says", () => {
  const misses = crossWind.flatMap(([after, speed, angle]) => {
    const [fullSpeed, fullAngle] = leaveInto(5, after);
    return [Math.abs(fullSpeed / speed - 1), Math.abs(fullAngle / angle - 1)];
  });
  expect(Math.max(...misses)).toBeGreaterThan(1e-3);
  expect(Math.max(...misses)).toBeLessThan(0.0155);
});
