import { expect, test } from "vitest";
import { labelCheck } from "./label-check.js";
import type { DelayElement, Motor } from "./motor.js";

const adjustable: DelayElement = {
  kind: "adjustable",
  longest: 14,
  mostRemoved: 8,
  leastLeft: 0,
  clock: "burnout",
  cuttingConfirmed: true,
};
/** A flat 150 N for 2 s: 300 N s, class H. */
const motor: Motor = {
  thrust: { times: [0, 2], thrusts: [150, 150] },
  diameter: 0.038,
  length: 0.25,
  loadedMass: 0.3,
  propellantMass: 0.15,
  delay: adjustable,
};
const fixed: DelayElement = { kind: "fixed", seconds: 10, clock: "burnout" };
const check = (designation: string, delay: DelayElement = adjustable) => labelCheck({ ...motor, delay, designation });

test("labelCheck() finds nothing where the label agrees or there is none", () => {
  expect(labelCheck(motor)).toEqual([]);
  expect(check("H150-14")).toEqual([]);
  expect(check("H150")).toEqual([]);
  expect(check("H150-10", fixed)).toEqual([]);
  expect(check("H150-P", { kind: "none" })).toEqual([]);
});

test("labelCheck() says how far the impulse is beyond the nearer limit of the label's class", () => {
  expect(check("G150-14")).toEqual([
    { code: "label-class", path: "motor.thrust", found: "H", accepted: "G", difference: 140 },
  ]);
  expect(check("I150-14")[0]?.difference).toBe(-20);
});

test("labelCheck() allows 20 % of the label's average thrust and no more", () => {
  expect(check("H125-14")).toEqual([]);
  expect(check("H187.5-14")).toEqual([]);
  const [finding] = check("H120-14");
  expect(finding).toMatchObject({ code: "label-average-thrust", found: 150, accepted: "120 N ± 20 %" });
  expect(finding?.difference).toBeCloseTo(0.25, 12);
});

test("labelCheck() compares the delay with the longest or the fixed one, to the label's whole second", () => {
  expect(check("H150-10")).toEqual([
    { code: "label-delay", path: "motor.delay", found: 14, accepted: "10 s", difference: 4 },
  ]);
  expect(check("H150-14", fixed)[0]?.difference).toBe(-4);
  expect(check("H150-10", { ...fixed, seconds: 10.4 })).toEqual([]);
});

test("labelCheck() tells plugged from delayed, either way", () => {
  expect(check("H150-14", { kind: "none" })[0]).toMatchObject({ found: "none", accepted: "14 s", difference: null });
  expect(check("H150-P")[0]).toMatchObject({ code: "label-delay", found: 14, accepted: "none", difference: null });
});

test("labelCheck() reports every disagreement at once", () => {
  expect(check("J400-6").map(({ code }) => code)).toEqual(["label-class", "label-average-thrust", "label-delay"]);
});

test.each(["Demo motor", "H0-14"])("labelCheck() reports the unreadable label %s", (designation) => {
  expect(check(designation)).toMatchObject([{ code: "label-unreadable", found: designation, difference: null }]);
});
