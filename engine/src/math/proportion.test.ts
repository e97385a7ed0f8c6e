import { expect, test } from "vitest";
import { predictive, updatedBy } from "./normal-inverse-gamma.js";
import { neverHappened, wilsonInterval } from "./proportion.js";

test.each([
  [8, 10, 0.490162472, 0.943317849],
  [0, 20, 0, 0.161125158],
  [19, 20, 0.763868807, 0.991118551],
  [50, 100, 0.40383153, 0.59616847],
])("wilsonInterval() of %d in %d (check values 13)", (successes, tries, low, high) => {
  const interval = wilsonInterval(successes, tries);
  expect(interval[0]).toBeCloseTo(low, 8);
  expect(interval[1]).toBeCloseTo(high, 8);
});

test("wilsonInterval() of nothing tried is everything, and reaches 1 where all went well", () => {
  expect(wilsonInterval(0, 0)).toEqual([0, 1]);
  expect(wilsonInterval(7, 7)[1]).toBe(1);
});

test.each([
  [10, 0.3, 0.258865551],
  [20, 0.15, 0.139108341],
  [30, 0.1, 0.095033853],
  [100, 0.03, 0.02951305],
])("neverHappened() in %d (check values 13)", (tries, rule, exact) => {
  expect(neverHappened(tries).ruleOfThree).toBeCloseTo(rule, 8);
  expect(neverHappened(tries).exact).toBeCloseTo(exact, 8);
});

test("updatedBy() and predictive() give the worked example (check values 13)", () => {
  const posterior = updatedBy({ mean: 10, kappa: 2, alpha: 3, beta: 2 }, [9.2, 10.4, 9.8, 10.9, 9.5]);
  expect(posterior.kappa).toBe(7);
  expect(posterior.mean).toBeCloseTo(9.971428571, 8);
  expect(posterior.alpha).toBe(5.5);
  expect(posterior.beta).toBeCloseTo(2.947142857, 8);
  const next = predictive(posterior);
  expect(next.degrees).toBe(11);
  expect(next.scale).toBeCloseTo(0.7825556344, 8);
});
