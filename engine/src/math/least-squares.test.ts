import fc from "fast-check";
import { expect, test } from "vitest";
import { leastSquares } from "./least-squares.js";

/** Rows 1, x, x² at x = 0 … count − 1 over count. */
function parabolaRows(count: number): Float64Array {
  return Float64Array.from({ length: 3 * count }, (_, i) => (Math.floor(i / 3) / count) ** (i % 3));
}

test("leastSquares() returns the coefficients of values that lie on the model, for every number of rows", () => {
  // 3 to 9 rows: whole fours, and every rest
  for (let count = 3; count <= 9; count++) {
    const rows = parabolaRows(count);
    const values = Float64Array.from({ length: count }, (_, r) => 2 - 3 * rows[3 * r + 1]! + 5 * rows[3 * r + 2]!);
    const x = leastSquares(rows, 3)(values);
    [2, -3, 5].forEach((expected, i) => {
      expect(Math.abs(x[i]! - expected)).toBeLessThan(1e-9);
    });
  }
});

test("leastSquares() leaves a residual at right angles to every column", () => {
  const rows = parabolaRows(40);
  fc.assert(
    fc.property(fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 40, maxLength: 40 }), (values) => {
      const x = leastSquares(rows, 3)(Float64Array.from(values));
      for (let column = 0; column < 3; column++) {
        let product = 0;
        for (let r = 0; r < 40; r++) {
          let residual = values[r]!;
          for (let i = 0; i < 3; i++) residual -= x[i]! * rows[3 * r + i]!;
          product += residual * rows[3 * r + column]!;
        }
        // rounding in normal equations whose condition number is some 1e4
        expect(Math.abs(product)).toBeLessThan(1e-9);
      }
    }),
  );
});

test("leastSquares() gives a column that depends on earlier ones the coefficient 0", () => {
  const rows = Float64Array.of(1, 0, 0, 1, 1, 2, 1, 2, 4, 1, 3, 6);
  const x = leastSquares(rows, 3)(Float64Array.of(1, 3, 5, 7));
  expect(x[0]).toBeCloseTo(1, 12);
  expect(x[1]).toBeCloseTo(2, 12);
  expect(x[2]).toBe(0);
});
