/**
 * Lower triangle L of a symmetric positive matrix, L Lᵀ.
 *
 * @param matrix row-major, size × size; its lower triangle is read
 * @returns null where the matrix is not positive, or within rounding of it
 * @source Golub and Van Loan, Matrix Computations, 4.2 (memory)
 * @example
 * cholesky(Float64Array.of(4, 2, 2, 5), 2); // [2, 0, 1, 2]
 */
export function cholesky(matrix: Float64Array, size: number): Float64Array | null {
  const lower = new Float64Array(size * size);
  for (let i = 0; i < size; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = matrix[i * size + j]!;
      for (let k = 0; k < j; k++) sum -= lower[i * size + k]! * lower[j * size + k]!;
      if (i !== j) lower[i * size + j] = sum / lower[j * size + j]!;
      else if (sum > 1e-14 * matrix[i * size + i]!) lower[i * size + i] = Math.sqrt(sum);
      else return null;
    }
  }
  return lower;
}

/** Solves L x = right for a lower triangle. */
export function solveLower(lower: Float64Array, right: Float64Array): Float64Array {
  const size = right.length;
  const x = Float64Array.from(right);
  for (let i = 0; i < size; i++) {
    let sum = x[i]!;
    for (let k = 0; k < i; k++) sum -= lower[i * size + k]! * x[k]!;
    x[i] = sum / lower[i * size + i]!;
  }
  return x;
}

/** Solves Lᵀ x = right for a lower triangle. */
export function solveUpper(lower: Float64Array, right: Float64Array): Float64Array {
  const size = right.length;
  const x = Float64Array.from(right);
  for (let i = size - 1; i >= 0; i--) {
    let sum = x[i]!;
    for (let k = i + 1; k < size; k++) sum -= lower[k * size + i]! * x[k]!;
    x[i] = sum / lower[i * size + i]!;
  }
  return x;
}
