/** Air pressure on a pad, from 4,000 m above the sea down to the deepest low at sea level [Pa]. */
const LOWEST = 60_000;
const HIGHEST = 109_000;

const factors: readonly (readonly [string, number])[] = [
  ["Pa", 1],
  ["hPa", 100],
  ["kPa", 1000],
  ["inHg", 3386.389],
  ["psi", 6894.757],
  ["mmHg", 133.3224],
];

/**
 * The unit in which a figure is the pressure of air on a pad. Millimetres of mercury are also hectopascals: then these are taken.
 *
 * @param start the figure before lift-off
 * @returns null where it is none in any unit
 * @example
 * pressureUnitOf(987.4); // "hPa"
 */
export function pressureUnitOf(start: number): string | null {
  return factors.find(([, factor]) => start * factor >= LOWEST && start * factor <= HIGHEST)?.[0] ?? null;
}

/** Whether a figure in a unit of this factor is the pressure of air on a pad. */
export function isAirPressure(pascals: number): boolean {
  return pascals >= LOWEST && pascals <= HIGHEST;
}
