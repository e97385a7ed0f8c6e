/** Below this Mach number the closed form loses digits and its series is exact to 1e-9. */
const SERIES_LIMIT = 0.1;

/**
 * Pressure at a stagnation point above the free stream's, over the dynamic pressure.
 *
 * Air with a ratio of specific heats of 1.4. Above Mach 1 behind a normal shock.
 *
 * @param mach ≥ 0
 * @returns 1 at Mach 0, rising towards 1.84
 * @source isentropic flow (series 1 + M²/4 + M⁴/40 + …); above Mach 1 Rayleigh's pitot formula
 * @example
 * stagnationPressureRatio(1); // 1.2756131
 */
export function stagnationPressureRatio(mach: number): number {
  const square = mach * mach;
  if (mach < SERIES_LIMIT) return 1 + square / 4 + (square * square) / 40;
  const dynamic = 0.7 * square;
  if (mach <= 1) return ((1 + 0.2 * square) ** 3.5 - 1) / dynamic;
  const behindShock = ((5.76 * square) / (5.6 * square - 0.8)) ** 3.5 * ((2.8 * square - 0.4) / 2.4);
  return (behindShock - 1) / dynamic;
}
