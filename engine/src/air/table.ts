import { fieldAir, warmedField } from "./at-field.js";
import { STANDARD_LAYERS } from "./column.js";
import { GEOPOTENTIAL_RADIUS } from "./constants.js";
import type { FieldAir } from "./field-air.js";

/** Widest spacing of a table's heights [m]: the error of linear interpolation stays below 1e-6 of the density. */
const WIDEST_STEP = 10;

/** Change of temperature from which the coefficients are taken [K]: their error is spread evenly over ±8 K. */
const TEMPERATURE_STEP = 7;

/** Density and speed of sound on uniform heights above the pad, with their change with the pad's temperature. */
export interface AirTable {
  /** Spacing of the heights [m]; the first height is 0. */
  readonly step: number;
  /** Number of heights, ≥ 2. */
  readonly count: number;
  /** [kg/m³], length count. */
  readonly density: Float64Array;
  /** [m/s], length count. */
  readonly soundSpeed: Float64Array;
  /** Relative change of density with the pad's temperature: first coefficient [1/K], length count. */
  readonly densityPerKelvin: Float64Array;
  /** Second coefficient [1/K²], length count. */
  readonly densityPerKelvin2: Float64Array;
  /** Relative change of the speed of sound with the pad's temperature: first coefficient [1/K], length count. */
  readonly soundSpeedPerKelvin: Float64Array;
  /** Second coefficient [1/K²], length count. */
  readonly soundSpeedPerKelvin2: Float64Array;
}

/**
 * The step at most `WIDEST_STEP` that puts a node on the tropopause, where the profile has its sharpest kink.
 * The other kinks are 20 km up and higher.
 */
function stepFor(field: FieldAir): number {
  const tropopause = STANDARD_LAYERS[1]!.base;
  const height = (GEOPOTENTIAL_RADIUS * tropopause) / (GEOPOTENTIAL_RADIUS - tropopause) - field.elevation;
  return height > WIDEST_STEP ? height / Math.ceil(height / WIDEST_STEP) : WIDEST_STEP;
}

/** First and second coefficient c1, c2 of value · (1 + d c1 + d² c2), from the values one temperature step either side. */
function coefficients(cooler: number, value: number, warmer: number): [number, number] {
  const first = (warmer - cooler) / (2 * TEMPERATURE_STEP * value);
  const second = ((warmer + cooler) / value - 2) / (2 * TEMPERATURE_STEP ** 2);
  return [first, second];
}

/**
 * Tabulates the air over a field for quick look-ups.
 *
 * Linear between the heights, density and speed of sound are within 1e-6 of `fieldAir` up to 20 km above sea level
 * (at the kinks of the standard's profile at 20 km and above, in one step each, within 4e-5). With the pad's
 * temperature changed by d, |d| ≤ 8 K, at the same station pressure and the same water in the air (`warmedField`),
 * they are value · (1 + d c1 + d² c2) within 2e-5 up to 12 km above the pad.
 *
 * @param field the air measured at the field
 * @param top height above the pad that the table must reach [m], finite
 * @returns the table, from the pad to `top` or one step more
 * @example
 * tableAir(airTable({ elevation: 0, latitude: 0.9 }, 3_000), 1_000).density; // 1.111659
 */
export function airTable(field: FieldAir, top: number): AirTable {
  const step = stepFor(field);
  const count = Math.max(1, Math.ceil(top / step)) + 1;
  const airAt = fieldAir(field);
  const coolerAt = fieldAir(warmedField(field, -TEMPERATURE_STEP));
  const warmerAt = fieldAir(warmedField(field, TEMPERATURE_STEP));
  const column = () => new Float64Array(count);
  const table = {
    step,
    count,
    density: column(),
    soundSpeed: column(),
    densityPerKelvin: column(),
    densityPerKelvin2: column(),
    soundSpeedPerKelvin: column(),
    soundSpeedPerKelvin2: column(),
  };
  for (let i = 0; i < count; i++) {
    const air = airAt(i * step);
    const cooler = coolerAt(i * step);
    const warmer = warmerAt(i * step);
    const ofDensity = coefficients(cooler.density, air.density, warmer.density);
    const ofSoundSpeed = coefficients(cooler.soundSpeed, air.soundSpeed, warmer.soundSpeed);
    table.density[i] = air.density;
    table.soundSpeed[i] = air.soundSpeed;
    table.densityPerKelvin[i] = ofDensity[0];
    table.densityPerKelvin2[i] = ofDensity[1];
    table.soundSpeedPerKelvin[i] = ofSoundSpeed[0];
    table.soundSpeedPerKelvin2[i] = ofSoundSpeed[1];
  }
  return table;
}

/**
 * Looks the air up in a table: the plain version, which judges the hot loop's own.
 *
 * Below the pad the first step's line goes on; above the last height its values are held.
 *
 * @param table from `airTable`
 * @param z height above the pad [m]
 * @param change of the pad's temperature [K], |change| ≤ 8
 * @returns density [kg/m³] and speed of sound [m/s]
 * @example
 * tableAir(airTable({ elevation: 0, latitude: 0.9 }, 3_000), 0, 5).soundSpeed; // 343.234
 */
export function tableAir(table: AirTable, z: number, change = 0): { density: number; soundSpeed: number } {
  const position = Math.min(z / table.step, table.count - 1);
  const i = Math.max(0, Math.min(Math.floor(position), table.count - 2));
  const part = position - i;
  const between = (column: Float64Array) => column[i]! + (column[i + 1]! - column[i]!) * part;
  const changed = (value: Float64Array, first: Float64Array, second: Float64Array) =>
    between(value) * (1 + change * (between(first) + change * between(second)));
  return {
    density: changed(table.density, table.densityPerKelvin, table.densityPerKelvin2),
    soundSpeed: changed(table.soundSpeed, table.soundSpeedPerKelvin, table.soundSpeedPerKelvin2),
  };
}
