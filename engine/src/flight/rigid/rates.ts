import type { Derivatives } from "../integrate.js";
import type { Stretch } from "../model.js";
import type { RigidBody } from "./body.js";
import { rigidLoads } from "./loads.js";
import * as at from "./slots.js";

/**
 * State of the rigid body: position, velocity (three each), attitude as a quaternion (four), angular velocity in body axes (three).
 * In turbulence the way flown in its two scale lengths follows.
 */
export const rigidSize = 13;
export const rigidSizeInTurbulence = 15;

/**
 * A rigid body with six degrees of freedom, symmetric about its axis.
 *
 * m dv/dt = F + m g; Euler's equations in body axes with roll inertia and transverse inertia; the quaternion turns with the angular
 * velocity. Gas that leaves carries the spin it had, so that burning changes no roll rate.
 *
 * @source Euler's equations of the symmetric top; the loads name theirs
 */
export function rigidRates(body: RigidBody, stretch: Stretch): Derivatives {
  const { model } = body;
  const f = new Float64Array(at.loadSlots);
  const loads = rigidLoads(body, stretch, f);
  const inTurbulence = model.turbulence !== null;
  return (t, y, rates) => {
    loads(t, y);
    const fx = f[at.FORCE_X]!;
    const fy = f[at.FORCE_Y]!;
    const fz = f[at.FORCE_Z]!;
    const perMass = 1 / f[at.MASS]!;
    rates[0] = y[3]!;
    rates[1] = y[4]!;
    rates[2] = y[5]!;
    rates[3] = (fx * f[at.XE]! + fy * f[at.YE]! + fz * f[at.ZE]!) * perMass;
    rates[4] = (fx * f[at.XN]! + fy * f[at.YN]! + fz * f[at.ZN]!) * perMass;
    rates[5] = (fx * f[at.XU]! + fy * f[at.YU]! + fz * f[at.ZU]!) * perMass - model.gravityAt(y[2]!);
    turn(y, rates);
    const p = y[10]!;
    const q = y[11]!;
    const r = y[12]!;
    const inertia = f[at.INERTIA]!;
    const gyro = (inertia - f[at.ROLL_INERTIA]!) * p;
    rates[10] = f[at.MOMENT_X]! / f[at.ROLL_INERTIA]!;
    rates[11] = (f[at.MOMENT_Y]! + gyro * r) / inertia;
    rates[12] = (f[at.MOMENT_Z]! - gyro * q) / inertia;
    if (inTurbulence) {
      rates[13] = f[at.PACE_HORIZONTAL]!;
      rates[14] = f[at.PACE_VERTICAL]!;
    }
  };
}

/** Rate of the quaternion: half its product with the angular velocity. */
export function turn(y: Float64Array, rates: Float64Array): void {
  const w = y[6]!;
  const i = y[7]!;
  const j = y[8]!;
  const k = y[9]!;
  const p = y[10]!;
  const q = y[11]!;
  const r = y[12]!;
  rates[6] = -0.5 * (i * p + j * q + k * r);
  rates[7] = 0.5 * (w * p + j * r - k * q);
  rates[8] = 0.5 * (w * q + k * p - i * r);
  rates[9] = 0.5 * (w * r + i * q - j * p);
}
