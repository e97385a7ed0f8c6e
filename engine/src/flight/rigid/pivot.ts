import type { Derivatives } from "../integrate.js";
import type { Stretch } from "../model.js";
import type { RigidBody } from "./body.js";
import { rigidLoads } from "./loads.js";
import { turn } from "./rates.js";
import * as at from "./slots.js";

/**
 * The rocket between the moments at which its forward and its aft fitting leave the guide: the aft one still runs along it, without
 * friction, and the body swings about it.
 *
 * State as `rigidRates`. With c the cross product of axis and guide and b the balance point's way ahead of the fitting, the guide's
 * push drops out of the moments about the fitting: (I + m b²) dω/dt = M + b a × (F + m g) − m b S' c, where S' is the fitting's own
 * acceleration along the guide, which ω and dω/dt move by their parts along it. Roll is held by the guide.
 *
 * @source Newton's and Euler's equations with one sliding pivot (derivation in docs/models.md)
 */
export function pivotRates(body: RigidBody, stretch: Stretch): Derivatives {
  const { model, pivotAt } = body;
  const [de, dn, du] = model.guideDirection;
  const f = new Float64Array(at.loadSlots);
  const loads = rigidLoads(body, stretch, f);
  const inTurbulence = model.turbulence !== null;
  return (t, y, rates) => {
    loads(t, y);
    const xe = f[at.XE]!;
    const xn = f[at.XN]!;
    const xu = f[at.XU]!;
    const ye = f[at.YE]!;
    const yn = f[at.YN]!;
    const yu = f[at.YU]!;
    const ze = f[at.ZE]!;
    const zn = f[at.ZN]!;
    const zu = f[at.ZU]!;
    const mass = f[at.MASS]!;
    const q = y[11]!;
    const r = y[12]!;
    const b = pivotAt - f[at.BALANCE]!;
    // force with weight, guide direction and their cross products with the axis, all in body axes
    const pull = mass * model.gravityAt(y[2]!);
    const fx = f[at.FORCE_X]! - pull * xu;
    const fy = f[at.FORCE_Y]! - pull * yu;
    const fz = f[at.FORCE_Z]! - pull * zu;
    const dx = de * xe + dn * xn + du * xu;
    const dy = de * ye + dn * yn + du * yu;
    const dz = de * ze + dn * zn + du * zu;
    // a × v = (0, −vz, vy)
    const cy = -dz;
    const cz = dy;
    const spin2 = q * q + r * r;
    const slide = (fx * dx + fy * dy + fz * dz) / mass + b * spin2 * dx;
    const whole = f[at.INERTIA]! + mass * b * b;
    const ny = f[at.MOMENT_Y]! - b * fz - mass * b * slide * cy;
    const nz = f[at.MOMENT_Z]! + b * fy - mass * b * slide * cz;
    const coupling = mass * b * b;
    const back = (coupling * (cy * ny + cz * nz)) / (whole - coupling * (cy * cy + cz * cz));
    const turnY = (ny + back * cy) / whole;
    const turnZ = (nz + back * cz) / whole;
    const along = slide - b * (turnY * cy + turnZ * cz);
    // dω/dt × a = (0, ω̇z, −ω̇y) in body axes, seen from a frame that does not turn
    const ax = along * dx - b * spin2;
    const ay = along * dy + b * turnZ;
    const az = along * dz - b * turnY;
    rates[0] = y[3]!;
    rates[1] = y[4]!;
    rates[2] = y[5]!;
    rates[3] = ax * xe + ay * ye + az * ze;
    rates[4] = ax * xn + ay * yn + az * zn;
    rates[5] = ax * xu + ay * yu + az * zu;
    turn(y, rates);
    rates[10] = 0;
    rates[11] = turnY;
    rates[12] = turnZ;
    if (inTurbulence) {
      rates[13] = f[at.PACE_HORIZONTAL]!;
      rates[14] = f[at.PACE_VERTICAL]!;
    }
  };
}
