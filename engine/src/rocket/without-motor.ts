import { InputError } from "../issues.js";

/** A rocket weighed and balanced with a motor in it. */
export interface ReadyToFly {
  /** Mass with the loaded motor [kg]. */
  readonly massReady: number;
  /** Balance point with the loaded motor, from the nose tip [m]. */
  readonly balanceReady: number;
  readonly motor: {
    /** [kg] */
    readonly loadedMass: number;
    /** [m] */
    readonly length: number;
    /** Its aft end, from the nose tip [m]. */
    readonly aftAt: number;
  };
}

/**
 * Mass and balance point without motor, from those with a known motor in it.
 *
 * @returns mass [kg] and balance from the nose tip [m]
 * @throws {InputError} `mass-not-above-motor`: the whole is not heavier than its motor
 * @source moments about the nose tip; the motor balances at its middle
 * @example
 * withoutMotor({ massReady: 1.4, balanceReady: 1, motor: { loadedMass: 0.4, length: 0.2, aftAt: 1.5 } }); // { mass: 1, balance: 0.84 }
 */
export function withoutMotor({ massReady, balanceReady, motor }: ReadyToFly): { mass: number; balance: number } {
  const mass = massReady - motor.loadedMass;
  if (!(mass > 0)) {
    const accepted = `> ${motor.loadedMass} kg`;
    throw new InputError([{ code: "mass-not-above-motor", path: "rocket.massReady", found: massReady, accepted }]);
  }
  const motorAt = motor.aftAt - motor.length / 2;
  return { mass, balance: (massReady * balanceReady - motor.loadedMass * motorAt) / mass };
}
