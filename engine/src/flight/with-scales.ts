import type { FlightInputs } from "./inputs.js";

/**
 * The same flight with other drag, and other thrust at the same burn time and propellant mass.
 *
 * @param lnDrag natural logarithm of the factor on the drag coefficient
 * @param lnImpulse of the factor on the thrust
 * @example
 * fly(withScales(inputs, Math.log(1.07), 0)); // seven percent more drag
 */
export function withScales<Inputs extends Pick<FlightInputs, "rocket" | "motor">>(
  inputs: Inputs,
  lnDrag: number,
  lnImpulse: number,
): Inputs {
  const { rocket, motor } = inputs;
  const factor = Math.exp(lnImpulse);
  return {
    ...inputs,
    rocket: { ...rocket, drag: { ...rocket.drag, scale: rocket.drag.scale * Math.exp(lnDrag) } },
    motor: { ...motor, thrust: { ...motor.thrust, thrusts: motor.thrust.thrusts.map((thrust) => thrust * factor) } },
  };
}
