import type { FlightModel, Stretch } from "./model.js";
import { massIn, thrustIn } from "./model.js";

/**
 * The quasi-steady answer of the body to a slow turn of its path.
 *
 * A body that turns at rate n meets damping at every part; the trim angle is the angle of attack whose restoring moment
 * carries it: the axis lags the path by `lag` n. The side force that goes with it slows the turn of the path itself by
 * `resistance` [m/s] added to the airspeed: V n = (gravity and shear across the path) − resistance · n.
 */
export interface Trim {
  /** Angle by which the axis lags the path, per turn rate [s]. */
  readonly lag: number;
  /** Side force per mass and turn rate [m/s]. */
  readonly resistance: number;
  /** Frequency of the swing [rad/s]; 0 where the body is not stable. */
  readonly frequency: number;
}

const untrimmed: Trim = { lag: 0, resistance: 0, frequency: 0 };

/**
 * Trim at one moment, from the small-angle limit of the pitching model.
 *
 * @param density [kg/m³]
 * @param speed airspeed [m/s]
 * @param mach Mach number at which the slopes are taken
 * @returns no lag and no resistance where the centre of pressure is not behind the balance point
 * @source small-angle limit of the pitching model's equations (derivation in docs/models.md)
 */
export function trimAt(model: FlightModel, stretch: Stretch, t: number, density: number, speed: number, mach: number): Trim {
  const body = massIn(model, stretch, t);
  const slopeMach = model.options.compressibility ? mach : 0;
  let slope = 0;
  let moment = 0;
  let damping = 0;
  for (const part of model.parts) {
    const each = part.slopeAt(slopeMach);
    const arm = part.cpAt(slopeMach) - body.balance;
    slope += each;
    moment += each * arm;
    damping += each * arm * arm;
  }
  const pressureArea = 0.5 * density * speed * speed * model.area;
  if (!(moment > 0 && pressureArea > 0)) return untrimmed;
  const jet = body.flow * (model.inputs.rocket.mount.motorAftAt - body.balance) ** 2;
  const lag = damping / (speed * moment) + jet / (pressureArea * moment);
  const side = thrustIn(stretch, t) * lag + pressureArea * (slope * lag - moment / speed);
  return { lag, resistance: side / body.mass, frequency: Math.sqrt((pressureArea * moment) / body.inertia) };
}
