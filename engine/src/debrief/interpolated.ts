/** First index whose value is at least `x`; the length where none is. `values` rise. */
export function firstAtLeast(values: Float64Array, x: number): number {
  let low = 0;
  let high = values.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[middle]! < x) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Linear between the points, the end values held outside. `xs` rise. */
export function interpolated(xs: Float64Array, ys: Float64Array, x: number): number {
  const i = firstAtLeast(xs, x);
  if (i === 0) return ys[0]!;
  if (i === xs.length) return ys[i - 1]!;
  const part = (x - xs[i - 1]!) / (xs[i]! - xs[i - 1]!);
  return ys[i - 1]! + (ys[i]! - ys[i - 1]!) * part;
}
