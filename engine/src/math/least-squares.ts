/**
 * Coefficients that fit `rows · x ≈ values` best, by Cholesky factoring of the normal equations.
 *
 * For well-scaled columns (condition number below about 1e6). Columns that depend on earlier ones get the coefficient 0.
 *
 * @param rows row-major, count × columns
 * @param columns columns in a row, ≥ 1
 * @param values length count
 * @returns coefficients, length columns
 * @source normal equations, for example Golub and Van Loan, Matrix Computations, 5.3
 * @example
 * leastSquares(Float64Array.of(1, 0, 1, 1, 1, 2), 2, Float64Array.of(1, 3, 5)); // [1, 2]
 */
export function leastSquares(rows: Float64Array, columns: number, values: Float64Array): Float64Array {
  const gram = new Float64Array(columns * columns);
  const right = new Float64Array(columns);
  for (let r = 0; r < values.length; r++) {
    const o = r * columns;
    for (let i = 0; i < columns; i++) {
      const a = rows[o + i]!;
      right[i]! += a * values[r]!;
      for (let j = 0; j <= i; j++) gram[i * columns + j]! += a * rows[o + j]!;
    }
  }
  for (let i = 0; i < columns; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = gram[i * columns + j]!;
      for (let k = 0; k < j; k++) sum -= gram[i * columns + k]! * gram[j * columns + k]!;
      if (i !== j) gram[i * columns + j] = gram[j * columns + j]! > 0 ? sum / gram[j * columns + j]! : 0;
      else gram[i * columns + i] = sum > 1e-10 * Math.max(1e-300, gram[i * columns + i]!) ? Math.sqrt(sum) : 0;
    }
  }
  const x = new Float64Array(columns);
  for (let i = 0; i < columns; i++) {
    let sum = right[i]!;
    for (let k = 0; k < i; k++) sum -= gram[i * columns + k]! * x[k]!;
    x[i] = gram[i * columns + i]! > 0 ? sum / gram[i * columns + i]! : 0;
  }
  for (let i = columns - 1; i >= 0; i--) {
    let sum = x[i]!;
    for (let k = i + 1; k < columns; k++) sum -= gram[k * columns + i]! * x[k]!;
    x[i] = gram[i * columns + i]! > 0 ? sum / gram[i * columns + i]! : 0;
  }
  return x;
}
