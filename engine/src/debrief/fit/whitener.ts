/**
 * Makes residuals whose errors hang together alike and independent: L⁻¹ r, where L Lᵀ is their covariance. A plain fit of what it
 * gives is the generalised least squares of what it takes.
 *
 * @param alone one sigma of each residual by itself
 * @param together covariance of what hangs together, of two residuals by their places
 * @source A. C. Aitken, Proc. R. Soc. Edinb. 55 (1936), memory; Cholesky's factor
 */
export function whitenerOf(
  alone: Float64Array,
  together: (i: number, j: number) => number,
): (residuals: Float64Array) => Float64Array {
  const n = alone.length;
  const l = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j <= i; j++) {
      let sum = together(i, j) + (i === j ? alone[i]! ** 2 : 0);
      for (let k = 0; k < j; k++) sum -= l[i * n + k]! * l[j * n + k]!;
      l[i * n + j] = i === j ? Math.sqrt(sum) : sum / l[j * n + j]!;
    }
  return (r) => {
    const w = Float64Array.from(r);
    for (let i = 0; i < n; i++) {
      for (let k = 0; k < i; k++) w[i]! -= l[i * n + k]! * w[k]!;
      w[i]! /= l[i * n + i]!;
    }
    return w;
  };
}
