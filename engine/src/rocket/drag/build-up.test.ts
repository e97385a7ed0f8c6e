import fc from "fast-check";
import { expect, test } from "vitest";
import { exampleRocket } from "../example-rocket.js";
import type { Rocket } from "../rocket.js";
import { dragBreakdown, dragBuildUp } from "./build-up.js";

const motor = { diameter: 0.038 };
const sea = (mach: number, thrusting = false) => ({ mach, reynoldsPerMetre: (mach * 340) / 1.46e-5, thrusting });
const [fins] = exampleRocket.finSets;
if (!fins) throw new Error("the example has fins");
const busy: Rocket = {
  ...exampleRocket,
  nose: { shape: { kind: "cone" }, length: 0.2 },
  transitions: [
    { at: 0.6, length: 0.1, aftDiameter: 0.08 },
    { at: 1.44, length: 0.06, aftDiameter: 0.05 },
  ],
  finSets: [{ ...fins, at: 1.2, leadingEdge: "sharp" }],
  fittings: [{ kind: "launch lug", at: 1 }],
};

test("dragBreakdown() adds up to dragBuildUp()", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(exampleRocket, busy),
      fc.double({ min: 0, max: 5, noNaN: true }),
      fc.double({ min: 0, max: 1e8, noNaN: true }),
      fc.boolean(),
      (rocket, mach, reynoldsPerMetre, thrusting) => {
        const state = { mach, reynoldsPerMetre, thrusting };
        const parts = dragBreakdown(rocket, motor)(state);
        const sum = Object.values(parts).reduce((all, part: number) => all + part, 0);
        const whole = dragBuildUp(rocket, motor)(state);
        expect(whole).toBeCloseTo(sum, 12);
        expect(Number.isFinite(whole) && whole > 0).toBe(true);
        for (const [name, part] of Object.entries(parts)) expect(part, name).toBeGreaterThanOrEqual(0);
      },
    ),
  );
});

test("dragBuildUp() of the example lies where such rockets' drag is found: 0.4 to 0.9 below the drag rise (common practice)", () => {
  const drag = dragBuildUp(exampleRocket, motor);
  for (const mach of [0.1, 0.3, 0.5, 0.7]) {
    expect(drag(sea(mach))).toBeGreaterThan(0.4);
    expect(drag(sea(mach))).toBeLessThan(0.9);
  }
});

test("dragBuildUp() of a body without fins is base drag plus friction and 0.15 to 0.25 (blunt-based ogive-cylinder; memory, 30 %)", () => {
  const { bodyFriction, finFriction, finEdges, base, nose } = dragBreakdown(
    { ...exampleRocket, finSets: [], fittings: [], statedCp: 1 },
    motor,
  )(sea(0.5));
  expect(finFriction + finEdges + nose).toBe(0);
  expect(base).toBeGreaterThan(0.15 * 0.7);
  expect(base).toBeLessThan(0.25 * 1.3);
  expect(bodyFriction).toBeGreaterThan(0);
});

test("dragBuildUp() falls under thrust, rises through Mach 1 and grows with roughness", () => {
  const drag = dragBuildUp(exampleRocket, motor);
  expect(drag(sea(0.5, true))).toBeLessThan(drag(sea(0.5)));
  expect(drag(sea(1.2))).toBeGreaterThan(drag(sea(0.8)));
  expect(dragBuildUp({ ...exampleRocket, roughness: 2e-4 }, motor)(sea(0.5))).toBeGreaterThan(drag(sea(0.5)));
  expect(dragBuildUp({ ...exampleRocket, roughness: 0 }, motor)(sea(0.5))).toBeLessThan(drag(sea(0.5)));
});

test("dragBuildUp() counts every fin", () => {
  const four = dragBreakdown({ ...exampleRocket, finSets: [{ ...fins, count: 4 }] }, motor)(sea(0.5));
  const three = dragBreakdown(exampleRocket, motor)(sea(0.5));
  expect(four.finFriction / three.finFriction).toBeCloseTo(4 / 3, 12);
  expect(four.finEdges / three.finEdges).toBeCloseTo(4 / 3, 12);
});

test("dragBuildUp() is positive and has no jump in value or slope over Mach 0 to 3, coasting and under thrust", () => {
  for (const rocket of [
    exampleRocket,
    busy,
    { ...busy, finSets: [{ ...fins, leadingEdge: "sharp", trailingEdge: "sharp" }] },
  ] as const)
    for (const thrusting of [false, true]) {
      const drag = dragBuildUp(rocket, motor);
      const at = (mach: number) => drag({ mach, reynoldsPerMetre: 2e7, thrusting });
      for (let mach = 0.005; mach < 3; mach += 0.005) {
        const h = 1e-5;
        const [left, middle, right] = [at(mach - h), at(mach), at(mach + h)];
        expect(middle).toBeGreaterThan(0);
        expect(Math.abs(right - left), `Mach ${mach}`).toBeLessThan(1e-4);
        expect(Math.abs(right - 2 * middle + left) / h, `Mach ${mach}`).toBeLessThan(2e-3);
      }
    }
});
