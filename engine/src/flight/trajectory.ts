import type { Vec3 } from "../math/vec3.js";
import { type DenseStep, evaluateDense } from "./integrate.js";
import type { FlightModel, Stretch } from "./model.js";
import { noseAxis } from "./rigid/attitude.js";

/** Phases of the unopened flight. `pivot`: the aft fitting alone is still on the guide. */
export type FlownPhase = "guide" | "pitching" | "aligned" | "pivot" | "rigid";

export type Phase = FlownPhase | "canopy";

/** Steps of one phase within one stretch of the thrust curve. */
export interface Leg<P extends Phase = FlownPhase> {
  readonly phase: P;
  readonly stretch: Stretch;
  readonly steps: readonly DenseStep[];
}

/** Where the rocket is and how it moves at one moment. */
export interface Kinematics {
  readonly time: number;
  /** East, north, up of the pad [m]. */
  readonly position: Vec3;
  /** Over ground [m/s]. */
  readonly velocity: Vec3;
  /** Unit vector towards the nose; along the airflow once the model is aligned. */
  readonly axis: Vec3;
  readonly airspeed: number;
  readonly mach: number;
  /** Angle between axis and airflow [rad]; 0 on the guide and once aligned. */
  readonly angleOfAttack: number;
  /** About the axis, right-handed towards the nose [rad/s]; 0 but in the rigid model. */
  readonly rollRate: number;
  readonly phase: Phase;
}

export function speedOf(v: Vec3): number {
  return Math.hypot(v[0], v[1], v[2]);
}

/** Reads a phase's state vector as motion in the world frame. */
export function kinematicsOf(model: FlightModel, phase: Phase, time: number, y: Float64Array): Kinematics {
  const d = model.guideDirection;
  const guided = phase === "guide";
  const position: Vec3 = guided ? [y[0]! * d[0], y[0]! * d[1], y[0]! * d[2]] : [y[0]!, y[1]!, y[2]!];
  const velocity: Vec3 = guided ? [y[1]! * d[0], y[1]! * d[1], y[1]! * d[2]] : [y[3]!, y[4]!, y[5]!];
  const turns = phase === "pivot" || phase === "rigid";
  const wind = turns ? windMet(model, position[2], y) : model.windAt(position[2]);
  const through: Vec3 = [velocity[0] - wind[0], velocity[1] - wind[1], velocity[2] - wind[2]];
  const airspeed = speedOf(through);
  const alongAir: Vec3 =
    airspeed > 0 ? [through[0] / airspeed, through[1] / airspeed, through[2] / airspeed] : [0, 0, 1];
  const axis: Vec3 = guided
    ? d
    : turns
      ? noseAxis([y[6]!, y[7]!, y[8]!, y[9]!])
      : phase === "pitching"
        ? [y[6]!, y[7]!, y[8]!]
        : alongAir;
  const cross = Math.hypot(
    axis[1] * alongAir[2] - axis[2] * alongAir[1],
    axis[2] * alongAir[0] - axis[0] * alongAir[2],
    axis[0] * alongAir[1] - axis[1] * alongAir[0],
  );
  const dot = axis[0] * alongAir[0] + axis[1] * alongAir[1] + axis[2] * alongAir[2];
  return {
    time,
    position,
    velocity,
    axis,
    airspeed,
    mach: airspeed / model.airAt(position[2]).soundSpeed,
    angleOfAttack: turns || phase === "pitching" ? Math.atan2(cross, dot) : 0,
    rollRate: turns ? y[10]! : 0,
    phase,
  };
}

/** Mean wind and gust together. */
function windMet(model: FlightModel, z: number, y: Float64Array): Vec3 {
  const wind = model.windAt(z);
  if (model.turbulence === null) return wind;
  const gust = new Float64Array(3);
  model.turbulence.gust(y[13]!, y[14]!, z, gust);
  return [wind[0] + gust[0]!, wind[1] + gust[1]!, wind[2] + gust[2]!];
}

/** Motion at any time between the first and the last step; beyond them the nearest end. */
export function trajectoryAt(model: FlightModel, legs: readonly Leg<Phase>[], time: number): Kinematics {
  const leg =
    legs.find((l) => (l.steps[l.steps.length - 1] as DenseStep).to >= time) ?? (legs[legs.length - 1] as Leg<Phase>);
  let low = 0;
  let high = leg.steps.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((leg.steps[middle] as DenseStep).to >= time) high = middle;
    else low = middle + 1;
  }
  const step = leg.steps[low] as DenseStep;
  const clamped = Math.min(Math.max(time, step.from), step.to);
  return kinematicsOf(
    model,
    leg.phase,
    clamped,
    evaluateDense(step, clamped, new Float64Array(step.coefficients.length / 5)),
  );
}
