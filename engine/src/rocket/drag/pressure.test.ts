import { expect, test } from "vitest";
import { noseShapes } from "../../../test/shapes.js";
import type { NoseShape } from "../rocket.js";
import { waveDrag } from "../supersonic/tangent-cone.js";
import { baseDrag, baseDragCoasting } from "./base.js";
import { bodyFormFactor } from "./body.js";
import { finFormFactor, leadingEdgeDrag, thicknessWaveDrag, trailingEdgeDrag } from "./fins.js";
import { fittingData, fittingDrag } from "./fittings.js";
import { cornerDrag, noseDrag, wideningDrag } from "./nose.js";
import { stagnationPressureRatio } from "./stagnation.js";
import { separatedShare, transitionDrag } from "./transitions.js";

const machs = Array.from({ length: 500 }, (_, i) => i / 100);

function expectContinuous(drag: (mach: number) => number, edges: readonly number[]): void {
  for (const edge of edges) expect(Math.abs(drag(edge + 1e-9) - drag(edge - 1e-9)), `Mach ${edge}`).toBeLessThan(1e-6);
}

test("stagnationPressureRatio() is continuous at its seams and tends to the hypersonic 1.839 (γ 1.4, Rayleigh)", () => {
  expectContinuous(stagnationPressureRatio, [0.1, 1]);
  expect(stagnationPressureRatio(0)).toBe(1);
  expect(stagnationPressureRatio(100)).toBeCloseTo(1.839, 2);
});

test("stagnationPressureRatio() behind a normal shock at Mach 2: p02/p1 = 5.640 in the gas tables (memory)", () => {
  expect(stagnationPressureRatio(2) * 0.7 * 4 + 1).toBeCloseTo(5.64, 3);
});

test("baseDragCoasting() is continuous through Mach 0.9 and 1.1; baseDrag() is never negative", () => {
  expectContinuous(baseDragCoasting, [0.9, 1.1]);
  const wide = { mach: 1, thrusting: true, baseDiameter: 0.05, motorDiameter: 0.06, diameter: 0.05 };
  expect(baseDrag(wide)).toBe(0);
});

test("bodyFormFactor() and finFormFactor() fall to 1 for slender parts, and blunt bodies are held", () => {
  expect(bodyFormFactor(1e6)).toBeCloseTo(1, 6);
  expect(bodyFormFactor(0)).toBe(bodyFormFactor(1));
  expect(finFormFactor(0)).toBe(1);
});

const shapes: readonly NoseShape[] = [...noseShapes, { kind: "power", exponent: 0.75 }];

test("noseDrag() of every shape is smooth and positive, is its corner's below Mach 0.8 and rises to Mach 1.1", () => {
  for (const shape of shapes)
    for (const fineness of [1.5, 3, 6]) {
      const drag = noseDrag({ shape, length: fineness }, 1);
      for (const mach of machs.filter((mach) => mach < 3)) {
        const at = `${shape.kind} of fineness ${fineness}, Mach ${mach}`;
        if (mach <= 0.8) expect(drag(mach), at).toBe(drag(0));
        else expect(drag(mach), at).toBeGreaterThan(0);
        expect(Math.abs(drag(mach + 1e-4) - drag(mach)), at).toBeLessThan(3e-4);
        const h = 1e-5;
        const bend = drag(mach + 0.005 + h) - 2 * drag(mach + 0.005) + drag(mach + 0.005 - h);
        expect(Math.abs(bend) / h, at).toBeLessThan(1e-3);
        if (mach > 0.8 && mach < 1.05) expect(drag(mach + 0.01), at).toBeGreaterThan(drag(mach));
      }
    }
});

test("noseDrag() of a cone has its corner's drag at low speed", () => {
  const drag = noseDrag({ shape: { kind: "cone" }, length: 0.1 }, 0.1);
  expect(drag(0.3)).toBe(cornerDrag(Math.atan(0.5)));
});

test("noseDrag() counts the bluntest noses as one steep cone", () => {
  const blunt = wideningDrag(Math.PI / 2, Math.PI / 2);
  expect(blunt(2)).toBe(waveDrag(0.8, 2));
});

test("leadingEdgeDrag() orders the edges square, round, sharp, and sweep takes some away", () => {
  for (const mach of [0.1, 0.5]) {
    expect(leadingEdgeDrag("square", 0, mach)).toBeGreaterThan(leadingEdgeDrag("round", 0, mach));
    expect(leadingEdgeDrag("round", 0, mach)).toBeGreaterThan(leadingEdgeDrag("sharp", 0, mach));
  }
  expect(leadingEdgeDrag("square", Math.PI / 3, 0)).toBeCloseTo(0.85 / 4, 12);
  expect(leadingEdgeDrag("round", 0, 0)).toBe(0);
});

