import fc from "fast-check";
import { expect, test } from "vitest";
import { twoEndTool } from "../../test/plan.js";
import type { CuttingTool } from "./inputs.js";
import { achievableSettings, depthPerSecondOf, type Element } from "./removals.js";

const perSecond = 0.79375e-3;
const element: Element = { longest: 14, mostRemoved: Number.POSITIVE_INFINITY, leastLeft: 0 };
const delays = (e: Element, tool: CuttingTool | undefined, cut?: Parameters<typeof achievableSettings>[2]) =>
  achievableSettings(e, tool, cut).map((s) => s.delay);

const ends = (
  e: readonly (readonly [name: string, seconds: number])[],
  spacers: readonly (readonly [name: string, seconds: number, count: number])[],
): CuttingTool => ({
  kind: "ends",
  name: "tool",
  ends: e.map(([name, seconds]) => ({ name, removes: { seconds } })),
  spacers: spacers.map(([name, seconds, count]) => ({ name, keepsBack: { seconds }, count })),
  depthPerSecond: perSecond,
  depthError: 0.2e-3,
});

test("achievableSettings() offers only the element as it is without a tool or a depth per second", () => {
  expect(delays(element, undefined)).toEqual([14]);
  const stop: CuttingTool = { kind: "stop", name: "bit", from: 0, to: 6e-3, step: 1e-3, depthError: 1e-4 };
  expect(delays(element, stop)).toEqual([14]);
});

test("achievableSettings() shows the combination with the fewest pieces where several remove the same", () => {
  // 4 s: the long end with two washers, or the short one bare; 2 s: the long end with three, or the short with one
  const tool = ends(
    [
      ["long", 8],
      ["short", 4],
    ],
    [["washer", 2, 3]],
  );
  const settings = achievableSettings(element, tool);
  expect(settings.map((s) => [s.delay, s.end, s.spacers.length])).toEqual([
    [14, null, 0],
    [12, "short", 1],
    [10, "short", 0],
    [8, "long", 1],
    [6, "long", 0],
  ]);
});

test("achievableSettings() uses every piece of every spacer, each up to its count", () => {
  const tool = ends(
    [["end", 10]],
    [
      ["washer", 2, 2],
      ["shim", 1, 1],
    ],
  );
  const settings = achievableSettings(element, tool);
  expect(settings.map((s) => s.removed)).toEqual([0, 5, 6, 7, 8, 9, 10]);
  expect(settings.find((s) => s.removed === 5)?.spacers).toEqual(["washer", "washer", "shim"]);
});

test("achievableSettings() offers nothing beyond mostRemoved, below leastLeft, or that removes nothing", () => {
  expect(delays({ ...element, mostRemoved: 6 }, twoEndTool)).toEqual([14, 12, 10, 8]);
  expect(delays({ ...element, mostRemoved: 5.999 }, twoEndTool)).toEqual([14, 12, 10]);
  expect(delays({ ...element, leastLeft: 8 }, twoEndTool)).toEqual([14, 12, 10, 8]);
  expect(delays({ ...element, leastLeft: 8.001 }, twoEndTool)).toEqual([14, 12, 10]);
  // the whole element is never cut away
  expect(delays({ ...element, longest: 8 }, twoEndTool)).toEqual([8, 6, 4, 2]);
  const backward = ends([["end", 2]], [["washer", 2, 2]]);
  expect(delays(element, backward)).toEqual([14, 12]);
});

test("achievableSettings() steps a depth stop, what was typed staying what it was", () => {
  const stop: CuttingTool = {
    kind: "stop",
    name: "bit",
    from: 0,
    to: 6.35e-3,
    step: 0.79375e-3,
    depthPerSecond: perSecond,
    depthError: 1e-4,
  };
  const settings = achievableSettings(element, stop);
  expect(settings).toHaveLength(9);
  settings.forEach((s, i) => {
    expect(s.delay).toBeCloseTo(14 - i, 9);
    expect(s.end).toBeNull();
  });
  const metric = achievableSettings(element, { ...stop, from: 0.1e-3, to: 0.5e-3, step: 0.1e-3 });
  expect(metric.map((s) => s.depth)).toEqual([0, 0.1e-3, 0.2e-3, 0.3e-3, 0.4e-3, 0.5e-3]);
});

test("achievableSettings() takes removals given as depths, by the motor's own depth per second where it has one", () => {
  const tool: CuttingTool = {
    kind: "ends",
    name: "tool",
    ends: [{ name: "deep", removes: { depth: 4e-3 } }],
    spacers: [{ name: "ring", keepsBack: { depth: 1e-3 }, count: 1 }],
    depthPerSecond: perSecond,
    depthError: 0.2e-3,
  };
  expect(delays({ ...element, depthPerSecond: 1e-3 }, tool)).toEqual([14, 11, 10]);
  const byTool = delays(element, tool);
  expect(byTool[1]).toBeCloseTo(14 - 3e-3 / perSecond, 9);
  expect(depthPerSecondOf({ ...element, depthPerSecond: 1e-3 }, tool)).toBe(1e-3);
  expect(depthPerSecondOf(element, tool)).toBe(perSecond);
  expect(depthPerSecondOf(element, undefined)).toBeUndefined();
});

test("achievableSettings() leaves, after a cut, the element as it is and what is deeper beyond the reading's error", () => {
  const removedDepth = 4 * perSecond;
  const settings = achievableSettings(element, twoEndTool, { removedDepth, depthError: 0.1e-3 });
  expect(settings.map((s) => s.delay)).toEqual([10, 8, 6]);
  expect(settings[0]).toMatchObject({ depth: removedDepth, end: null });
  // read a trifle shallower than the stop: the same stop is not offered as a new, deeper cut
  expect(delays(element, twoEndTool, { removedDepth: removedDepth - 0.05e-3, depthError: 0.1e-3 })).toHaveLength(3);
  // deeper than any stop of the tool
  expect(delays(element, twoEndTool, { removedDepth: 12 * perSecond, depthError: 0.1e-3 })).toHaveLength(1);
});

test("achievableSettings() gives the delay of a cut of whole half seconds exactly", () => {
  for (let i = 1; i < 28; i++) {
    const [asItIs] = delays(element, twoEndTool, { removedDepth: (i / 2) * perSecond, depthError: 0.1e-3 });
    expect(asItIs).toBe(14 - i / 2);
  }
});

test("achievableSettings() never offers a longer delay for a deeper cut", () => {
  const seconds = fc.double({ min: 0.5, max: 12, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(seconds, { minLength: 1, maxLength: 3 }),
      fc.array(fc.tuple(fc.double({ min: 0.2, max: 4, noNaN: true }), fc.integer({ min: 1, max: 3 })), {
        maxLength: 2,
      }),
      fc.option(fc.double({ min: 0, max: 8e-3, noNaN: true }), { nil: undefined }),
      (removed, spacers, cut) => {
        const tool = ends(
          removed.map((s, i) => [`end ${i}`, s] as const),
          spacers.map(([s, count], i) => [`spacer ${i}`, s, count] as const),
        );
        const soFar = cut === undefined ? undefined : { removedDepth: cut, depthError: 0 };
        const settings = achievableSettings(element, tool, soFar);
        expect(settings.length).toBeGreaterThanOrEqual(1);
        for (let i = 1; i < settings.length; i++) {
          expect(settings[i]!.depth!).toBeGreaterThan(settings[i - 1]!.depth!);
          expect(settings[i]!.delay).toBeLessThan(settings[i - 1]!.delay);
          expect(settings[i]!.delay + settings[i]!.removed).toBeCloseTo(14, 9);
        }
      },
    ),
  );
});
