import { type FlightModel, massIn } from "../flight/model.js";
import type { FlightResult } from "../flight/result.js";
import type { Kinematics } from "../flight/trajectory.js";
import { cpWithBodyLift } from "../rocket/body-lift.js";
import { staticMargin } from "../rocket/margin.js";
import { cpOf } from "../rocket/normal-force/parts.js";
import type { MarginAt, Stability } from "./decision.js";

function balanceAt(model: FlightModel, time: number): number {
  const stretch = model.stretches.find((s) => time >= s.from && time <= s.to) ?? model.stretches[0]!;
  return massIn(model, stretch, time).balance;
}

function marginAt(model: FlightModel, cp: number, time: number): MarginAt {
  const { diameter, length } = model.inputs.rocket;
  const balance = balanceAt(model, time);
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
 * Static stability at guide exit, there also at the angle of attack that the wind makes, and at burnout.
 *
 * A flight that never left the guide is judged at ignition.
 */
export function stabilityOf(flight: FlightResult): Stability {
  const { model, events } = flight;
  const mach = (at: Kinematics | null): number => (model.options.compressibility ? (at?.mach ?? 0) : 0);
  const exitTime = events.guideExit?.time ?? 0;
  const exitMach = mach(events.guideExit);
  const angle = events.guideExit === null ? 0 : guideExitAngle(events.guideExit, model);
  const atAngle =
    model.bodyLift === null
      ? cpOf(model.parts, exitMach)
      : cpWithBodyLift({
          parts: model.parts,
          bodyLift: model.bodyLift,
          alpha: angle,
          mach: exitMach,
          referenceArea: model.area,
        });
  return {
    cp: cpOf(model.parts, 0),
    guideExit: marginAt(model, cpOf(model.parts, exitMach), exitTime),
    guideExitAtAngle: { ...marginAt(model, atAngle, exitTime), angle },
    burnout: marginAt(model, cpOf(model.parts, mach(events.burnout)), events.burnout?.time ?? model.burn.end),
  };
}
