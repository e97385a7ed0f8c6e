import { expect, test } from "vitest";
import { sobolInteger } from "../../src/spread/sobol.js";
import { pickFreeze } from "../../test/pick-freeze.js";

/** SOURCE.md: check values, section 13; closed form. */
const row = {
  mean: 3.5,
  variance: 13.844587941,
  first: [0.313905191, 0.442411145, 0],
  total: [0.557588855, 0.442411145, 0.243683664],
};

const ishigami = (x: Float64Array) => Math.sin(x[0]!) + 7 * Math.sin(x[1]!) ** 2 + 0.1 * x[2]! ** 4 * Math.sin(x[0]!);

test("pickFreeze() gives the shares of the Ishigami function", () => {
  expect(Object.values(row).flat()).toHaveLength(8);
  const count = 16384;
  const point = (n: number, from: number) =>
    Float64Array.from({ length: 3 }, (_, i) => Math.PI * (2 * ((sobolInteger(n, from + i) + 0.5) / 2 ** 32) - 1));
  const a = Array.from({ length: count }, (_, n) => point(n, 0));
  const b = Array.from({ length: count }, (_, n) => point(n, 3));
  const got = pickFreeze(ishigami, a, b, [0, 1, 2], 3);
  // 16384 quasi-random points: some parts in ten thousand
  expect(Math.abs(got.mean - row.mean)).toBeLessThan(1e-3);
  expect(Math.abs(got.variance / row.variance - 1)).toBeLessThan(1e-3);
  for (let i = 0; i < 3; i++) {
    expect(Math.abs(got.first[i]! - row.first[i]!), `first ${i}: ${got.first[i]}`).toBeLessThan(2e-3);
    expect(Math.abs(got.total[i]! - row.total[i]!), `total ${i}: ${got.total[i]}`).toBeLessThan(2e-3);
  }
});

test("the shares of the Ishigami function follow from its closed form", () => {
  // V1 = (1 + b pi⁴/5)²/2, V2 = a²/8, V13 = b² pi⁸ (1/18 − 1/50)
  const v1 = 0.5 * (1 + (0.1 * Math.PI ** 4) / 5) ** 2;
  const v2 = 49 / 8;
  const v13 = 0.01 * Math.PI ** 8 * (1 / 18 - 1 / 50);
  const variance = v1 + v2 + v13;
  const close = (value: number, printed: number) => expect(Math.abs(value - printed)).toBeLessThan(1e-8);
  close(variance, row.variance);
  close(v1 / variance, row.first[0]!);
  close(v2 / variance, row.first[1]!);
  close((v1 + v13) / variance, row.total[0]!);
  close(v13 / variance, row.total[2]!);
});
