import type { FlightModel, Stretch } from "./model.js";
import { massIn, thrustIn } from "./model.js";

/**
 * The quasi-steady answer of the body to a slow turn of its path.
 *
 * A body that turns at rate n meets damping at every part, and resists a change of n by its inertia; the trim angle is the
 * angle of attack whose restoring moment carries both: the axis lags the path by `lag` n. The side force that goes with it
 * slows the turn of the path itself by `resistance` [m/s] added to the airspeed:
 * V n = (gravity and shear across the path) − resistance · n.
 */
export interface Trim {
  /** Angle by which the axis lags the path, per turn rate [s]. */
  readonly lag: number;
  /** Side force per mass and turn rate [m/s]. */
  readonly resistance: number;
  /** Frequency of the swing [rad/s]; 0 where the body is not stable. */
  readonly frequency: number;
  /** Damping of the swing over inertia, c/I [1/s]. */
  readonly damping: number;
  /** Normal force per radian [N], and restoring moment per radian [N m]. */
  readonly slopeForce: number;
  readonly momentForce: number;
}

/** How the body moves at the moment for which the trim is wanted. */
export interface Moving {
  readonly time: number;
  /** [kg/m³] */
  readonly density: number;
  /** Airspeed [m/s]. */
  readonly speed: number;
  readonly mach: number;
  /** Rate at which the turn rate grows, as a share of itself [1/s], ≥ 0: see `turnGrowth`. */
  readonly growth: number;
}

const untrimmed: Trim = { lag: 0, resistance: 0, frequency: 0, damping: 0, slopeForce: 0, momentForce: 0 };

/**
 * Growth of the turn rate in a gravity turn: n = g sin γ / V grows as 2 g cos γ / V − (T − D) / (m V), γ from the vertical.
 *
 * @param push acceleration along the path by thrust and drag [m/s²]
 * @param climb upward share of the airflow, cos γ
 * @returns [1/s]; 0 where the turn slackens, as it does on the way down
 */
export function turnGrowth(gravity: number, climb: number, push: number, speed: number): number {
  return Math.max(0, (2 * gravity * climb - push) / speed);
}

/**
 * Trim at one moment, from the small-angle limit of the pitching model.
 *
 * For a turn rate that grows as exp(s t) the linear body answers with lag (2ζω + s) / (ω² + 2ζω s + s²); with s = 0 that is
 * the steady lag Σ CN x² / (V Σ CN x), x from the balance point.
 *
 * @returns no lag and no resistance where the centre of pressure is not behind the balance point
 * @source small-angle limit of the pitching model's equations (derivation in docs/models.md)
 */
export function trimAt(model: FlightModel, stretch: Stretch, moving: Moving): Trim {
  const { time, density, speed, growth } = moving;
  const body = massIn(model, stretch, time);
  const mach = model.options.compressibility ? moving.mach : 0;
  let slope = 0;
  let moment = 0;
  let damping = 0;
  for (const part of model.parts) {
    const each = part.slopeAt(mach);
    const arm = part.cpAt(mach) - body.balance;
    slope += each;
    moment += each * arm;
    damping += each * arm * arm;
  }
  const pressureArea = 0.5 * density * speed * speed * model.area;
  if (!(moment > 0 && pressureArea > 0)) return untrimmed;
  const jet = body.flow * (model.inputs.rocket.mount.motorAftAt - body.balance) ** 2;
  const steady = damping / (speed * moment) + jet / (pressureArea * moment);
  const stiffness = (pressureArea * moment) / body.inertia;
  const lag = (steady * stiffness + growth) / (stiffness + growth * (steady * stiffness + growth));
  const side = thrustIn(stretch, time) * lag + pressureArea * (slope * lag - moment / speed);
  return {
    lag,
    resistance: side / body.mass,
    frequency: Math.sqrt(stiffness),
    damping: steady * stiffness,
    slopeForce: pressureArea * slope,
    momentForce: pressureArea * moment,
  };
}
