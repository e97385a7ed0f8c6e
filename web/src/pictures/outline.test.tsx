import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Outline } from "./outline.js";
import { labelMarks } from "./outline-labels.js";
import type { OutlineProps } from "./outline-props.js";
import { labelBox, overlap } from "./place-labels.js";

const props: OutlineProps = {
  outline: {
    body: [
      { x: 0, r: 0 },
      { x: 0.15, r: 0.028 },
      { x: 0.3, r: 0.038 },
      { x: 1.43, r: 0.038 },
    ],
    fins: [
      [
        { x: 1.2, y: 0.038 },
        { x: 1.3, y: 0.128 },
        { x: 1.38, y: 0.128 },
        { x: 1.38, y: 0.038 },
      ],
    ],
    fittings: [0.9, 1.35],
  },
  length: 1.43,
  diameter: 0.076,
  motorAftAt: 1.44,
  balanceWithoutMotor: 0.8,
  balanceReady: 0.9,
  cp: 1.14,
  units: "metric",
};

describe("Outline", () => {
  const drawn = renderToStaticMarkup(<Outline {...props} />);
  const tickAt = (name: string): number => {
    const [, x1, x2] =
      new RegExp(`<line x1="([\\d.]+)" y1="[\\d.]+" x2="([\\d.]+)" y2="[\\d.]+" class="mark outline-${name}"`).exec(
        drawn,
      ) ?? [];
    expect(x1).toBe(x2);
    return Number(x1);
  };

  it("has the ticks of balance, ready and CP where they belong on the ruler", () => {
    const [, start, end] = /outline-ruler"[^>]*><line x1="([\d.]+)" y1="[\d.]+" x2="([\d.]+)"/.exec(drawn) ?? [];
    const last = Number(/>(\d+)\u202fmm<\/text><\/g>/.exec(drawn)?.[1]) / 1000;
    const at = (metres: number): number => Number(start) + ((Number(end) - Number(start)) * metres) / last;
    expect(last).toBeGreaterThanOrEqual(1.44);
    expect(tickAt("balance")).toBeCloseTo(at(0.8), 6);
    expect(tickAt("ready")).toBeCloseTo(at(0.9), 6);
    expect(tickAt("CP")).toBeCloseTo(at(1.14), 6);
  });

  it("writes the margin between ready and CP in calibres", () => {
    expect(drawn).toContain("3.2\u202fcal");
    expect(renderToStaticMarkup(<Outline {...props} balanceReady={1.3} />)).toContain("\u22122.1\u202fcal");
  });

  it("draws body and fins to one scale", () => {
    const path = /<path d="([^"]*)" class="outline-body"/.exec(drawn)?.[1] ?? "";
    const ys = [...path.matchAll(/[ML]-?[\d.]+,(-?[\d.]+)/g)].map((match) => Number(match[1]));
    const pixels = (tickAt("CP") - tickAt("balance")) / (1.14 - 0.8);
    expect(ys.length).toBeGreaterThan(6);
    // paths are written to a tenth of a pixel
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(0.076 * pixels, 0);
  });

  it("describes itself in full sentences", () => {
    expect(drawn).toContain("Balance point without motor 800\u202fmm from the nose tip");
    expect(drawn).toContain("3.2 calibres behind the ready balance point");
  });

  it.each<[string, Partial<OutlineProps>]>([
    ["with a slip of the pen in the balance point", { balanceReady: 80 }],
    ["with ticks on one spot", { balanceWithoutMotor: 0.9, balanceReady: 0.9, cp: 0.9 }],
    [
      "a huge rocket",
      {
        length: 40,
        outline: {
          body: [
            { x: 0, r: 0 },
            { x: 40, r: 9 },
          ],
          fins: [],
          fittings: [],
        },
      },
    ],
    [
      "without any shape",
      { length: 0, diameter: 0, outline: { body: [], fins: [[]], fittings: [] }, motorAftAt: null },
    ],
    ["with nothing known", { balanceWithoutMotor: null, balanceReady: null, cp: null }],
    ["with figures that are not finite", { cp: Number.NaN, length: Number.NaN, motorAftAt: Number.NaN }],
    ["in inches", { units: "imperial" }],
  ])("is drawable %s", (_, change) => {
    expect(renderToStaticMarkup(<Outline {...props} {...change} />)).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe("labelMarks", () => {
  it("steps labels down so that none covers another", () => {
    const marks = [100, 104, 110].map((x, i) => ({
      x,
      lines: [
        { words: `balance ${i}00 mm`, size: 13, strong: true },
        { words: "no motor", size: 12 },
      ],
    }));
    const placed = labelMarks(marks, { top: 50, step: 33, width: 340, taken: [] });
    const boxes = placed.map(({ spot }, i) => labelBox(marks[i]?.lines ?? [], spot));
    expect(boxes).toHaveLength(3);
    boxes.forEach((a, i) => {
      for (const b of boxes.slice(i + 1)) expect(overlap(a, b)).toBe(0);
      expect(a.left).toBeGreaterThanOrEqual(0);
      expect(a.right).toBeLessThanOrEqual(340);
    });
  });
});
