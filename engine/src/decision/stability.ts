import { type FlownMargin, marginAt, marginExtremes } from "../flight/margin-over-flight.js";
import type { FlightModel } from "../flight/model.js";
import type { FlightResult } from "../flight/result.js";
import type { Kinematics } from "../flight/trajectory.js";
import { cpWithBodyLift } from "../rocket/body-lift.js";
import { staticMargin } from "../rocket/margin.js";
import { cpOf } from "../rocket/normal-force/parts.js";
import type { MarginAt, Stability } from "./decision.js";

function plainly({ calibres, ofLength, cp, balance }: FlownMargin): MarginAt {
  return { calibres, ofLength, cp, balance };
}

/** Of another centre of pressure. */
function withCp({ balance }: FlownMargin, cp: number, { inputs }: FlightModel): MarginAt {
  const { diameter, length } = inputs.rocket;
  return { ...staticMargin({ cp, balance, diameter, length }), cp, balance };
}

/** Angle between the airflow and the guide as the rocket leaves it [rad]. */
function guideExitAngle(exit: Kinematics, model: FlightModel): number {
  const wind = model.windAt(exit.position[2]);
  const through = [0, 1, 2].map((i) => exit.velocity[i]! - wind[i]!);
  const along = through.reduce((sum, v, i) => sum + v * model.guideDirection[i]!, 0);
  return Math.acos(Math.min(1, along / Math.max(1e-9, Math.hypot(...through))));
}

/**
 * Static stability at guide exit, there also at the angle of attack that the wind makes, at burnout, and where it is least and most
 * on the way up.
 *
 * A flight that never left the guide is judged at ignition; on no way up the margins of guide exit stand.
 */
export function stabilityOf(flight: FlightResult): Stability {
  const { model, events } = flight;
  const exitMach = model.options.compressibility ? (events.guideExit?.mach ?? 0) : 0;
  const exit = marginAt(model, events.guideExit?.time ?? 0, exitMach);
  const angle = events.guideExit === null ? 0 : guideExitAngle(events.guideExit, model);
  const atAngle =
    model.bodyLift === null
      ? exit.cp
      : cpWithBodyLift({
          parts: model.parts,
          bodyLift: model.bodyLift,
          alpha: angle,
          mach: exitMach,
          referenceArea: model.area,
        });
  return {
    cp: cpOf(model.parts, 0),
    guideExit: plainly(exit),
    guideExitAtAngle: { ...withCp(exit, atAngle, model), angle },
    burnout: plainly(marginAt(model, events.burnout?.time ?? model.burn.end, events.burnout?.mach ?? 0)),
    inFlight: marginExtremes(flight) ?? { least: exit, most: exit },
  };
}
