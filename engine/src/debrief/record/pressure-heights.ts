import { fieldAir } from "../../air/at-field.js";
import type { FieldAir } from "../../air/field-air.js";
import { standardAirAt } from "../../air/standard.js";
import { rootBetween } from "../../math/root.js";

/** Spacing of the table [m]: linear in the logarithm of pressure it is within 2 mm. */
const STEP = 25;
const HIGHEST = 40_000;

/** Elevation at which the standard atmosphere has a pressure [m above sea level], −1000…40 000. */
export function standardElevation(pressure: number): number {
  const off = (z: number): number => Math.log(standardAirAt(z).pressure / pressure);
  if (off(-1000) < 0) return -1000;
  if (off(HIGHEST) > 0) return HIGHEST;
  return rootBetween(off, -1000, HIGHEST, 1e-6);
}

/**
 * Heights above the pad from static pressure, in the air over the field.
 *
 * Only the ratio to the pad's own reading counts, so a sensor that reads a little high everywhere does no harm; the pad's
 * temperature moves the whole profile, as the flight's own air does.
 *
 * @param padPressure as the same instrument reads it on the pad [Pa]
 * @param air of the day; left out: the standard atmosphere where it has that pressure
 * @returns a function of pressure [Pa]; NaN where the pressure is not above 0
 * @source U.S. Standard Atmosphere, 1976 (NOAA-S/T 76-1562)
 * @example
 * heightsFromPressure(95_000)(84_500); // 965.4
 */
export function heightsFromPressure(padPressure: number, air?: FieldAir): (pressure: number) => number {
  const field: FieldAir = air ?? { elevation: standardElevation(padPressure), latitude: Math.PI / 4 };
  const at = fieldAir({ ...field, pressure: padPressure });
  const logs: number[] = [];
  const below = 4;
  const logAt = (i: number): number => {
    while (logs.length <= i) logs.push(Math.log(at((logs.length - below) * STEP).pressure));
    return logs[i]!;
  };
  const last = HIGHEST / STEP;
  let near = below;
  return (pressure) => {
    if (!(pressure > 0)) return Number.NaN;
    const wanted = Math.log(pressure);
    while (near < last && logAt(near + 1) > wanted) near++;
    while (near > 0 && logAt(near) < wanted) near--;
    const low = logAt(near);
    return (near - below + (low - wanted) / (low - logAt(near + 1))) * STEP;
  };
}

/**
 * Heights as a barometric instrument gives them, by the standard atmosphere, put right for the day's temperature.
 *
 * @param elevation of the pad as the instrument takes it [m above sea level]
 * @returns a function of the instrument's height above its pad [m]
 * @example
 * heightsInDaysAir(210, { elevation: 210, latitude: 0.9, temperature: 303.15 })(1000); // 1057.2
 */
export function heightsInDaysAir(elevation: number, air: FieldAir): (height: number) => number {
  const standard = (z: number): number => standardAirAt(elevation + z).pressure;
  const made = heightsFromPressure(standard(0), air);
  const rise: number[] = [];
  const below = 4;
  const at = (i: number): number => {
    while (rise.length <= i) rise.push(made(standard((rise.length - below) * STEP)));
    return rise[i]!;
  };
  const last = HIGHEST / STEP;
  return (height) => {
    if (!Number.isFinite(height)) return Number.NaN;
    const place = height / STEP + below;
    const i = Math.min(Math.max(Math.floor(place), 0), last);
    return at(i) + (at(i + 1) - at(i)) * (place - i);
  };
}
