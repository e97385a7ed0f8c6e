import { expect, test } from "vitest";
import { noseNormalForce } from "../../src/rocket/normal-force/nose.js";
import { noseRadius, noseVolumeFraction } from "../../src/rocket/nose-shape.js";
import { integrateUnit } from "../../src/rocket/quadrature.js";
import type { NoseShape } from "../../src/rocket/rocket.js";
import { closed, ogives } from "./rows.js";

test("noseVolumeFraction() gives the closed forms, and its profile integrates to them (SOURCE.md)", () => {
  expect(closed).toHaveLength(7);
  for (const [shape, fraction] of closed) {
    expect(Math.abs(noseVolumeFraction(shape, 5) - fraction), JSON.stringify(shape)).toBeLessThan(1e-12);
    // the quadrature's own accuracy, 1e-11
    const integrated = integrateUnit((s) => noseRadius(shape, 5, s) ** 2);
    expect(Math.abs(integrated - fraction), JSON.stringify(shape)).toBeLessThan(1e-11);
    expect(noseNormalForce({ shape, length: 0.3 }, 0.06).at / 0.3).toBeCloseTo(1 - fraction, 12);
  }
});

test("noseVolumeFraction() gives the tangent ogives' nine decimals (SOURCE.md)", () => {
  expect(ogives).toHaveLength(7);
  for (const [fineness, fraction, place] of ogives) {
    const shape: NoseShape = { kind: "ogive" };
    // half of the ninth decimal would be 5e-10; the source states 1e-9
    expect(Math.abs(noseVolumeFraction(shape, fineness) - fraction), `L/D ${fineness}`).toBeLessThan(1e-9);
    const { at } = noseNormalForce({ shape, length: fineness }, 1);
    expect(Math.abs(at / fineness - place), `L/D ${fineness}`).toBeLessThan(1e-9);
    expect(Math.abs(integrateUnit((s) => noseRadius(shape, fineness, s) ** 2) - fraction)).toBeLessThan(1e-9);
  }
});
