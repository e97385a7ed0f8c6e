import { expect, test } from "vitest";
import { plan, twoEndTool } from "../../test/plan.js";
import { fly } from "../flight/fly.js";
import { noSpread } from "../spread/drawn-values.js";
import { setDelayError } from "./setting-scatter.js";

const flight = fly(plan);
const burning = setDelayError(plan, flight, 14);

test("setDelayError() of an uncut element is what the burning rate leaves open, in proportion to the delay", () => {
  expect(burning).toBeGreaterThan(0);
  const { tool: _, ...uncut } = plan;
  expect(setDelayError(uncut, flight, 7)).toBeCloseTo(burning / 2, 12);
});

test("setDelayError() of a cut adds the depth that the tool really reaches, or the error of its reading", () => {
  // 0.2 mm at 0.79375 mm a second
  const cut = 0.2 / 0.79375;
  expect(setDelayError(plan, flight, 10)).toBeCloseTo(Math.hypot(cut, (10 / 14) * burning), 9);
  const cutSoFar = { removedDepth: 4 * 0.79375e-3, depthError: 0.1e-3 };
  expect(setDelayError({ ...plan, cutSoFar }, flight, 10)).toBeCloseTo(Math.hypot(cut / 2, (10 / 14) * burning), 9);
  const finer = { ...plan, tool: { ...twoEndTool, depthError: 0 } as typeof twoEndTool };
  expect(setDelayError(finer, flight, 10)).toBeCloseTo((10 / 14) * burning, 9);
});

test("setDelayError() is zero where nothing varies", () => {
  expect(setDelayError({ ...plan, spread: noSpread }, flight, 10)).toBe(0);
});
