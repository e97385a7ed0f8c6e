import { describe, expect, test } from "vitest";
import { calmPlan, plan } from "../../test/plan.js";
import { settingWith } from "../../test/settings.js";
import { planWindow, standingDelay } from "./plan-window.js";
import { weatherWindow } from "./weather-window.js";

const degree = Math.PI / 180;
const few = { draws: 32, seed: 1 };

describe("planWindow()", () => {
  test("gives the figures of weatherWindow over winds of 0 to 12 m/s and the usual leans with today's own", async () => {
    const inputs = { ...plan, guide: { ...plan.guide, tilt: 3 * degree } };
    const window = await planWindow(inputs, 10, few);
    expect(window.winds).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(window.tilts.map((tilt) => Number((tilt / degree).toFixed(6)))).toEqual([0, 2.5, 3, 5, 7.5, 10]);
    const plain = await weatherWindow(inputs, { ...few, delay: 10, winds: [0, 4], tilts: [window.tilts[2]!] });
    expect(window.clean[2]?.[0]).toBe(plain.clean[0]?.[0]);
    expect(window.holds[2]?.[4]).toBe(plain.holds[0]?.[1]);
  });

  test("holds today's lean once, however it was turned into radians", async () => {
    const inputs = { ...plan, guide: { ...plan.guide, tilt: 5 * degree * (1 + 1e-15) } };
    expect((await planWindow(inputs, 10, { ...few, draws: 1 })).tilts).toHaveLength(5);
  });

  test("tells good up to the last wind apart from good in none", async () => {
    const anything = { ...calmPlan, limits: { ...calmPlan.limits, leastClean: 0, leastHolds: 0 } };
    const all = await planWindow(anything, 10, few);
    expect(new Set(all.edges)).toEqual(new Set([12]));
    expect(new Set(all.beyond)).toEqual(new Set([true]));
    expect(
      all.ends.every(({ wind }) => wind === null || wind < 12),
      "rules end it before",
    ).toBe(true);
    const none = await planWindow({ ...plan, limits: { ...plan.limits, leastClean: 1 } }, 3, few);
    expect(new Set(none.edges)).toEqual(new Set([null]));
    expect(new Set(none.beyond)).toEqual(new Set([false]));
    expect(none.ends[0]).toEqual({ wind: null, beyond: false, by: "clean", check: null });
  });
});

test("standingDelay() is as cut, else as chosen, else the delay to cut", () => {
  const [asCut, chosen, best] = [settingWith(11, {}), settingWith(8, {}), settingWith(9, {})];
  const settings = [asCut, best, chosen];
  const choice = { setting: chosen, reason: null };
  const toCut = best as unknown as Parameters<typeof standingDelay>[1]["toCut"];
  const cutSoFar = { removedDepth: 0.002, depthError: 0.0002 };
  expect(standingDelay({ cutSoFar }, { settings, choice, toCut })).toBe(11);
  expect(standingDelay({}, { settings, choice, toCut })).toBe(8);
  expect(standingDelay({}, { settings, choice: null, toCut })).toBe(9);
  expect(standingDelay({}, { settings: [], choice: null, toCut: null })).toBeNull();
});
