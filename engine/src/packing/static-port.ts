const INCH = 0.0254;
/** Area of hole per volume of bay [1/m]: a hole of 1/4 in for 100 in³. */
const AREA_PER_VOLUME = ((Math.PI / 4) * (INCH / 4) ** 2) / (100 * INCH ** 3);

/**
 * Area of all static ports of a bay together.
 *
 * @param volume of the bay [m³], > 0
 * @returns [m²]
 * @source one hole of 1/4 in for 100 in³; common practice, no source
 * @example
 * staticPortArea(0.001); // 0.0000193257
 */
export function staticPortArea(volume: number): number {
  return AREA_PER_VOLUME * volume;
}

/**
 * Diameter of each of several equal static ports of a bay.
 *
 * @param ports volume of the bay [m³], > 0, and number of holes, ≥ 1
 * @returns [m]
 * @source `staticPortArea`
 * @example
 * staticPortDiameter({ volume: 0.00092666707, count: 4 }); // 0.00238756
 */
export function staticPortDiameter({ volume, count }: { readonly volume: number; readonly count: number }): number {
  return Math.sqrt((4 * staticPortArea(volume)) / (Math.PI * count));
}
