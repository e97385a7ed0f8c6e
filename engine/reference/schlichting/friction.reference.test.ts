import { expect, test } from "vitest";
import {
  fullyRoughFriction,
  laminarFriction,
  transitionalFriction,
  turbulentFriction,
} from "../../src/rocket/drag/friction.js";

type Law = (at: number) => number;
type Row = readonly [at: number, printed: number];

const laws: readonly (readonly [name: string, law: Law, rows: readonly Row[]])[] = [
  [
    "laminarFriction",
    laminarFriction,
    [
      [1e5, 0.0041995],
      [5e5, 0.00187808],
      [1e6, 0.001328],
    ],
  ],
  [
    "turbulentFriction",
    turbulentFriction,
    [
      [1e6, 0.00447076],
      [3e6, 0.00366983],
      [1e7, 0.00300371],
    ],
  ],
  [
    "transitionalFriction",
    transitionalFriction,
    [
      [1e6, 0.00277076],
      [3e6, 0.00310316],
      [1e7, 0.00283371],
    ],
  ],
  [
    "fullyRoughFriction",
    fullyRoughFriction,
    [
      [1e3, 0.00844774],
      [1e4, 0.00493385],
      [1e5, 0.0031702],
      [1e6, 0.00217731],
    ],
  ],
];

test.each(laws)("%s() gives the printed values (SOURCE.md)", (_, law, rows) => {
  for (const [at, printed] of rows) expect(Math.abs(law(at) - printed), `at ${at}`).toBeLessThan(1e-7);
});

test("the reference laws of friction have all their rows", () => {
  expect(laws.flatMap(([, , rows]) => rows)).toHaveLength(13);
});
