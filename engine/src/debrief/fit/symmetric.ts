/** Solves a symmetric positive system; null where it is not. */
export function solved(matrix: Float64Array, right: Float64Array): Float64Array | null {
  const n = right.length;
  const l = Float64Array.from(matrix);
  const x = Float64Array.from(right);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = l[i * n + j]!;
      for (let k = 0; k < j; k++) sum -= l[i * n + k]! * l[j * n + k]!;
      if (i !== j) l[i * n + j] = sum / l[j * n + j]!;
      else if (!(sum > 0)) return null;
      else l[i * n + i] = Math.sqrt(sum);
    }
  }
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < i; k++) x[i]! -= l[i * n + k]! * x[k]!;
    x[i]! /= l[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    for (let k = i + 1; k < n; k++) x[i]! -= l[k * n + i]! * x[k]!;
    x[i]! /= l[i * n + i]!;
  }
  return x;
}

/** Inverse of a symmetric positive matrix; infinite variances where it is not. */
export function inverse(matrix: Float64Array, n: number): Float64Array {
  const out = new Float64Array(n * n);
  for (let k = 0; k < n; k++) {
    const unit = new Float64Array(n);
    unit[k] = 1;
    const column = solved(matrix, unit);
    for (let i = 0; i < n; i++)
      out[i * n + k] = column === null ? (i === k ? Number.POSITIVE_INFINITY : 0) : column[i]!;
  }
  return out;
}
