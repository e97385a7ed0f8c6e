import type { Stretch } from "../model.js";
import type { RigidBody } from "./body.js";
import * as at from "./slots.js";

/** Works out everything that acts on the body at one moment, into the slots. */
export type Loads = (t: number, y: Float64Array) => void;

/**
 * Forces and moments on the rigid body in body axes, with its mass and inertia at that moment.
 *
 * The forces are those of the pitching model; beside them the thrust line, fin cant and roll damping, the inertia's change, and, over
 * the body's length, the wind and the gust that each part meets.
 *
 * @param f slots, see `slots.ts`; filled at each call
 */
export function rigidLoads(body: RigidBody, stretch: Stretch, f: Float64Array): Loads {
  const { model, switches, aero, air: airRows, rolls, thrustLine, rollInertia } = body;
  const { area, parts, bodyLift, airframe, motorPlace, totalImpulse, inputs, options, turbulence } = model;
  const { loadedMass, propellantMass } = inputs.motor;
  const { motorAftAt } = inputs.rocket.mount;
  const { compressibility } = options;
  const { windOverBody, inertiaChange } = switches;
  const partCount = parts.length;
  const apart = motorPlace.centre - airframe.balance;
  const [sideY, sideZ] = thrustLine.side;
  const [offsetY, offsetZ] = thrustLine.offset;
  const gust = new Float64Array(3);
  const gustThere = new Float64Array(3);
  const pace = new Float64Array(2);

  return (t, y) => {
    const z = y[2]!;
    // mass, balance, inertia
    const dt = t - stretch.from;
    const thrust = stretch.thrust + stretch.slope * dt;
    const spent = (stretch.impulse + dt * (stretch.thrust + 0.5 * stretch.slope * dt)) / totalImpulse;
    const motorMass = loadedMass - propellantMass * Math.min(1, spent);
    const flow = (propellantMass * thrust) / totalImpulse;
    const mass = airframe.mass + motorMass;
    const share = airframe.mass / mass;
    const balance = airframe.balance + (motorMass / mass) * apart;
    const inertia = airframe.inertia + motorMass * (motorPlace.gyration + share * apart * apart);
    const inertiaRate = inertiaChange ? -flow * (motorPlace.gyration + share * share * apart * apart) : 0;

    // body axes in the world
    const qw = y[6]!;
    const qx = y[7]!;
    const qy = y[8]!;
    const qz = y[9]!;
    const s = 2 / (qw * qw + qx * qx + qy * qy + qz * qz);
    const xe = 1 - s * (qy * qy + qz * qz);
    const xn = s * (qx * qy + qw * qz);
    const xu = s * (qx * qz - qw * qy);
    const ye = s * (qx * qy - qw * qz);
    const yn = 1 - s * (qx * qx + qz * qz);
    const yu = s * (qy * qz + qw * qx);
    const ze = s * (qx * qz + qw * qy);
    const zn = s * (qy * qz - qw * qx);
    const zu = 1 - s * (qx * qx + qy * qy);
    const p = y[10]!;
    const q = y[11]!;
    const r = y[12]!;

    // air
    const airAt = airRows.locate(z);
    const density = airRows.value(airAt, 0);
    const perSound = airRows.value(airAt, 1);
    const logReynolds = airRows.value(airAt, 2);
    const here = model.windAt(z);
    let ue = y[3]! - here[0];
    let un = y[4]! - here[1];
    let uu = y[5]!;
    if (turbulence !== null) {
      const flown = Math.sqrt(ue * ue + un * un + uu * uu);
      turbulence.pace(z, pace);
      f[at.PACE_HORIZONTAL] = flown * pace[0]!;
      f[at.PACE_VERTICAL] = flown * pace[1]!;
      turbulence.gust(y[13]!, y[14]!, z, gust);
      ue -= gust[0]!;
      un -= gust[1]!;
      uu -= gust[2]!;
    }
    const speed = Math.sqrt(ue * ue + un * un + uu * uu);
    const mach = speed * perSound;
    const pressureArea = 0.5 * density * speed * speed * area;
    const along = ue * xe + un * xn + uu * xu;
    const uy = ue * ye + un * yn + uu * yu;
    const uz = ue * ze + un * zn + uu * zu;

    const cd = body.drag(mach, logReynolds, mach * Math.exp(logReynolds), stretch.thrusting);
    const drag = along > 0 ? pressureArea * cd : along < 0 ? -pressureArea * cd : 0;
    let fy = thrust * sideY;
    let fz = thrust * sideZ;
    const nozzle = balance - motorAftAt;
    let roll = 0;
    let mq = -nozzle * fz + offsetZ * thrust * thrustLine.along;
    let mr = nozzle * fy - offsetY * thrust * thrustLine.along;

    // normal force of each part, then of the body across the flow, each in its own air
    const aeroAt = aero.locate(compressibility ? mach : 0);
    const last = bodyLift === null ? partCount : partCount + 1;
    for (let i = 0; i < last; i++) {
      const arm = balance - (i < partCount ? aero.value(aeroAt, 2 * i + 1) : bodyLift!.at);
      let vx = along;
      let vy = uy + r * arm;
      let vz = uz - q * arm;
      if (windOverBody) {
        const there = model.windAt(z + arm * xu);
        let e = there[0] - here[0];
        let n = there[1] - here[1];
        let u = 0;
        if (turbulence !== null) {
          turbulence.gust(y[13]! + arm * pace[0]!, y[14]! + arm * pace[1]!, z, gustThere);
          e += gustThere[0]! - gust[0]!;
          n += gustThere[1]! - gust[1]!;
          u = gustThere[2]! - gust[2]!;
        }
        vx -= e * xe + n * xn + u * xu;
        vy -= e * ye + n * yn + u * yu;
        vz -= e * ze + n * zn + u * zu;
      }
      const across2 = vy * vy + vz * vz;
      const flow2 = vx * vx + across2;
      if (flow2 === 0) continue;
      const push =
        i < partCount
          ? (-pressureArea * aero.value(aeroAt, 2 * i)) / Math.sqrt(flow2)
          : (-(pressureArea / area) * bodyLift!.area * bodyLift!.cdc * Math.sqrt(across2)) / flow2;
      fy += push * vy;
      fz += push * vz;
      mq -= arm * push * vz;
      mr += arm * push * vy;
    }
    for (let i = 0; i < rolls.length; i++) {
      const { forcing, damping } = rolls[i]!;
      roll += 0.5 * density * speed * area * aero.value(aeroAt, 2 * partCount + i) * (forcing * along - damping * p);
    }
    const lever = motorAftAt - balance;
    const swing = flow * lever * lever + inertiaRate;
    mq -= swing * q;
    mr -= swing * r;

    f[at.FORCE_X] = thrust * thrustLine.along - drag;
    f[at.FORCE_Y] = fy;
    f[at.FORCE_Z] = fz;
    f[at.MOMENT_X] = roll;
    f[at.MOMENT_Y] = mq;
    f[at.MOMENT_Z] = mr;
    f[at.MASS] = mass;
    f[at.INERTIA] = inertia;
    f[at.ROLL_INERTIA] = rollInertia.airframe + motorMass * rollInertia.motorGyration;
    f[at.BALANCE] = balance;
    f[at.XE] = xe;
    f[at.XN] = xn;
    f[at.XU] = xu;
    f[at.YE] = ye;
    f[at.YN] = yn;
    f[at.YU] = yu;
    f[at.ZE] = ze;
    f[at.ZN] = zn;
    f[at.ZU] = zu;
  };
}
