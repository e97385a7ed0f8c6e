import { expect, test } from "vitest";
import { type Derivatives, evaluateDense, integrate } from "./integrate.js";

const g = 9.80665;
const terminal = 6;
/** Fall under a canopy from rest: v = vt tanh(g t / vt), h = (vt²/g) ln cosh(g t / vt). Closed form: check-values section 9. */
const canopyFall: Derivatives = (_, y, rates) => {
  const v = y[1] as number;
  rates[0] = v;
  rates[1] = g * (1 - (v / terminal) ** 2);
};
const exactSpeed = (t: number) => terminal * Math.tanh((g * t) / terminal);
const exactDrop = (t: number) => (terminal ** 2 / g) * Math.log(Math.cosh((g * t) / terminal));

function errorWith(stepCount: number): number {
  const end = 0.8;
  const run = integrate(canopyFall, Float64Array.of(0, 0), 0, end, {
    tolerance: 1,
    scales: [1, 1],
    fixedStep: end / stepCount,
  });
  return Math.abs((run.state[1] as number) - exactSpeed(end));
}

test("integrate() converges with order 5", () => {
  const order = Math.log2(errorWith(64) / errorWith(128));
  expect(order).toBeGreaterThan(4.8);
  expect(order).toBeLessThan(5.6);
});

test("integrate(): the dense output converges with order 4 or better", () => {
  const worst = (count: number) => {
    const run = integrate(canopyFall, Float64Array.of(0, 0), 0, 0.8, {
      tolerance: 1,
      scales: [1, 1],
      fixedStep: 0.8 / count,
    });
    const out = new Float64Array(2);
    return Math.max(
      ...run.steps.map((s) => {
        const t = s.from + 0.37 * (s.to - s.from);
        return Math.abs((evaluateDense(s, t, out)[1] as number) - exactSpeed(t));
      }),
    );
  };
  expect(Math.log2(worst(16) / worst(32))).toBeGreaterThan(3.8);
});

test("integrate() keeps its tolerance on the canopy fall", () => {
  for (const tolerance of [1e-6, 1e-9, 1e-12]) {
    const run = integrate(canopyFall, Float64Array.of(0, 0), 0, 4, { tolerance, scales: [1, 1] });
    expect(run.ended).toBe("reached-end");
    expect(Math.abs((run.state[0] as number) - exactDrop(4))).toBeLessThan(200 * tolerance);
  }
});

test("integrate() fires each event once and finds it to 1e-9", () => {
  const oscillator: Derivatives = (_, y, rates) => {
    rates[0] = y[1] as number;
    rates[1] = -(y[0] as number);
  };
  const run = integrate(oscillator, Float64Array.of(0, 1), 0, 20, {
    tolerance: 1e-11,
    scales: [1, 1],
    events: [{ name: "falls", value: (_, y) => y[0] as number, direction: -1, stops: false }],
  });
  const expected = [Math.PI, 3 * Math.PI, 5 * Math.PI];
  expect(run.hits).toHaveLength(3);
  run.hits.forEach((hit, i) => {
    expect(Math.abs(hit.time - (expected[i] as number))).toBeLessThan(1e-9);
  });
});

test("integrate() stops exactly where a stopping event fires", () => {
  const run = integrate(canopyFall, Float64Array.of(0, 0), 0, 9, {
    tolerance: 1e-10,
    scales: [1, 1],
    events: [{ name: "ten metres", value: (_, y) => (y[0] as number) - 10, direction: 1, stops: true }],
  });
  const exact = (terminal / g) * Math.acosh(Math.exp((10 * g) / terminal ** 2));
  expect(run.ended).toBe("event");
  expect(Math.abs(run.time - exact)).toBeLessThan(1e-9);
  expect(run.hits).toHaveLength(1);
});

test("integrate() ends with a reason where the right-hand side blows up", () => {
  const run = integrate(
    (_, y, rates) => {
      rates[0] = (y[0] as number) ** 2;
    },
    Float64Array.of(1),
    0,
    2,
    { tolerance: 1e-8, scales: [1] },
  );
  expect(["step-too-small", "not-finite", "too-many-steps"]).toContain(run.ended);
});
