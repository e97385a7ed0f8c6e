/** Relations of a perfect gas with a ratio of specific heats of 1.4, in supersonic flow. Angles in rad. */

const SPAN = Math.sqrt(6);

/**
 * Angle through which sonic flow turns to reach a Mach number.
 *
 * @param mach ≥ 1
 * @returns [rad], 0…2.277
 * @source L. Prandtl, Th. Meyer, 1908; NACA Report 1135 (1953), eq. 171c
 * @example
 * prandtlMeyerAngle(2); // 0.4604136 (26.3798°)
 */
export function prandtlMeyerAngle(mach: number): number {
  const beta = Math.sqrt(Math.max(0, mach * mach - 1));
  return SPAN * Math.atan(beta / SPAN) - Math.atan(beta);
}

/**
 * Mach number that sonic flow has after turning through an angle.
 *
 * @param angle [rad], 0…2.1
 * @param guess a Mach number near it, > 1
 * @returns ≥ 1, to 1e-9
 * @example
 * machAfterTurn(0.4604136, 1.5); // 2
 */
export function machAfterTurn(angle: number, guess: number): number {
  if (angle <= 0) return 1;
  let mach = Math.max(guess, 1.001);
  for (let k = 0; k < 40; k++) {
    const slope = Math.sqrt(mach * mach - 1) / (mach * (1 + 0.2 * mach * mach));
    const step = (angle - prandtlMeyerAngle(mach)) / slope;
    mach = Math.max(1 + (mach - 1) / 4, mach + step);
    if (Math.abs(step) < 1e-9 * mach) break;
  }
  return mach;
}

/**
 * Pressure over stagnation pressure.
 *
 * @param mach ≥ 0
 * @source isentropic flow; NACA Report 1135 (1953), eq. 44
 * @example
 * pressureOverStagnation(2); // 0.1278045
 */
export function pressureOverStagnation(mach: number): number {
  return (1 + 0.2 * mach * mach) ** -3.5;
}

/**
 * Mach number at a pressure over stagnation pressure.
 *
 * @param ratio 0…1
 * @example
 * machAtPressure(0.1278045); // 2
 */
export function machAtPressure(ratio: number): number {
  return Math.sqrt(5 * (ratio ** (-1 / 3.5) - 1));
}

/**
 * Stagnation pressure behind a shock over that before it.
 *
 * @param normalMach Mach number across the shock, ≥ 1
 * @source NACA Report 1135 (1953), eq. 99
 * @example
 * stagnationAcrossShock(2); // 0.7208739
 */
export function stagnationAcrossShock(normalMach: number): number {
  const square = normalMach * normalMach;
  return ((6 * square) / (square + 5)) ** 3.5 * (6 / (7 * square - 1)) ** 2.5;
}
