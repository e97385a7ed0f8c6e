import { prepareImpulse } from "./impulse.js";
import type { Motor } from "./motor.js";

/**
 * Mass of a motor as it burns: its propellant goes in proportion to the impulse spent.
 *
 * @param motor its thrust curve without issues (`thrustIssues`)
 * @returns a function of the time from ignition [s] that gives the motor's mass [kg], never rising
 * @source constant effective exhaust speed; delay and ejection charge stay in the mass
 * @example
 * const thrust = { times: [0, 2], thrusts: [100, 100] };
 * motorMassAt({ thrust, loadedMass: 0.3, propellantMass: 0.1 })(1); // 0.25
 */
export function motorMassAt(motor: Pick<Motor, "thrust" | "loadedMass" | "propellantMass">): (time: number) => number {
  const impulse = prepareImpulse(motor.thrust);
  const perImpulse = motor.propellantMass / impulse.total;
  return (time) => motor.loadedMass - perImpulse * impulse.at(time);
}
