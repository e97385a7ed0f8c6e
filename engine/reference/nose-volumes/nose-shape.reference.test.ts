import { expect, test } from "vitest";
import { noseNormalForce } from "../../src/rocket/normal-force/nose.js";
import { noseRadius, noseVolumeFraction } from "../../src/rocket/nose-shape.js";
import { integrateUnit } from "../../src/rocket/quadrature.js";
import type { NoseShape } from "../../src/rocket/rocket.js";

const closed: readonly (readonly [shape: NoseShape, fraction: number])[] = [
  [{ kind: "cone" }, 1 / 3],
  [{ kind: "power", exponent: 0.5 }, 1 / 2],
  [{ kind: "power", exponent: 0.75 }, 0.4],
  [{ kind: "parabola" }, 8 / 15],
  [{ kind: "ellipsoid" }, 2 / 3],
  [{ kind: "haack", c: 0 }, 1 / 2],
  [{ kind: "haack", c: 1 / 3 }, 9 / 16],
];

const ogives: readonly (readonly [fineness: number, fraction: number, place: number])[] = [
  [1.5, 0.54996304, 0.45003696],
  [2, 0.542760126, 0.457239874],
  [3, 0.537546737, 0.462453263],
  [4, 0.53570812, 0.46429188],
  [5, 0.534854612, 0.465145388],
  [6, 0.534390313, 0.465609687],
  [8, 0.533928184, 0.466071816],
];

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
