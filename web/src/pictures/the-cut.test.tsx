import type { CutData } from "@delaywright/documents";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { type CutPictureData, cutGeometry, depthRuler, secondsRuler, secondWords } from "./cut-geometry.js";
import { rulerFigures } from "./cut-ruler.js";
import { labelEnds } from "./delay-axis.js";
import { TheCut } from "./the-cut.js";

const perSecond = 0.0254 / 32;
const target: CutData = { delay: 10, removed: 4, end: "B", spacers: [], depth: 4 * perSecond };
const plain: CutPictureData = {
  element: { longest: 14, depthPerSecond: perSecond, removedDepth: 0 },
  target,
  tool: {
    kind: "ends",
    name: "Two-collar cutter",
    ends: [{ name: "B", removes: 4 * perSecond }],
    spacers: [{ name: "ring", keepsBack: 2 * perSecond, count: 1 }],
    depthError: 2e-4,
  },
  reading: null,
  state: "not cut",
  units: "metric",
};
const over: CutPictureData = { ...plain, state: "over-cut", reading: { before: 0.014, after: 0.0185 } };

describe("cutGeometry", () => {
  it("takes the plan's share while nothing is cut", () => {
    expect(cutGeometry(plain)).toMatchObject({ over: false, short: false, spacer: 0, longest: 14 });
    expect(cutGeometry(plain).at).toBeCloseTo(4 / 14, 9);
    expect(cutGeometry(plain).left).toBeCloseTo(10, 9);
  });

  it("takes the difference of the two readings once it is cut", () => {
    const cut = cutGeometry(over);
    expect(cut.over).toBe(true);
    expect(cut.out * (cut.length ?? 0)).toBeCloseTo(0.0045, 9);
  });

  it("says that something is still to go only beyond what tool and gauge are worth", () => {
    const read = (depth: number): CutPictureData => ({ ...plain, state: "cut", reading: { before: 0, after: depth } });
    expect(cutGeometry(read(4 * perSecond - 1e-4)).short).toBe(false);
    expect(cutGeometry(read(4 * perSecond - 1e-3)).short).toBe(true);
  });

  it("knows the spacers' thickness", () => {
    expect(cutGeometry({ ...plain, target: { ...target, spacers: ["ring"] } }).spacer).toBeCloseTo(2 / 14, 9);
  });
});

describe("secondWords", () => {
  it("writes a fraction of an inch where it is one", () => {
    expect(secondWords(perSecond, false)).toBe("a second is 1/32\u202fin");
    expect(secondWords(0.0007, false)).toBe("a second is 0.70\u202fmm");
  });
});

describe("rulers", () => {
  it("run from the whole delay to none, and from no depth to the whole", () => {
    const cut = cutGeometry(plain);
    expect(secondsRuler(cut).map(({ at }) => at)).toEqual(
      Array.from({ length: 15 }, (_, i) => expect.closeTo(i / 14, 9)),
    );
    const depths = depthRuler(cut, "metric");
    expect(depths[0]).toMatchObject({ at: 0, words: "0" });
    expect(depths.at(-1)?.at).toBeLessThanOrEqual(1);
    expect(depths.filter(({ words }) => words !== null).map(({ words }) => words)).toEqual([
      "0",
      "1",
      "2",
      "3",
      "4",
      "5",
      "6",
      "7",
      "8",
      "9",
      "10",
      "11",
    ]);
  });

  it("rulerFigures writes no two figures that touch", () => {
    for (let at = 0; at <= 100; at += 1) {
      const mine = { mid: at, words: "10.25", size: 13, strong: true };
      const figures = Array.from({ length: 15 }, (_, i) => ({ mid: (100 * i) / 14, words: `${14 - i}`, size: 12 }));
      const written = [...rulerFigures(figures, mine), mine].map(labelEnds).sort((a, b) => a[0] - b[0]);
      written.forEach(([from], i) => {
        const before = written[i - 1];
        if (before) expect(from).toBeGreaterThan(before[1]);
      });
    }
  });
});

describe("TheCut", () => {
  it("keeps drawn what is gone, and blackens an over-cut alone", () => {
    expect(renderToStaticMarkup(<TheCut {...plain} />)).toMatch(/class="gone"/);
    expect(renderToStaticMarkup(<TheCut {...plain} />)).not.toContain('class="over"');
    const markup = renderToStaticMarkup(<TheCut {...over} />);
    expect(markup).toContain('class="over"');
    expect(markup).toContain("over by 1.3\u202fmm");
    expect(markup).toContain("By the reading 4.5\u202fmm");
  });

  const nan = Number.NaN;
  const hostile: readonly (readonly [string, Partial<CutPictureData>])[] = [
    [
      "no depth per second",
      { element: { longest: 14, depthPerSecond: null, removedDepth: 0 }, target: { ...target, depth: null } },
    ],
    ["an element that is no number", { element: { longest: nan, depthPerSecond: nan, removedDepth: nan } }],
    ["an element of 0", { element: { longest: 0, depthPerSecond: 0, removedDepth: 0 } }],
    ["left whole", { target: null }],
    ["no tool", { tool: null }],
    ["a cut through the whole grain", { target: { ...target, removed: 99, depth: 1 } }],
    ["readings that are no numbers", { state: "cut", reading: { before: nan, after: nan } }],
    ["a reading that shrinks", { state: "over-cut", reading: { before: 0.02, after: 0.01 } }],
    ["a reading beyond the grain", { state: "over-cut", reading: { before: 0, after: 1 } }],
    ["a spacer that the tool has not", { target: { ...target, spacers: ["washer"] } }],
    ["a spacer as thick as the grain", { target: { ...target, spacers: Array<string>(50).fill("ring") } }],
  ];
  for (const [words, props] of hostile)
    it(`has no attribute that is not a number: ${words}`, () => {
      for (const units of ["metric", "imperial"] as const) {
        const markup = renderToStaticMarkup(<TheCut {...plain} {...props} units={units} />);
        expect(markup).not.toMatch(/(NaN|Infinity|undefined)/);
        expect(markup).not.toMatch(/(width|height)="-/);
      }
    });
});
