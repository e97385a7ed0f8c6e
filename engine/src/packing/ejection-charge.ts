/** A cylindrical bay that the ejection charge fills with gas. */
export interface BaySize {
  /** Inner diameter [m], > 0. */
  readonly diameter: number;
  /** Free length [m], > 0. */
  readonly length: number;
}

/** What a reckoned ejection charge leaves out, and what it asks of the flyer. */
export type ChargeCaveat = "constants-from-memory" | "heat-loss-ignored" | "leaks-ignored" | "ground-test";

/** Hold for every charge and pressure of this file. */
export const chargeCaveats: readonly ChargeCaveat[] = Object.freeze([
  "constants-from-memory",
  "heat-loss-ignored",
  "leaks-ignored",
  "ground-test",
]);

const INCH = 0.0254;
const POUND_FORCE = 0.45359237 * 9.80665;
const POUND_PER_SQUARE_INCH = POUND_FORCE / INCH ** 2;

/**
 * Gas of black powder as one effective constant per mass of powder: gas constant [J/(kg K)] and temperature [K].
 *
 * Their product is the powder's force, 219 kJ/kg. Other figures for the gas give a constant that is 13 % lower, and so a charge
 * that is 15 % greater.
 *
 * @source 266 in lbf/(lbm °R), rounded from 265.92, and 3307 °R, widely repeated; memory, no source found
 */
export const powderGas = Object.freeze({ gasConstant: 266 * 9.80665 * INCH * 1.8, temperature: 3307 / 1.8 });

/**
 * Pressure rises that flyers aim at [Pa]: least, usual and most.
 *
 * A large tube needs less: the force on its end grows with the square of the diameter.
 *
 * @source 8, 15 and 20 psi; common practice, no source
 */
export const usualPressures = Object.freeze({
  least: 8 * POUND_PER_SQUARE_INCH,
  usual: 15 * POUND_PER_SQUARE_INCH,
  most: 20 * POUND_PER_SQUARE_INCH,
});

/** Force of the powder, R T [J/kg]. */
const powderForce = powderGas.gasConstant * powderGas.temperature;

/**
 * Free volume of a cylindrical bay.
 *
 * @param bay its inner diameter and free length [m]
 * @returns [m³]
 * @example
 * bayVolume({ diameter: 0.054, length: 0.2 }); // 0.00045804421
 */
export function bayVolume({ diameter, length }: BaySize): number {
  return endArea(diameter) * length;
}

/**
 * Mass of black powder that raises the pressure in a volume.
 *
 * Ideal gas, all powder burnt, no heat lost to the walls, nothing leaked: a starting point for a ground test, no more.
 *
 * @param aim pressure rise over the air outside [Pa], ≥ 0, and free volume [m³], > 0
 * @returns [kg]
 * @source m = P V/(R T) with `powderGas`; memory
 * @example
 * chargeForPressure({ pressure: 103_421.36, volume: 0.00045804421 }); // 0.00021619588
 */
export function chargeForPressure({
  pressure,
  volume,
}: {
  readonly pressure: number;
  readonly volume: number;
}): number {
  return (pressure * volume) / powderForce;
}

/**
 * Pressure rise that a mass of black powder makes in a volume: `chargeForPressure` turned round, with its caveats.
 *
 * @param filling mass of the charge [kg], ≥ 0, and free volume [m³], > 0
 * @returns [Pa] over the air outside
 * @source P = m R T/V with `powderGas`; memory
 * @example
 * pressureOfCharge({ charge: 0.001, volume: 0.00102 }); // 214817.69
 */
export function pressureOfCharge({ charge, volume }: { readonly charge: number; readonly volume: number }): number {
  return (charge * powderForce) / volume;
}

/**
 * Force with which a pressure rise pushes on the bay's end.
 *
 * @param push pressure rise [Pa] and inner diameter [m], > 0
 * @returns [N]
 * @example
 * endForce({ pressure: 103_421.36, diameter: 0.054 }); // 236.85778
 */
export function endForce({ pressure, diameter }: { readonly pressure: number; readonly diameter: number }): number {
  return pressure * endArea(diameter);
}

/**
 * Pressure rise that pushes on the bay's end with a force: `endForce` turned round.
 *
 * @param push force [N], ≥ 0, and inner diameter [m], > 0
 * @returns [Pa]
 * @example
 * pressureForForce({ force: 236.85778, diameter: 0.054 }); // 103421.36
 */
export function pressureForForce({ force, diameter }: { readonly force: number; readonly diameter: number }): number {
  return force / endArea(diameter);
}

function endArea(diameter: number): number {
  return (Math.PI * diameter * diameter) / 4;
}
