import { expect, test } from "vitest";
import { cholesky, solveLower, solveUpper } from "./cholesky.js";

const matrix = Float64Array.of(4, 2, -2, 2, 5, 1, -2, 1, 6);

test("cholesky() gives a triangle whose product is the matrix", () => {
  const l = cholesky(matrix, 3)!;
  for (let i = 0; i < 3; i++)
    for (let j = 0; j < 3; j++) {
      let sum = 0;
      for (let k = 0; k < 3; k++) sum += l[3 * i + k]! * l[3 * j + k]!;
      expect(sum).toBeCloseTo(matrix[3 * i + j]!, 13);
    }
});

test("solveLower() and solveUpper() together undo the matrix", () => {
  const l = cholesky(matrix, 3)!;
  const x = solveUpper(l, solveLower(l, Float64Array.of(1, 2, 3)));
  const back = [0, 1, 2].map((i) => [0, 1, 2].reduce((sum, j) => sum + matrix[3 * i + j]! * x[j]!, 0));
  for (const i of [0, 1, 2]) expect(back[i]).toBeCloseTo(i + 1, 12);
});

test("cholesky() of a matrix that is not positive is null", () => {
  expect(cholesky(Float64Array.of(1, 2, 2, 1), 2)).toBeNull();
  expect(cholesky(Float64Array.of(Number.NaN), 1)).toBeNull();
});
