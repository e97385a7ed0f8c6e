import type { Derivatives } from "./integrate.js";
import { type FlightModel, massIn, type Stretch, thrustIn } from "./model.js";

/** State of the pitching body: position, velocity, axis, transverse angular velocity, three each. */
export const pitchingSize = 12;

/**
 * A body that does not roll: every part meets its own local airflow, so that stiffness and damping come together.
 *
 * Forces: thrust and axial drag along the axis, the normal force of each part across it, cross-flow lift of the body, weight.
 * Moments about the balance point, jet damping; the change of inertia is left out (jet damping stands for it).
 *
 * @source Normal force by parts: J. S. Barrowman, The Practical Calculation of the Aerodynamic Characteristics of Slender
 *   Finned Vehicles (1967); cross-flow: S. F. Hoerner, Fluid-Dynamic Drag (1965), memory
 */
export function pitchingRates(model: FlightModel, stretch: Stretch): Derivatives {
  return (t, y, rates) => pitchingRatesAt(model, stretch, t, y, rates);
}

/** One function for all flights: what was compiled for a function made anew each time is thrown away with it. */
function pitchingRatesAt(model: FlightModel, stretch: Stretch, t: number, y: Float64Array, rates: Float64Array): void {
  const { area, parts, bodyLift, options } = model;
  const z = y[2]!;
  const [vx, vy, vz] = [y[3]!, y[4]!, y[5]!];
  const [ax, ay, az] = [y[6]!, y[7]!, y[8]!];
  const [wx, wy, wz] = [y[9]!, y[10]!, y[11]!];
  const body = massIn(model, stretch, t);
  const air = model.airAt(z);
  const wind = model.windAt(z);
  const [ux, uy, uz] = [vx - wind[0], vy - wind[1], vz - wind[2]];
  const speed = Math.sqrt(ux * ux + uy * uy + uz * uz);
  const mach = speed / air.soundSpeed;
  const slopeMach = options.compressibility ? mach : 0;
  const pressureArea = 0.5 * air.density * speed * speed * area;
  const along = ux * ax + uy * ay + uz * az;
  const cd = model.drag(mach, (speed * air.density) / air.viscosity, stretch.thrusting);
  const axial = thrustIn(stretch, t) - Math.sign(along) * pressureArea * cd;
  let [fx, fy, fz] = [axial * ax, axial * ay, axial * az];
  let [mx, my, mz] = [0, 0, 0];

  // every part, then the body's own lift
  const count = parts.length + (bodyLift === null ? 0 : 1);
  for (let i = 0; i < count; i++) {
    const part = parts[i];
    const arm = body.balance - (part === undefined ? bodyLift!.at : part.cpAt(slopeMach));
    const [rx, ry, rz] = [arm * ax, arm * ay, arm * az];
    const [lx, ly, lz] = [ux + wy * rz - wz * ry, uy + wz * rx - wx * rz, uz + wx * ry - wy * rx];
    const here = lx * ax + ly * ay + lz * az;
    const [tx, ty, tz] = [lx - here * ax, ly - here * ay, lz - here * az];
    const across = Math.sqrt(tx * tx + ty * ty + tz * tz);
    if (across === 0) continue;
    const sine = Math.sin(Math.atan2(across, here));
    const strength =
      part === undefined
        ? (pressureArea / area) * bodyLift!.area * bodyLift!.cdc * sine ** 2
        : pressureArea * part.slopeAt(slopeMach) * sine;
    const force = -strength / across;
    const [px, py, pz] = [force * tx, force * ty, force * tz];
    fx += px;
    fy += py;
    fz += pz;
    mx += ry * pz - rz * py;
    my += rz * px - rx * pz;
    mz += rx * py - ry * px;
  }
  const jet = body.flow * (model.inputs.rocket.mount.motorAftAt - body.balance) ** 2;
  mx -= jet * wx;
  my -= jet * wy;
  mz -= jet * wz;

  rates[0] = vx;
  rates[1] = vy;
  rates[2] = vz;
  rates[3] = fx / body.mass;
  rates[4] = fy / body.mass;
  rates[5] = fz / body.mass - model.gravityAt(z);
  rates[6] = wy * az - wz * ay;
  rates[7] = wz * ax - wx * az;
  rates[8] = wx * ay - wy * ax;
  rates[9] = mx / body.inertia;
  rates[10] = my / body.inertia;
  rates[11] = mz / body.inertia;
}
