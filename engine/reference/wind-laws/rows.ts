/** Height [m], reference height [m], exponent, ratio, tolerance: the digits printed. */
export const powerRows = [
  [100, 10, 1 / 7, 1.3894955, 1e-7],
  [100, 10, 0.1, 1.258925, 1e-6],
  [100, 10, 0.16, 1.44544, 1e-6],
  [100, 10, 0.2, 1.584893, 1e-6],
  [100, 10, 0.34, 2.187762, 1e-6],
  [10, 2, 1 / 7, 1.258499, 1e-6],
  [10, 2, 0.16, 1.293705, 1e-6],
] as const;
