import type { Canopy, CanopyShape } from "./recovery.js";

/** Handbook data of one canopy shape. */
export interface CanopyData {
  /** Drag coefficient on the nominal area, the handbook's range. */
  readonly cdLow: number;
  readonly cdHigh: number;
  /** Middle of that range: what holds where the flyer gives none. */
  readonly cd: number;
  /** Opening-force coefficient for an infinite mass. */
  readonly openingForce: number;
  /** Nominal diameters of travel that filling takes. */
  readonly fillConstant: number;
  /** The shape whose fill constant stands in where the handbook has none. */
  readonly fillConstantOf?: CanopyShape;
  /** Drag area grows with this power of the filling time. */
  readonly growth: 1 | 2;
}

function row(
  cdLow: number,
  cdHigh: number,
  openingForce: number,
  fillConstant: number,
  growth: 1 | 2,
  fillConstantOf?: CanopyShape,
): CanopyData {
  const cd = (cdLow + cdHigh) / 2;
  const data = { cdLow, cdHigh, cd, openingForce, fillConstant, growth };
  return Object.freeze(fillConstantOf === undefined ? data : { ...data, fillConstantOf });
}

/**
 * Canopy shapes: drag on the nominal area, opening-force coefficient, fill constant, growth of the drag area.
 *
 * Unreefed. The cross and extended-skirt rows are the least sure; the cross's fill constant is 8.7 in some texts. Canopies of
 * model rockets open slower than the handbook's.
 *
 * @source T. W. Knacke, Parachute Recovery Systems Design Manual, NWC TP 6575 (1991), tables 5-1 to 5-6; all memory, 5 %
 */
export const canopyData: Readonly<Record<CanopyShape, CanopyData>> = Object.freeze({
  "flat circular": row(0.75, 0.8, 1.7, 8, 2),
  conical: row(0.75, 0.9, 1.8, 8, 2),
  biconical: row(0.75, 0.92, 1.8, 8, 2, "conical"),
  triconical: row(0.8, 0.96, 1.8, 8, 2, "conical"),
  "extended skirt 10 %": row(0.78, 0.87, 1.4, 10, 2),
  "extended skirt 14.3 %": row(0.75, 0.9, 1.4, 12, 2),
  hemispherical: row(0.62, 0.77, 1.6, 8, 2, "flat circular"),
  annular: row(0.85, 0.95, 1.4, 8, 2, "flat circular"),
  cross: row(0.6, 0.85, 1.15, 11.7, 2),
  "flat ribbon": row(0.45, 0.5, 1.05, 14, 1),
  "conical ribbon": row(0.5, 0.55, 1.05, 14, 1),
  ringslot: row(0.56, 0.65, 1.05, 14, 1),
  ringsail: row(0.75, 0.85, 1.1, 7, 2),
  "disk-gap-band": row(0.52, 0.58, 1.3, 10, 2, "extended skirt 10 %"),
  "guide surface, ribless": row(0.3, 0.34, 1.4, 8, 2, "flat circular"),
});

/**
 * Area of the canopy's nominal circle.
 *
 * @returns [m²]
 * @example
 * nominalArea({ shape: "flat circular", diameter: 0.9144 }); // 0.6566929
 */
export function nominalArea(canopy: Canopy): number {
  return (Math.PI * canopy.diameter * canopy.diameter) / 4;
}

/**
 * Drag area of the full canopy: its own drag coefficient, else the handbook's, on the nominal area.
 *
 * @returns [m²]
 * @source `canopyData`
 * @example
 * canopyDragArea({ shape: "flat circular", diameter: 0.9144, cd: 0.75 }); // 0.4925197
 */
export function canopyDragArea(canopy: Canopy): number {
  return nominalArea(canopy) * (canopy.cd ?? canopyData[canopy.shape].cd);
}

/**
 * Steady speed of descent under a full canopy.
 *
 * @returns [m/s]
 * @source weight equals drag: √(2 m g/(ρ Cd S))
 * @example
 * descentSpeed({ mass: 1.35, density: 1.225, canopy: { shape: "flat circular", diameter: 0.9144, cd: 0.75 }, gravity: 9.80665 }); // 6.6246416
 */
export function descentSpeed({
  mass,
  density,
  canopy,
  gravity,
}: {
  /** That hangs under it [kg], > 0. */
  readonly mass: number;
  /** Of the air [kg/m³], > 0. */
  readonly density: number;
  readonly canopy: Canopy;
  /** [m/s²]. */
  readonly gravity: number;
}): number {
  return Math.sqrt((2 * mass * gravity) / (density * canopyDragArea(canopy)));
}

/**
 * Way that a canopy travels while it fills.
 *
 * @returns fill constant times nominal diameter [m]
 * @source `canopyData`
 * @example
 * fillDistance({ shape: "flat circular", diameter: 1 }); // 8
 */
export function fillDistance(canopy: Canopy): number {
  return canopyData[canopy.shape].fillConstant * canopy.diameter;
}

/**
 * Filling time at constant speed.
 *
 * The handbook's data end well above the speeds at which model rockets open, so this is an extrapolation there.
 *
 * @param speed at line stretch [m/s], > 0
 * @returns [s]
 * @source T. W. Knacke, NWC TP 6575 (1991), 5.4: n D/v; memory
 * @example
 * fillTimeAtConstantSpeed({ shape: "flat circular", diameter: 0.9144 }, 15); // 0.48768
 */
export function fillTimeAtConstantSpeed(canopy: Canopy, speed: number): number {
  return fillDistance(canopy) / speed;
}

/** Time in which speed and gravity together cover a filling distance [s]. */
export function timeToFill(distance: number, speed: number, gravity: number): number {
  return (2 * distance) / (speed + Math.sqrt(speed * speed + 2 * gravity * distance));
}

/**
 * Filling time of a canopy that also falls: the time in which speed and gravity together cover the filling distance.
 *
 * At high speed it equals `fillTimeAtConstantSpeed`; opened at rest it stays finite.
 *
 * @param speed at line stretch [m/s], ≥ 0
 * @param gravity [m/s²], > 0
 * @returns [s]
 * @source v t + g t²/2 = n D; the distance from T. W. Knacke, NWC TP 6575 (1991), 5.4; memory
 * @example
 * fillTime({ shape: "flat circular", diameter: 1 }, 0, 9.80665); // 1.2773198
 */
export function fillTime(canopy: Canopy, speed: number, gravity: number): number {
  return timeToFill(fillDistance(canopy), speed, gravity);
}
