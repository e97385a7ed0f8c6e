import { lowestShear } from "./bounds.js";
import type { Derivatives } from "./integrate.js";
import { type FlightModel, massIn, type Stretch, thrustIn } from "./model.js";
import { trimAt, turnGrowth } from "./settled.js";

/** State of the point mass: position and velocity, three each. */
export const alignedSize = 6;

const shearStep = 0.05;

/**
 * A point mass whose axis lies along its air-relative velocity.
 *
 * With `settled` the quasi-steady trim of the turning path stays part of the model: its side force slows the turn of the
 * path. Without it this is the plain aligned model.
 */
export function alignedRates(model: FlightModel, stretch: Stretch, settled: boolean): Derivatives {
  return (t, y, rates) => alignedRatesAt(model, stretch, settled, t, y, rates);
}

/** One function for all flights, as `pitchingRatesAt` is. */
function alignedRatesAt(
  model: FlightModel,
  stretch: Stretch,
  settled: boolean,
  t: number,
  y: Float64Array,
  rates: Float64Array,
): void {
  const z = y[2]!;
  const [vx, vy, vz] = [y[3]!, y[4]!, y[5]!];
  const { mass } = massIn(model, stretch, t);
  const air = model.airAt(z);
  const wind = model.windAt(z);
  const [ux, uy, uz] = [vx - wind[0], vy - wind[1], vz - wind[2]];
  const speed = Math.sqrt(ux * ux + uy * uy + uz * uz);
  const mach = speed / air.soundSpeed;
  const drag =
    0.5 * air.density * speed * model.area * model.drag(mach, (speed * air.density) / air.viscosity, stretch.thrusting);
  const push = ((speed > 0 ? thrustIn(stretch, t) / speed : 0) - drag) / mass;
  rates[0] = vx;
  rates[1] = vy;
  rates[2] = vz;
  rates[3] = push * ux;
  rates[4] = push * uy;
  rates[5] = push * uz - model.gravityAt(z);
  if (!settled || speed === 0) return;

  const growth = turnGrowth(model.gravityAt(z), uz / speed, push * speed, speed);
  const { resistance } = trimAt(model, stretch, { time: t, density: air.density, speed, mach, growth });
  const [sx, sy] = shear(model, z);
  // gravity less the change of the wind met on the way up, across the path
  const [gx, gy, gz] = [-sx * vz, -sy * vz, -model.gravityAt(z)];
  const alongPath = (gx * ux + gy * uy + gz * uz) / (speed * speed);
  const slow = resistance / (speed + resistance);
  rates[3]! -= slow * (gx - alongPath * ux);
  rates[4]! -= slow * (gy - alongPath * uy);
  rates[5]! -= slow * (gz - alongPath * uz);
}

/** Change of the wind per metre of height [1/s], east and north. */
export function shear(model: FlightModel, z: number): readonly [number, number] {
  const height = Math.max(z, lowestShear);
  const above = model.windAt(height + shearStep);
  const below = model.windAt(height - shearStep);
  return [(above[0] - below[0]) / (2 * shearStep), (above[1] - below[1]) / (2 * shearStep)];
}
