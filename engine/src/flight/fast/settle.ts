import { cellOf, type f64 } from "../../math/doubles.js";
import { lowestShear, settledSwing } from "../bounds.js";
import * as at from "./slots.js";
import type { FastWork } from "./work.js";

/**
 * Hands over to the settled model where the swing is below the bound: adds the impulse that the rest of it will give.
 *
 * The same measure as `swingLeft`, from the tables.
 *
 * @returns whether it has handed over
 */
export function handOver(w: FastWork, t: f64): boolean {
  const c = w.slots;
  const y = w.y;
  const air = w.air;
  const wind = w.wind;
  const aero = w.aero;
  const stride = w.aeroStride;
  const z = y[0]!;
  const vz = y[3]!;
  const dt = t - c[at.STRETCH_FROM]!;
  const spent = c[at.SPENT0]! + dt * (c[at.SPENT1]! + dt * c[at.SPENT2]!);
  const motorMass = c[at.MOTOR_LOADED]! - c[at.PROPELLANT]! * spent;
  const frameMass = c[at.FRAME_MASS]!;
  const mass = frameMass + motorMass;
  const apart = c[at.MOTOR_CENTRE]! - c[at.FRAME_BALANCE]!;
  const balance = c[at.FRAME_BALANCE]! + (motorMass / mass) * apart;
  const inertia =
    c[at.FRAME_INERTIA]! + motorMass * c[at.MOTOR_GYRATION]! + ((frameMass * motorMass) / mass) * apart * apart;

  const airCell = cellOf(Math.max(z, 0) * c[at.INVERSE_AIR_STEP]!, w.lastAirCell);
  const density = air[2 * airCell]!;
  let cell = w.lastWindCell;
  let part: f64 = 1;
  if (z > 0 && z < c[at.WIND_TOP]!) {
    const place = Math.sqrt(Math.sqrt(z)) * c[at.WIND_SCALE]!;
    cell = cellOf(place, cell);
    part = place - cell;
  }
  cell *= 2;
  const riseEast = wind[cell + 2]! - wind[cell]!;
  const riseNorth = wind[cell + 3]! - wind[cell + 1]!;
  const ux = y[1]! - wind[cell]! - part * riseEast;
  const uy = y[2]! - wind[cell + 1]! - part * riseNorth;
  const speed2 = ux * ux + uy * uy + vz * vz;
  const speed = Math.sqrt(speed2);

  const node = cellOf(speed * air[2 * airCell + 1]! * c[at.INVERSE_MACH_STEP]!, w.lastMachCell) * stride;
  const slope = aero[node]!;
  const moment = aero[node + 1]! - slope * balance;
  const pressureArea = 0.5 * density * speed2 * c[at.AREA]!;
  c[at.SWING_FREQUENCY2] = 0;
  if (!(moment > 0 && pressureArea > 0)) return false;
  const damping = aero[node + 2]! - balance * (2 * aero[node + 1]! - balance * slope);
  const jetArm = c[at.MOTOR_AFT]! - balance;
  const jet = c[at.PROPELLANT]! * (c[at.SPENT1]! + 2 * dt * c[at.SPENT2]!) * jetArm * jetArm;
  const lag = damping / (speed * moment) + jet / (pressureArea * moment);
  const thrust = c[at.THRUST]! + dt * c[at.THRUST_SLOPE]!;
  const resistance = (thrust * lag + pressureArea * (slope * lag - moment / speed)) / mass;
  const frequency2 = (pressureArea * moment) / inertia;
  c[at.SWING_FREQUENCY2] = frequency2;

  const aloft = z > lowestShear && z < c[at.WIND_TOP]!;
  const perHeight = aloft ? (0.5 * cell + part) / (4 * z) : 0;
  const gx = -vz * (aloft ? riseEast * perHeight : z <= lowestShear ? c[at.LOW_SHEAR_EAST]! : 0);
  const gy = -vz * (aloft ? riseNorth * perHeight : z <= lowestShear ? c[at.LOW_SHEAR_NORTH]! : 0);
  const gz = -(c[at.GRAVITY0]! + z * c[at.GRAVITY1]!);
  const alongPath = (gx * ux + gy * uy + gz * vz) / speed2;
  const perTurn = 1 / (speed + resistance);
  const nx = (gx - alongPath * ux) * perTurn;
  const ny = (gy - alongPath * uy) * perTurn;
  const nz = (gz - alongPath * vz) * perTurn;
  const ex = y[4]! - ux / speed + lag * nx;
  const ey = y[5]! - uy / speed + lag * ny;
  const ez = y[6]! - vz / speed + lag * nz;
  const rx = y[7]! - nx;
  const ry = y[8]! - ny;
  const rz = y[9]! - nz;
  const swing2 = ex * ex + ey * ey + ez * ez + (rx * rx + ry * ry + rz * rz) / frequency2;
  if (!(swing2 < settledSwing * settledSwing)) return false;
  const swingDamping = (lag * pressureArea * moment) / inertia;
  const perAngle = (thrust + pressureArea * slope) / mass;
  const perRate = (pressureArea * moment) / (mass * speed);
  const whole = 1 + (perAngle * swingDamping) / (frequency2 * speed) - perRate / speed;
  const ofRate = perAngle / (frequency2 * whole);
  const ofAngle = ofRate * swingDamping - perRate / whole;
  y[1] = y[1]! + ofRate * rx + ofAngle * ex;
  y[2] = y[2]! + ofRate * ry + ofAngle * ey;
  y[3] = vz + ofRate * rz + ofAngle * ez;
  return true;
}
