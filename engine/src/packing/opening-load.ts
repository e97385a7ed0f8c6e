import { canopyData, canopyDragArea, fillDistance, fillTimeAtConstantSpeed } from "./canopy.js";
import type { Canopy } from "./recovery.js";

/**
 * Greatest opening load over that of a mass that does not slow down.
 *
 * The mass slows down while the canopy fills, without gravity; drag area grows with a power of time.
 *
 * @param ballistic ballistic parameter A, > 0
 * @param growth power of time with which the drag area grows
 * @returns 0…1
 * @source Pflanz-type closed form, as in T. W. Knacke, NWC TP 6575 (1991), 5.4; memory, maximum checked by brute force
 * @example
 * forceReduction(1, 2); // 0.5625
 */
export function forceReduction(ballistic: number, growth: 1 | 2): number {
  const j = growth;
  const peakAt = ((j * ballistic * (j + 1)) / (j + 2)) ** (1 / (j + 1));
  if (peakAt < 1) return peakAt ** j * ((j + 2) / (2 * j + 2)) ** 2;
  return (1 + 1 / (ballistic * (j + 1))) ** -2;
}

/**
 * Ballistic parameter of an opening: how little the mass slows down while the canopy fills.
 *
 * @param mass [kg]
 * @param dragArea of the full canopy [m²]
 * @param density [kg/m³]
 * @param fillDistance speed at line stretch times filling time [m]
 * @returns A, > 0
 * @source T. W. Knacke, NWC TP 6575 (1991), 5.4: 2 m/(CdS ρ v tf); memory
 * @example
 * ballisticParameter({ mass: 1.6, dragArea: 0.4925197, density: 1.1, fillDistance: 7.3152 }); // 0.8074349
 */
export function ballisticParameter({
  mass,
  dragArea,
  density,
  fillDistance,
}: {
  readonly mass: number;
  readonly dragArea: number;
  readonly density: number;
  readonly fillDistance: number;
}): number {
  return (2 * mass) / (dragArea * density * fillDistance);
}

/** What hangs under which canopy in which air. */
export interface Opening {
  /** [kg] */
  readonly mass: number;
  /** [kg/m³] */
  readonly density: number;
  readonly canopy: Canopy;
}

/** An opening load with what it was made of. */
export interface OpeningLoad {
  /** [N] */
  readonly force: number;
  /** The load if the mass did not slow down at all [N]. */
  readonly infiniteMassForce: number;
  readonly ballistic: number;
  readonly reduction: number;
  /** At constant speed [s]. */
  readonly fillTime: number;
}

/** Load per dynamic pressure, and what it rests on: none of it depends on the speed. */
function loadArea({ mass, density, canopy }: Opening) {
  const { openingForce, growth } = canopyData[canopy.shape];
  const dragArea = canopyDragArea(canopy);
  const ballistic = ballisticParameter({ mass, dragArea, density, fillDistance: fillDistance(canopy) });
  return { area: dragArea * openingForce, ballistic, reduction: forceReduction(ballistic, growth) };
}

/**
 * Greatest load while a canopy opens.
 *
 * Steady flight up to line stretch; the snatch before it is not in it.
 *
 * @param speed at line stretch [m/s], > 0
 * @returns [N], [s]
 * @source T. W. Knacke, NWC TP 6575 (1991), 5.4: q CdS Cx X1; memory
 * @example
 * openingLoad({ mass: 1.6, density: 1.1, canopy: { shape: "flat circular", diameter: 0.9144, cd: 0.75 } }, 15).force; // 51.90843
 */
export function openingLoad(opening: Opening, speed: number): OpeningLoad {
  const { area, ballistic, reduction } = loadArea(opening);
  const infiniteMassForce = 0.5 * opening.density * speed * speed * area;
  return {
    force: infiniteMassForce * reduction,
    infiniteMassForce,
    ballistic,
    reduction,
    fillTime: fillTimeAtConstantSpeed(opening.canopy, speed),
  };
}

/**
 * Airspeed at which the opening load equals a strength.
 *
 * The filling distance does not depend on the speed, so the load grows with its square alone. What cannot bear the hanging
 * weight holds at no speed.
 *
 * @returns [m/s]; 0 where the strength is below the weight
 * @source `openingLoad`, solved for the speed
 * @example
 * const canopy = { shape: "flat circular", diameter: 0.9144, cd: 0.75 } as const;
 * strengthSpeed({ mass: 1.6, density: 1.1, canopy, strength: 51.90843, gravity: 9.80665 }); // 15
 */
export function strengthSpeed({
  strength,
  gravity,
  ...opening
}: Opening & {
  /** Of the weakest rated part [N], > 0. */
  readonly strength: number;
  /** [m/s²] */
  readonly gravity: number;
}): number {
  if (strength < opening.mass * gravity) return 0;
  const { area, reduction } = loadArea(opening);
  return Math.sqrt((2 * strength) / (opening.density * area * reduction));
}
