import type { Descent } from "../flight/descent.js";
import type { FlightModel } from "../flight/model.js";
import { packingOf } from "../packing/packing.js";
import type { OpeningPoint } from "../packing/packing-inputs.js";
import type { Setting } from "./decision.js";
import type { DecisionInputs } from "./inputs.js";
import type { Landings, Packing } from "./landed.js";

/**
 * Charge, pins, ports, canopy, openings, harness, landing: by what is stated, the nominal flight opened at the setting that is to be flown,
 * and the draws' openings.
 *
 * @param opened the nominal flight under its canopies; null where it never opens
 * @param setting the one that is to be flown
 */
export function packingBy(
  inputs: DecisionInputs,
  model: FlightModel,
  opened: Descent | null,
  setting: Setting | null,
  landings: Landings,
): Packing {
  const { options, ...stated } = inputs.packing ?? {};
  const { motor, rocket, recovery } = inputs;
  const speed = setting?.openingSpeed?.p95;
  const openings = (opened?.openings ?? []).flatMap(({ which, airspeed, height }, i): OpeningPoint[] => {
    const point = { which, airspeed: i === 0 ? (speed ?? airspeed) : airspeed };
    return point.airspeed > 0
      ? [{ ...point, density: model.airAt(height).density, gravity: model.gravityAt(height) }]
      : [];
  });
  const { motorCharge, ...rest } = stated;
  const findings = packingOf(
    {
      ...rest,
      ...(motor.delay.kind === "none" ? {} : { motorCharge: motorCharge ?? {} }),
      rocketLength: rocket.length,
      mass: model.airframe.mass + motor.loadedMass - motor.propellantMass,
      recovery,
      openings,
      landing: {
        density: model.airAt(0).density,
        gravity: model.gravityAt(0),
        ...(opened?.landing ? { speed: opened.landing.groundSpeed } : {}),
      },
    },
    options,
  );
  const firstOpeningAt = openings.length === 0 ? null : speed === undefined ? "nominal" : "p95";
  return { ...findings, firstOpeningAt, landings };
}
