import { expect, test } from "vitest";
import { noseDrag } from "../../src/rocket/drag/nose.js";
import { noseRadius } from "../../src/rocket/nose-shape.js";
import { noseFlow } from "../../src/rocket/supersonic/nose-flow.js";
import { slenderWaveDrag, worstSlenderDifference } from "./slender.js";

test("slenderWaveDrag() of Haack's noses is (1 + 9 c²/8)/f²", () => {
  for (const c of [0, 1 / 3])
    expect(slenderWaveDrag((s) => noseRadius({ kind: "haack", c }, 5, s) ** 2, 5) * 25).toBeCloseTo(
      1 + (9 * c * c) / 8,
      3,
    );
});

test("noseDrag() of Haack's noses of fineness 6 stays within 16 % of the slender limit, Mach 1.2 to 2", () => {
  const drag = (c: number, fineness: number, mach: number) =>
    noseDrag({ shape: { kind: "haack", c }, length: fineness }, 1)(mach);
  expect(worstSlenderDifference(drag)).toBeLessThan(0.16);
});

test("noseDrag() of an ogive of fineness 8 at Mach 1.4 is the slender limit of its profile within 10 %", () => {
  const slender = slenderWaveDrag((s) => noseRadius({ kind: "ogive" }, 8, s) ** 2, 8);
  expect(Math.abs(noseDrag({ shape: { kind: "ogive" }, length: 8 }, 1)(1.4) / slender - 1)).toBeLessThan(0.1);
});

test("noseDrag() orders the noses: von Kármán's least, then ogive, then ellipsoid (Mach 1.2 to 2, fineness 5)", () => {
  for (const mach of [1.2, 1.5, 2]) {
    const [karman, ogive, ellipsoid] = [
      { kind: "haack", c: 0 } as const,
      { kind: "ogive" } as const,
      { kind: "ellipsoid" } as const,
    ].map((shape) => noseDrag({ shape, length: 5 }, 1)(mach)) as [number, number, number];
    expect(karman).toBeLessThan(ogive);
    expect(ogive).toBeLessThan(ellipsoid);
  }
});

test("noseFlow() of ever more slender noses tends to slope 2 at L − V/A", () => {
  for (const mach of [1.2, 2]) {
    const apart = [20, 80, 300].map((fineness) =>
      Math.abs(noseFlow({ shape: { kind: "ogive" }, length: fineness }, 1, 0)(mach).slope - 2),
    );
    expect(apart[2]).toBeLessThan(0.04);
    expect(apart[2]).toBeLessThan(apart[0] as number);
    expect(noseFlow({ shape: { kind: "cone" }, length: 80 }, 1, 0)(mach).at / 80).toBeCloseTo(2 / 3, 2);
  }
});
