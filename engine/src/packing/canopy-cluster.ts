/** Equal canopies that open together: as many as there are figures for. */
export type ClusterCount = 1 | 2 | 3;

/**
 * Drag of each canopy of a cluster over that of one alone.
 *
 * Canopies side by side lean outwards and disturb one another.
 *
 * @source T. W. Knacke, NWC TP 6575 (1991); memory, 5 %
 */
export const clusterDragFactor: Readonly<Record<ClusterCount, number>> = Object.freeze({ 1: 1, 2: 0.95, 3: 0.9 });

/**
 * Steady speed of descent under several equal canopies.
 *
 * @param single under one of them alone [m/s]
 * @param count how many open
 * @returns [m/s]
 * @source speed over √(count · `clusterDragFactor`)
 * @example
 * clusterDescentSpeed(8, 2); // 5.80381
 */
export function clusterDescentSpeed(single: number, count: ClusterCount): number {
  return single / Math.sqrt(count * clusterDragFactor[count]);
}
