/** A rocket hung level on two equal, upright strings and let swing about the upright axis through its balance point. */
export interface Swing {
  /** [kg] */
  readonly mass: number;
  /** [m/s²] */
  readonly gravity: number;
  /** Between the strings, which hang at equal distances from the balance point [m]. */
  readonly apart: number;
  /** Length of each string [m]. */
  readonly strings: number;
  /** Of one full swing, there and back [s]. */
  readonly period: number;
}

/**
 * Transverse inertia from a swing on two strings.
 *
 * Small swings.
 *
 * @returns [kg m²], about the balance point
 * @source bifilar pendulum: I = m g D² T²/(16 π² L)
 * @example
 * inertiaFromSwing({ mass: 1.95, gravity: 9.80665, apart: 0.8, strings: 1.2, period: 1.9 }); // 0.23315326
 */
export function inertiaFromSwing({ mass, gravity, apart, strings, period }: Swing): number {
  return (mass * gravity * apart * apart * period * period) / (16 * Math.PI * Math.PI * strings);
}

/**
 * A guess of the transverse inertia of an airframe without motor.
 *
 * A thin-walled tube whose mass per length varies evenly along it, such that it balances where it was found to. Real airframes
 * differ by some 25 %: heavy noses and fins raise it, mass in the middle lowers it.
 *
 * @returns [kg m²], about the balance point
 * @source closed form: m (L²/12 − e² + D²/8), e the balance point's distance from the middle, at most L/6
 * @example
 * estimateInertia({ mass: 1.2, length: 1, balance: 0.5, diameter: 0 }); // 0.1
 */
export function estimateInertia({
  mass,
  length,
  balance,
  diameter,
}: {
  /** [kg]. */
  readonly mass: number;
  /** [m]. */
  readonly length: number;
  /** From the nose tip [m]. */
  readonly balance: number;
  /** [m]. */
  readonly diameter: number;
}): number {
  const offCentre = Math.min(Math.abs(balance - length / 2), length / 6);
  return mass * ((length * length) / 12 - offCentre * offCentre + (diameter * diameter) / 8);
}
