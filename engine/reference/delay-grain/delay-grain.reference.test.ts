import { expect, test } from "vitest";
import { depthReading } from "../../src/decision/depth-reading.js";
import { achievableSettings, type Element } from "../../src/decision/removals.js";
import { depthOfDelay } from "../../src/motor/delay.js";
import { twoEndTool } from "../../test/plan.js";

/** SOURCE.md: check values, section 12; common practice, no source. */
const perSecond = 0.79375e-3;
const element: Element = { longest: 14, mostRemoved: Number.POSITIVE_INFINITY, leastLeft: 0 };

/** Delay, end, spacers, depth [m] as printed. */
const cuts = [
  [14, null, 0, 0],
  [12, "4 s end", 1, 1.5875e-3],
  [10, "4 s end", 0, 3.175e-3],
  [8, "8 s end", 1, 4.7625e-3],
  [6, "8 s end", 0, 6.35e-3],
] as const;

test("achievableSettings() makes exactly 14, 12, 10, 8 and 6 s of a 14 s element with the two-end tool", () => {
  expect(cuts).toHaveLength(5);
  const settings = achievableSettings(element, twoEndTool);
  expect(settings.map((s) => s.delay)).toEqual([14, 12, 10, 8, 6]);
  cuts.forEach(([delay, end, spacers, depth], i) => {
    const setting = settings[i]!;
    expect([setting.delay, setting.end, setting.spacers.length]).toEqual([delay, end, spacers]);
    expect(setting.removed).toBe(14 - delay);
    // printed exactly; products of doubles may differ in the last bit
    expect(Math.abs(setting.depth! - depth)).toBeLessThan(1e-18);
  });
});

test("depthOfDelay() is 1/32 inch a second, 1/16 inch for two", () => {
  const rows = [
    [1, 0.79375e-3],
    [2, 1.5875e-3],
  ] as const;
  expect(rows).toHaveLength(2);
  for (const [seconds, depth] of rows) expect(depthOfDelay(seconds, perSecond)).toBe(depth);
});

test("depthReading() of the printed depths gives the printed delays, exactly", () => {
  for (const [delay, , , depth] of cuts) {
    const reading = { longest: 14, before: 0.0222, after: 0.0222 + depth, depthPerSecond: perSecond };
    expect(depthReading(reading).delay).toBe(delay);
  }
});

/** Coast times of the reference flights (a), (b), (c) and the nearest setting, with how late or early it is [s]. */
const choices = [
  ["a", 13.12, 14, 0.88],
  ["b", 13.78, 14, 0.22],
  ["c", 12.5, 12, -0.5],
] as const;

test("achievableSettings(): the setting nearest to the coasts of the reference flights is the printed one", () => {
  expect(choices).toHaveLength(3);
  const delays = achievableSettings(element, twoEndTool).map((s) => s.delay);
  for (const [flight, coast, nearest, late] of choices) {
    const found = delays.reduce((a, b) => (Math.abs(b - coast) < Math.abs(a - coast) ? b : a));
    expect(found, flight).toBe(nearest);
    // two printed decimals
    expect(Math.abs(found - coast - late), flight).toBeLessThan(1e-9);
  }
});
