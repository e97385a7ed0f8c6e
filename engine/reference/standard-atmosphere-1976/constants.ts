/** Layer bases: geopotential altitude [m], temperature [K], pressure [Pa] or null where none is printed. US76, verified. */
export const bases: readonly (readonly [altitude: number, temperature: number, pressure: number | null])[] = [
  [0, 288.15, 101_325],
  [11_000, 216.65, 22_632],
  [20_000, 216.65, 5_474.8],
  [32_000, 228.65, 868.01],
  [47_000, 270.65, 110.9],
  [51_000, 270.65, null],
  [71_000, 214.65, null],
];

/** Lapse rates [K/m] from each base up. US76, verified. */
export const lapses = [-0.0065, 0, 0.001, 0.0028, 0, -0.0028, -0.002];
