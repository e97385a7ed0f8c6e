import { expect, test } from "vitest";
import { thicknessWaveDrag } from "../../src/rocket/drag/fins.js";
import { busemann } from "../../src/rocket/supersonic/busemann.js";
import {
  machAfterTurn,
  machAtPressure,
  prandtlMeyerAngle,
  pressureOverStagnation,
  stagnationAcrossShock,
} from "../../src/rocket/supersonic/gas.js";
import { expansionPressure, turnByQuadrature, wedgePressure, worstFacetDifference } from "./plane-flow.js";

const degree = Math.PI / 180;
const machs = [1.1, 1.5, 2, 3, 5] as const;

test("prandtlMeyerAngle() is the quadrature of its own equation to 1e-9, and machAfterTurn() turns it back", () => {
  for (const mach of machs) {
    expect(Math.abs(prandtlMeyerAngle(mach) - turnByQuadrature(mach))).toBeLessThan(1e-9);
    expect(machAfterTurn(prandtlMeyerAngle(mach), 1.3)).toBeCloseTo(mach, 8);
    expect(machAtPressure(pressureOverStagnation(mach))).toBeCloseTo(mach, 10);
  }
  expect(machAfterTurn(-0.1, 2)).toBe(1);
});

test("the gas relations print as the tables of NACA Report 1135 do (memory)", () => {
  const rows = [
    [2, 26.38, 0.1278, 0.7209],
    [3, 49.76, 0.02722, 0.3283],
  ] as const;
  for (const [mach, turn, pressure, stagnation] of rows) {
    expect(Math.abs(prandtlMeyerAngle(mach) / degree - turn)).toBeLessThan(0.005);
    expect(Math.abs(pressureOverStagnation(mach) / pressure - 1)).toBeLessThan(5e-4);
    expect(Math.abs(stagnationAcrossShock(mach) / stagnation - 1)).toBeLessThan(5e-4);
  }
});

test("wedgePressure() has the shock of the charts: Mach 2 and 10 degrees give p2/p1 1.707 (memory)", () => {
  expect(Math.abs(1 + 2.8 * wedgePressure(2, 10 * degree) - 1.707)).toBeLessThan(0.002);
  expect(wedgePressure(1.2, 20 * degree)).toBeNaN();
});

test("busemann() leaves an error of third order: halving the angle divides it by eight", () => {
  for (const mach of [1.5, 2, 3]) {
    const { first, second } = busemann(mach);
    const left = (exact: number, angle: number) => exact - first * angle - second * angle ** 2;
    const wedge = left(wedgePressure(mach, 0.02), 0.02) / left(wedgePressure(mach, 0.01), 0.01);
    const expansion = left(expansionPressure(mach, 0.02), -0.02) / left(expansionPressure(mach, 0.01), -0.01);
    expect(Math.abs(wedge - 8), `Mach ${mach}`).toBeLessThan(1);
    expect(Math.abs(expansion - 8), `Mach ${mach}`).toBeLessThan(1);
  }
});

test("busemann() differs from exact wedges and expansions of up to 4 degrees by less than 5 % of the pressure", () => {
  expect(worstFacetDifference(busemann)).toBeLessThan(0.05);
});

test("thicknessWaveDrag() of a wide double wedge is that of its exact shocks and expansions within 3 %", () => {
  const wide = { kind: "trapezoid", root: 1, tip: 1, span: 2, sweep: 0 } as const;
  const section = { leading: "sharp", trailing: "sharp" } as const;
  for (const mach of [1.7, 2.15]) {
    const angle = 0.03;
    const front = wedgePressure(mach, angle);
    // behind the ridge the flow turns by twice the angle from the Mach number behind the shock; isentropic at 0.03 rad
    const rear = expansionPressure(mach, angle);
    const exact = angle * (front - rear);
    expect(Math.abs(thicknessWaveDrag(wide, section, angle)(mach) / exact - 1), `Mach ${mach}`).toBeLessThan(0.03);
  }
});
