import { foot } from "./units.js";

/** Distances for rockets up to a total impulse. */
export interface DistanceRow {
  /** Installed total impulse, inclusive [N s]. */
  readonly upTo: number;
  /** Least distance of people from the pad [m]. */
  readonly single: number;
  /** The same where the rocket is complex: more than one motor, multistaged or clustered [m]. */
  readonly complex: number;
  /** Least diameter of ground cleared of what burns [m]; left out: no rule. */
  readonly cleared?: number;
}

/**
 * Minimum distances of the High Power Rocket Safety Code, H or smaller to O.
 *
 * @source High Power Rocket Safety Code, National Association of Rocketry, August 2012; single and complex as on a club's
 * table, cleared diameter for H as on a club's page, for the others from memory
 */
export const safetyCodeDistances: readonly DistanceRow[] = Object.freeze(
  (
    [
      [320, 50, 100, 200],
      [640, 50, 100, 200],
      [1280, 50, 100, 200],
      [2560, 75, 200, 300],
      [5120, 100, 300, 500],
      [10240, 125, 500, 1000],
      [20480, 125, 1000, 1500],
      [40960, 125, 1500, 2000],
    ] as const
  ).map(([upTo, cleared, single, complex]) =>
    Object.freeze({ upTo, cleared: cleared * foot, single: single * foot, complex: complex * foot }),
  ),
);

/**
 * The row of a table that a total impulse belongs to: open below, closed above.
 *
 * @param totalImpulse of all motors installed [N s]
 * @param distances rows, rising
 * @returns null above the last row
 * @example
 * distanceRow(1280)?.single; // 30.48
 */
export function distanceRow(
  totalImpulse: number,
  distances: readonly DistanceRow[] = safetyCodeDistances,
): DistanceRow | null {
  return distances.find(({ upTo }) => totalImpulse <= upTo) ?? null;
}

/** Smallest launch site of a model rocket by class [ft], with the class's upper limit [N s]. */
const modelSites = [
  [1.25, 50],
  [2.5, 100],
  [5, 200],
  [10, 400],
  [20, 500],
  [160, 1000],
] as const;

/**
 * Smallest dimension of a launch site for model rockets.
 *
 * @param totalImpulse of all motors installed [N s]
 * @returns [m]; null above 160 N s, which the table does not cover
 * @source Model Rocket Safety Code, August 2012: 1/2A and smaller to G, as on a club's table
 * @example
 * modelSiteDimension(20); // 152.4
 */
export function modelSiteDimension(totalImpulse: number): number | null {
  const row = modelSites.find(([upTo]) => totalImpulse <= upTo);
  return row === undefined ? null : row[1] * foot;
}
