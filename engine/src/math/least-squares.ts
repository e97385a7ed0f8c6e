/**
 * Prepares fits of `rows · x ≈ values` by Cholesky factoring of the normal equations, done once for many values.
 *
 * For well-scaled columns (condition number below about 1e6). Columns that depend on earlier ones get the coefficient 0.
 *
 * @param rows row-major, count × columns
 * @param columns columns in a row, ≥ 1
 * @returns a function from values, length count, to coefficients, length columns
 * @source normal equations, for example Golub and Van Loan, Matrix Computations, 5.3
 * @example
 * leastSquares(Float64Array.of(1, 0, 1, 1, 1, 2), 2)(Float64Array.of(1, 3, 5)); // [1, 2]
 */
export function leastSquares(rows: Float64Array, columns: number): (values: Float64Array) => Float64Array {
  const lower = factor(gramOf(rows, columns), columns);
  return (values) => {
    const x = new Float64Array(columns);
    for (let r = 0; r < values.length; r++) {
      const value = values[r]!;
      const o = r * columns;
      for (let i = 0; i < columns; i++) x[i]! += rows[o + i]! * value;
    }
    for (let i = 0; i < columns; i++) {
      let sum = x[i]!;
      for (let k = 0; k < i; k++) sum -= lower[i * columns + k]! * x[k]!;
      x[i] = lower[i * columns + i]! > 0 ? sum / lower[i * columns + i]! : 0;
    }
    for (let i = columns - 1; i >= 0; i--) {
      let sum = x[i]!;
      for (let k = i + 1; k < columns; k++) sum -= lower[k * columns + i]! * x[k]!;
      x[i] = lower[i * columns + i]! > 0 ? sum / lower[i * columns + i]! : 0;
    }
    return x;
  };
}

/** Lower triangle of rowsᵀ rows, four rows at a time. */
function gramOf(rows: Float64Array, columns: number): Float64Array {
  const gram = new Float64Array(columns * columns);
  const count = rows.length / columns;
  let r = 0;
  for (; r + 3 < count; r += 4) {
    const o0 = r * columns;
    const o1 = o0 + columns;
    const o2 = o1 + columns;
    const o3 = o2 + columns;
    for (let i = 0; i < columns; i++) {
      const [a, b, c, d] = [rows[o0 + i]!, rows[o1 + i]!, rows[o2 + i]!, rows[o3 + i]!];
      const g = i * columns;
      for (let j = 0; j <= i; j++)
        gram[g + j]! += a * rows[o0 + j]! + b * rows[o1 + j]! + c * rows[o2 + j]! + d * rows[o3 + j]!;
    }
  }
  for (; r < count; r++) {
    const o = r * columns;
    for (let i = 0; i < columns; i++)
      for (let j = 0; j <= i; j++) gram[i * columns + j]! += rows[o + i]! * rows[o + j]!;
  }
  return gram;
}

/** Cholesky factor in place; a column that depends on earlier ones gets a zero diagonal. */
function factor(gram: Float64Array, columns: number): Float64Array {
  for (let i = 0; i < columns; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = gram[i * columns + j]!;
      for (let k = 0; k < j; k++) sum -= gram[i * columns + k]! * gram[j * columns + k]!;
      if (i !== j) gram[i * columns + j] = gram[j * columns + j]! > 0 ? sum / gram[j * columns + j]! : 0;
      else gram[i * columns + i] = sum > 1e-10 * gram[i * columns + i]! ? Math.sqrt(sum) : 0;
    }
  }
  return gram;
}
