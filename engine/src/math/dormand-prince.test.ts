import { expect, test } from "vitest";
import { dormandPrince } from "./dormand-prince.js";

const a = [[], ...dormandPrince.matrix] as readonly (readonly number[])[];
const c = dormandPrince.nodes;
const b = [...dormandPrince.matrix[5], 0];
const A = (i: number, j: number) => a[i]?.[j] ?? 0;
const all = [0, 1, 2, 3, 4, 5, 6];
const sum = (f: (i: number) => number) => all.reduce((s, i) => s + f(i), 0);
const C = (i: number) => c[i] as number;
const Ac = (p: number) => (i: number) => sum((j) => A(i, j) * C(j) ** p);

// The conditions of order p: Hairer, Nørsett, Wanner, Solving ODEs I (1993), table II.2.1; Butcher's trees.
const conditions: readonly [order: number, weight: (i: number) => number, value: number][] = [
  [1, () => 1, 1],
  [2, C, 1 / 2],
  [3, (i) => C(i) ** 2, 1 / 3],
  [3, Ac(1), 1 / 6],
  [4, (i) => C(i) ** 3, 1 / 4],
  [4, (i) => C(i) * Ac(1)(i), 1 / 8],
  [4, Ac(2), 1 / 12],
  [4, (i) => sum((j) => A(i, j) * Ac(1)(j)), 1 / 24],
  [5, (i) => C(i) ** 4, 1 / 5],
  [5, (i) => C(i) ** 2 * Ac(1)(i), 1 / 10],
  [5, (i) => Ac(1)(i) ** 2, 1 / 20],
  [5, (i) => C(i) * Ac(2)(i), 1 / 15],
  [5, (i) => C(i) * sum((j) => A(i, j) * Ac(1)(j)), 1 / 30],
  [5, Ac(3), 1 / 20],
  [5, (i) => sum((j) => A(i, j) * C(j) * Ac(1)(j)), 1 / 40],
  [5, (i) => sum((j) => A(i, j) * Ac(2)(j)), 1 / 60],
  [5, (i) => sum((j) => A(i, j) * sum((k) => A(j, k) * Ac(1)(k))), 1 / 120],
];

test("dormandPrince fulfils all 17 conditions of order 5", () => {
  expect(conditions).toHaveLength(17);
  for (const [order, weight, value] of conditions)
    expect(Math.abs(sum((i) => (b[i] as number) * weight(i)) - value), `order ${order}`).toBeLessThan(1e-15);
  for (const i of all) expect(Math.abs(sum((j) => A(i, j)) - C(i))).toBeLessThan(2e-15);
});

test("dormandPrince: the embedded solution is of order 4 and not of order 5", () => {
  const e = dormandPrince.error;
  for (const [order, weight] of conditions.filter(([order]) => order <= 4))
    expect(Math.abs(sum((i) => (e[i] as number) * weight(i))), `order ${order}`).toBeLessThan(1e-15);
  expect(Math.abs(sum((i) => (e[i] as number) * C(i) ** 4))).toBeGreaterThan(1e-5);
});
