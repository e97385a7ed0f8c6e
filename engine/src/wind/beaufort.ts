/** Least wind speed of forces 1 to 12 [m/s]. */
const LEAST_SPEEDS = [0.3, 1.6, 3.4, 5.5, 8, 10.8, 13.9, 17.2, 20.8, 24.5, 28.5, 32.7];

/**
 * Beaufort force of a mean wind, by the limits in metres per second.
 *
 * Limits printed in knots or miles per hour are rounded apart from these by up to half a unit.
 *
 * @param speed mean wind 10 m above the ground [m/s], ≥ 0
 * @returns force, 0…12
 * @source the World Meteorological Organization's Beaufort scale
 * @example
 * beaufortForce(5); // 3
 */
export function beaufortForce(speed: number): number {
  return LEAST_SPEEDS.filter((least) => speed >= least).length;
}

/**
 * Mean wind that a Beaufort force stands for.
 *
 * @param force 0…12
 * @returns [m/s] at 10 m above the ground
 * @source v = 0.836 B^(3/2), the World Meteorological Organization's Beaufort scale
 * @example
 * beaufortSpeed(4); // 6.688
 */
export function beaufortSpeed(force: number): number {
  return 0.836 * force ** 1.5;
}
