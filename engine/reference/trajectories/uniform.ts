import { type FlightModel, prepareFlight } from "../../src/flight/model.js";
import { type FlightOptions, resolveFlightOptions } from "../../src/flight/options.js";
import type { FlightInputs } from "../../src/index.js";
import { referenceInputs, referenceRocket } from "./inputs.js";

/** Inputs of the pitching flight's closed forms: check values of the pitching flight. */
export const uniform = Object.freeze({ rho: 1.225, xg: 0.9898244179, inertia: 0.2, mass: 1.2 });

const body = { mass: uniform.mass, balance: uniform.xg, inertia: uniform.inertia };

/** Example A with fixed mass, balance and inertia, in uniform air without gravity: the motor weighs nothing and pushes evenly. */
export function uniformModel(thrust: number, wind: number, more: FlightOptions = {}): FlightModel {
  const inputs: FlightInputs = {
    ...referenceInputs,
    rocket: { ...referenceRocket, ...body, drag: { from: "constant", cd: 0, scale: 1 } },
    motor: {
      ...referenceInputs.motor,
      thrust: { times: [0, 10], thrusts: [thrust, thrust] },
      loadedMass: 2e-15,
      propellantMass: 1e-15,
    },
  };
  const options = resolveFlightOptions({ bodyLift: false, compressibility: false, handOver: false, ...more });
  return {
    ...prepareFlight(inputs, options),
    airAt: () => ({ temperature: 288.15, pressure: 101325, density: uniform.rho, soundSpeed: 340, viscosity: 1.8e-5 }),
    windAt: () => [wind, 0, 0],
    gravityAt: () => 0,
  };
}
