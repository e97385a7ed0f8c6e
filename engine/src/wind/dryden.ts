const FOOT = 0.3048;

/** Which definition of the lateral and vertical scale lengths: MIL-F-8785C, or MIL-HDBK-1797 with half of them. */
export type DrydenConvention = "8785C" | "1797";

/** Scale lengths [m] and intensities [m/s] of low-altitude turbulence along, across and vertical to the mean wind. */
export interface DrydenScales {
  readonly lengths: { readonly along: number; readonly across: number; readonly vertical: number };
  readonly intensities: { readonly along: number; readonly across: number; readonly vertical: number };
}

/**
 * Scale lengths and intensities of the Dryden turbulence model near the ground.
 *
 * Valid 3.048…304.8 m (10…1000 ft) above the ground; beyond, the nearest of these heights is taken. The source counts
 * in feet, which stays inside.
 *
 * @param height above the ground [m]
 * @param windSpeed mean wind 6.096 m (20 ft) above the ground [m/s], ≥ 0
 * @param convention whose definition of the lengths
 * @returns lengths [m] and intensities [m/s]
 * @source MIL-F-8785C (1980), 3.7.3.4; MIL-HDBK-1797 (1997): 2 Lw = h, Lu = 2 Lv
 * @example
 * drydenScales(30.48, 7.71667, "8785C").lengths.along; // 153.9756
 */
export function drydenScales(height: number, windSpeed: number, convention: DrydenConvention): DrydenScales {
  const feet = Math.min(Math.max(height / FOOT, 10), 1000);
  const base = 0.177 + 0.000823 * feet;
  const along = (feet / base ** 1.2) * FOOT;
  const vertical = 0.1 * windSpeed;
  const horizontal = vertical / base ** 0.4;
  const share = convention === "8785C" ? 1 : 0.5;
  return {
    lengths: { along, across: share * along, vertical: share * feet * FOOT },
    intensities: { along: horizontal, across: horizontal, vertical },
  };
}
