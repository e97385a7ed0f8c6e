import { expect, test } from "vitest";
import { calmPlan, plan } from "../../test/plan.js";
import { noSpread } from "../spread/drawn-values.js";
import { decide } from "./decide.js";
import { runHere } from "./odds.js";
import { oddsOverDelay } from "./odds-over-delay.js";

const draws = 256;

test("oddsOverDelay() gives a delay that can be cut the odds that decide() gives it", async () => {
  const { settings } = await decide(plan, { draws });
  const pins = await oddsOverDelay(
    plan,
    settings.map((s) => s.delay),
    { draws },
  );
  expect(pins.map((pin) => pin.odds)).toEqual(settings.map((s) => s.odds));
  // as many openings sampled for each
  expect(pins.map((pin) => pin.openingSpeed)).toEqual(
    settings.map(({ openingSpeed: s }) => s && { p05: s.p05, p50: s.p50, p95: s.p95 }),
  );
});

test("oddsOverDelay() rises to one summit and falls, and the speeds of opening are least near it", async () => {
  const delays = Array.from({ length: 29 }, (_, i) => 6 + 0.5 * i);
  const pins = await oddsOverDelay(calmPlan, delays, { draws });
  expect(pins.map((pin) => pin.delay)).toEqual(delays);
  const clean = pins.map((pin) => pin.odds.clean);
  const summit = clean.indexOf(Math.max(...clean));
  for (let i = 1; i < clean.length; i++) {
    const step = clean[i]! - clean[i - 1]!;
    expect(i <= summit ? step : -step, `at ${delays[i]} s`).toBeGreaterThanOrEqual(-1e-12);
  }
  const speeds = pins.map((pin) => pin.openingSpeed!);
  for (const { p05, p50, p95 } of speeds) {
    expect(p05).toBeLessThanOrEqual(p50);
    expect(p50).toBeLessThanOrEqual(p95);
  }
  const slowest = speeds.reduce((least, s, i) => (s.p50 < speeds[least]!.p50 ? i : least), 0);
  expect(Math.abs(delays[slowest]! - delays[summit]!)).toBeLessThanOrEqual(1);
});

test("oddsOverDelay() does not depend on which other delays are asked, nor on a reading of the motor in hand", async () => {
  const [alone] = await oddsOverDelay(plan, [9], { draws });
  const among = await oddsOverDelay(plan, [12, 9, 3], { draws });
  expect(among[1]!.odds).toEqual(alone!.odds);
  const read = { ...plan, cutSoFar: { removedDepth: 5 * 0.79375e-3, depthError: 2e-3 } };
  expect(await oddsOverDelay(read, [9], { draws })).toEqual([alone]);
});

test("oddsOverDelay() widens the scatter by the tool's error only where something is taken out", async () => {
  const coarse = { ...plan, tool: { ...plan.tool!, depthError: 1.5e-3 } };
  const [cut, whole] = await oddsOverDelay(coarse, [10, 14], { draws });
  const [cutFine, wholeFine] = await oddsOverDelay(plan, [10, 14], { draws });
  expect(whole).toEqual(wholeFine);
  expect(cut!.odds).not.toEqual(cutFine!.odds);
});

test("oddsOverDelay() without spread flies once, has no openings where all are grounded, and passes a refusal on", async () => {
  const runs: number[] = [];
  const exact = { ...calmPlan, spread: noSpread };
  const pins = await oddsOverDelay(exact, [12, 400], {
    run: async (spec, from, to) => {
      runs.push(to - from);
      return runHere(spec, from, to);
    },
  });
  expect(runs).toEqual([1]);
  expect(pins[0]!.odds.clean).toBe(1);
  expect(pins[1]).toMatchObject({ odds: { grounded: 1 }, openingSpeed: null });
  expect(await oddsOverDelay(plan, [])).toEqual([]);
  await expect(oddsOverDelay(plan, [9], { run: () => Promise.reject(new Error("off")) })).rejects.toThrow("off");
});
