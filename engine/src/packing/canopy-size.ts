import { canopyData } from "./canopy.js";
import { type ClusterCount, clusterDragFactor } from "./canopy-cluster.js";
import type { CanopyShape } from "./recovery.js";

/** What a canopy is to let down, and how fast. */
export interface LandingAim {
  /** That hangs under it [kg], > 0. */
  readonly mass: number;
  /** Of the air at the ground [kg/m³], > 0. */
  readonly density: number;
  /** [m/s²] */
  readonly gravity: number;
  /** Of the descent [m/s], > 0. */
  readonly speed: number;
}

/**
 * Speeds of descent that flyers land at [m/s].
 *
 * @source common practice, no source
 */
export const usualLandingSpeeds = Object.freeze({ least: 4.5, most: 6 });

/**
 * Share of a canopy's area that a spill hole leaves.
 *
 * The usual vent, about 1 % of the area (memory), is in the drag coefficients already: this is for a hole cut beside it.
 *
 * @param diameters nominal of the canopy and of the hole [m]; the hole the smaller
 * @returns 0…1
 * @example
 * spillHoleAreaLeft({ diameter: 0.9144, hole: 0.1524 }); // 0.9722222
 */
export function spillHoleAreaLeft({ diameter, hole }: { readonly diameter: number; readonly hole: number }): number {
  return 1 - (hole / diameter) ** 2;
}

/**
 * Nominal diameter of the canopy that lands a mass at a speed: `descentSpeed` turned round.
 *
 * @param aim mass, air, gravity and speed
 * @param canopy drag coefficient on the nominal area; how many equal ones open together; hole over canopy diameter, 0…1, of a
 *   spill hole
 * @returns of each canopy [m]
 * @source weight equals drag: S = 2 m g/(ρ v² Cd), shared out over the cluster
 * @example
 * canopyForSpeed({ mass: 1.35, density: 1.225, gravity: 9.80665, speed: 6.6246416 }, { cd: 0.75 }); // 0.9144
 */
export function canopyForSpeed(
  { mass, density, gravity, speed }: LandingAim,
  { cd, count = 1, holeRatio = 0 }: { readonly cd: number; readonly count?: ClusterCount; readonly holeRatio?: number },
): number {
  const dragArea = (2 * mass * gravity) / (density * speed * speed);
  const areaLeft = spillHoleAreaLeft({ diameter: 1, hole: holeRatio });
  return Math.sqrt((4 * dragArea) / (Math.PI * cd * areaLeft * count * clusterDragFactor[count]));
}

/** Diameter that one type of canopy needs. */
export interface CanopySize {
  readonly shape: CanopyShape;
  readonly count: ClusterCount;
  /** Of each canopy, at the middle of the handbook's drag coefficients [m]. */
  readonly diameter: number;
  /** At the highest of them [m]. */
  readonly least: number;
  /** At the lowest of them [m]. */
  readonly most: number;
}

/**
 * Diameters that every type of canopy needs to land a mass at a speed.
 *
 * @param aim mass, air, gravity and speed
 * @param count equal canopies that open together
 * @returns one row for each type of `canopyData`
 * @source `canopyForSpeed`, `canopyData`
 * @example
 * canopySizes({ mass: 2, density: 1.2, gravity: 9.8, speed: 5 }).length; // 15
 */
export function canopySizes(aim: LandingAim, count: ClusterCount = 1): readonly CanopySize[] {
  return (Object.keys(canopyData) as CanopyShape[]).map((shape) => {
    const { cd, cdLow, cdHigh } = canopyData[shape];
    const size = (coefficient: number) => canopyForSpeed(aim, { cd: coefficient, count });
    return { shape, count, diameter: size(cd), least: size(cdHigh), most: size(cdLow) };
  });
}