test("leadingEdgeDrag() of a round edge is continuous through Mach 0.8 and 1.2 and rises all the way", () => {
  expectContinuous((mach) => leadingEdgeDrag("round", 0, mach), [0.8, 1.2]);
  for (const mach of machs)
    expect(leadingEdgeDrag("round", 0, mach + 0.01)).toBeGreaterThan(leadingEdgeDrag("round", 0, mach));
});

test("trailingEdgeDrag() is base drag on a square edge, half of it on a round, none on a sharp", () => {
  const edges = (["square", "round", "sharp"] as const).map((edge) => trailingEdgeDrag(edge, 0));
  expect(edges).toEqual([0.12, 0.06, 0]);
});

const plate = { kind: "trapezoid", root: 1, tip: 1, span: 1, sweep: 0 } as const;

test("thicknessWaveDrag() is nothing below Mach 0.9 and without wedges, and about Ackeret's double wedge above 1.2", () => {
  const drag = thicknessWaveDrag(plate, { leading: "sharp", trailing: "sharp" }, 0.05);
  expect(drag(0.9)).toBe(0);
  expect(Math.abs(drag(Math.SQRT2) / 0.01 - 1)).toBeLessThan(0.03);
  expectContinuous(drag, [0.9, 1.2]);
  expect(thicknessWaveDrag(plate, { leading: "round", trailing: "square" }, 0.05)(2)).toBe(0);
});

test("thicknessWaveDrag() of a wedge in front is more than of one at the rear (Busemann's second order); near the tip they help each other", () => {
  const of = (leading: "sharp" | "round", trailing: "sharp" | "square") =>
    thicknessWaveDrag(plate, { leading, trailing }, 0.03)(2);
  const both = of("sharp", "sharp");
  expect(of("sharp", "square")).toBeGreaterThan(of("round", "sharp"));
  expect(Math.abs((of("sharp", "square") + of("round", "sharp")) / both - 1)).toBeLessThan(0.1);
});

test("separatedShare() runs from attached to separated", () => {
  const degrees = [0, 8, 16.5, 25, 90].map((angle) => separatedShare((angle * Math.PI) / 180));
  [0, 0, 0.5, 1, 1].forEach((share, i) => {
    expect(degrees[i]).toBeCloseTo(share, 12);
  });
});

test("transitionDrag() is at most that of a step, and nothing for a slender boat-tail", () => {
  const boatTail = (length: number) =>
    transitionDrag({ kind: "transition", start: 1, end: 1 + length, foreDiameter: 0.1, aftDiameter: 0.06 }, 0.1);
  expect(boatTail(0.3)(0.5)).toBe(0);
  expect(boatTail(0.3)(0.8)).toBe(0);
  expect(boatTail(0.3)(1.5)).toBeGreaterThan(0);
  expect(boatTail(0.3)(1.5)).toBeLessThan((1 - 0.36) * baseDragCoasting(1.5));
  expect(boatTail(0.001)(0.5)).toBeCloseTo((1 - 0.36) * baseDragCoasting(0.5), 12);
  expect(boatTail(0.08)(0.5)).toBeLessThan(boatTail(0.05)(0.5));
});

test("transitionDrag() of a shoulder is that of the nose's cone on the ring it adds", () => {
  const shoulder = { kind: "transition", start: 0.5, end: 0.6, foreDiameter: 0.06, aftDiameter: 0.1 } as const;
  const angle = Math.atan(0.2);
  for (const mach of machs)
    expect(transitionDrag(shoulder, 0.06)(mach)).toBeCloseTo(
      ((0.01 - 0.0036) / 0.0036) * wideningDrag(angle, angle)(mach),
      12,
    );
});

test("fittingDrag() takes the usual size unless one is given", () => {
  const area = (Math.PI * 0.01) / 4;
  expect(fittingDrag({ kind: "rail button", at: 1 }, 0.1, 0)).toBeCloseTo((1.1 * 80e-6) / area, 12);
  expect(fittingDrag({ kind: "launch lug", at: 1, frontalArea: 1e-4 }, 0.1, 0)).toBeCloseTo(1.2e-4 / area, 12);
  expect(Object.keys(fittingData)).toHaveLength(3);
});
