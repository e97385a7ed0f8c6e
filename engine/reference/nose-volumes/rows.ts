import type { NoseShape } from "../../src/rocket/rocket.js";

export const closed: readonly (readonly [shape: NoseShape, fraction: number])[] = [
  [{ kind: "cone" }, 1 / 3],
  [{ kind: "power", exponent: 0.5 }, 1 / 2],
  [{ kind: "power", exponent: 0.75 }, 0.4],
  [{ kind: "parabola" }, 8 / 15],
  [{ kind: "ellipsoid" }, 2 / 3],
  [{ kind: "haack", c: 0 }, 1 / 2],
  [{ kind: "haack", c: 1 / 3 }, 9 / 16],
];

export const ogives: readonly (readonly [fineness: number, fraction: number, place: number])[] = [
  [1.5, 0.54996304, 0.45003696],
  [2, 0.542760126, 0.457239874],
  [3, 0.537546737, 0.462453263],
  [4, 0.53570812, 0.46429188],
  [5, 0.534854612, 0.465145388],
  [6, 0.534390313, 0.465609687],
  [8, 0.533928184, 0.466071816],
];
