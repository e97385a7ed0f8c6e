import type { FlightModel } from "../flight/model.js";
import { fillDistance } from "../packing/canopy.js";
import { strengthSpeed } from "../packing/opening-load.js";
import { unratedFactor } from "../rules/delay-rules.js";
import type { Limits } from "./inputs.js";

/** How fast an opening the recovery bears. */
export interface Strength {
  /** [m/s] */
  readonly speed: number;
  /** Something that bears the opening load is rated; else the speed is a stand-in. */
  readonly rated: boolean;
}

/**
 * Airspeed at which the load of the first opening reaches the weakest rated part.
 *
 * The lower of the speeds in the air at the pad and at the nominal top. Zippered tubes and snatch are not in it.
 *
 * @param top height of the nominal top [m]
 * @param fittings load that the weakest link, bolt or eye bears [N]; left out: not rated
 */
export function strengthOf(model: FlightModel, limits: Limits, top: number, fittings?: number): Strength {
  const { recovery, motor } = model.inputs;
  const { canopy, strength: canopyStrength } = recovery.drogue ?? recovery.main;
  const ratings = [canopyStrength, recovery.harness?.strength, fittings].filter((s) => s !== undefined);
  if (ratings.length === 0) return { speed: unratedFactor * limits.openingSpeed, rated: false };
  const mass = model.airframe.mass + motor.loadedMass - motor.propellantMass;
  const speeds = [0, top].map((z) =>
    strengthSpeed({
      mass,
      canopy,
      density: model.airAt(z).density,
      strength: Math.min(...ratings),
      gravity: model.gravityAt(z),
    }),
  );
  return { speed: Math.min(...speeds), rated: true };
}

/** Way that the first canopy covers while it fills [m]. */
export function fillDistanceOf(model: FlightModel): number {
  const { drogue, main } = model.inputs.recovery;
  return fillDistance((drogue ?? main).canopy);
}
