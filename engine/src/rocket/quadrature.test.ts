import { expect, test } from "vitest";
import { integrateUnit } from "./quadrature.js";

test("integrateUnit() is exact for polynomials up to rounding", () => {
  for (let n = 0; n <= 30; n++)
    expect(
      integrateUnit((s) => s ** n),
      `s^${n}`,
    ).toBeCloseTo(1 / (n + 1), 13);
});

test("integrateUnit() follows roots and powers at both ends to 1e-11", () => {
  const accuracy = 1e-11; // what the doc comment claims
  for (const n of [0.2, 0.5, 0.75, 1.5]) {
    expect(Math.abs(integrateUnit((s) => s ** n) - 1 / (n + 1))).toBeLessThan(accuracy);
    expect(Math.abs(integrateUnit((s) => (1 - s) ** n) - 1 / (n + 1))).toBeLessThan(accuracy);
  }
});
