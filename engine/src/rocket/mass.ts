import type { Ballast, Rocket } from "./rocket.js";

/** Mass, where it balances, and how hard it is to swing. */
export interface MassState {
  /** [kg] */
  readonly mass: number;
  /** From the nose tip [m]. */
  readonly balance: number;
  /** Transverse, about the balance point [kg m²]. */
  readonly inertia: number;
}

/** The motor as a solid cylinder at its place in the rocket. */
export interface MotorGeometry {
  /** [m] */
  readonly length: number;
  /** [m] */
  readonly diameter: number;
  /** Its aft end, from the nose tip [m]. */
  readonly aftAt: number;
}

/** Two bodies joined: parallel axes about the common balance point. */
function join(one: MassState, other: MassState): MassState {
  const mass = one.mass + other.mass;
  const balance = mass === 0 ? one.balance : (one.mass * one.balance + other.mass * other.balance) / mass;
  const inertia =
    one.inertia + one.mass * (one.balance - balance) ** 2 + other.inertia + other.mass * (other.balance - balance) ** 2;
  return { mass, balance, inertia };
}

/**
 * The airframe without motor, its ballast fixed to it as a point mass.
 *
 * @returns mass [kg], balance from the nose tip [m], transverse inertia about it [kg m²]
 * @source parallel axes
 * @example
 * airframeWithBallast(exampleRocket, { mass: 0, at: 0.2 }); // { mass: 0.9, balance: 0.88, inertia: 0.17 }
 */
export function airframeWithBallast(rocket: Pick<Rocket, "mass" | "balance" | "inertia">, ballast: Ballast): MassState {
  return join(
    { mass: rocket.mass, balance: rocket.balance, inertia: rocket.inertia },
    { mass: ballast.mass, balance: ballast.at, inertia: 0 },
  );
}

/**
 * Airframe and motor together, at one moment of the burn.
 *
 * The motor is a solid cylinder whose middle stays where it is while its mass falls.
 *
 * @param motorMass spent casing plus the propellant left [kg], ≥ 0
 * @returns mass [kg], balance from the nose tip [m], transverse inertia about it [kg m²]
 * @source parallel axes; solid cylinder m (l²/12 + r²/4)
 * @example
 * loadedAt(airframeWithBallast(exampleRocket, noBallast), { length: 0.25, diameter: 0.038, aftAt: 1.51 }, 0.5).mass; // 1.4
 */
export function loadedAt(airframe: MassState, motor: MotorGeometry, motorMass: number): MassState {
  const { length, diameter, aftAt } = motor;
  const inertia = motorMass * ((length * length) / 12 + (diameter * diameter) / 16);
  return join(airframe, { mass: motorMass, balance: aftAt - length / 2, inertia });
}
