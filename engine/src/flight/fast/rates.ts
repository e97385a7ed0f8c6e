import { cellOf, type Doubles, type f64, type i32 } from "../../math/doubles.js";
import { lowestShear } from "../bounds.js";
import * as at from "./slots.js";
import type { FastWork } from "./work.js";

/**
 * The right-hand sides of the hot loop: the same equations as `pitching.ts`, `aligned.ts` and `guide.ts`, rewritten.
 *
 * The pitching state is height, velocity, axis a and its rate d = ω × a, ten numbers: with ω · a = 0 every part's local
 * airflow is u + l d (l from the part to the balance point), its part along the axis is u · a for all of them, and
 * sin(atan2(y, x)) = y/√(x² + y²). So forces and moments need three sums over the parts and no cross product:
 * F = −q A (S0 u⊥ + S1 d), I dd/dt = −q A (S1 u⊥ + S2 d) − jet d − I |d|² a.
 */
export function pitchingRates(w: FastWork, t: f64, y: Doubles, k: Doubles, row: i32): void {
  const c = w.slots;
  const z = y[0]!;
  const vx = y[1]!;
  const vy = y[2]!;
  const vz = y[3]!;
  const ax = y[4]!;
  const ay = y[5]!;
  const az = y[6]!;
  const dx = y[7]!;
  const dy = y[8]!;
  const dz = y[9]!;

  const dt = t - c[at.STRETCH_FROM]!;
  const motorMass =
    c[at.MOTOR_LOADED]! - c[at.PROPELLANT]! * (c[at.SPENT0]! + dt * (c[at.SPENT1]! + dt * c[at.SPENT2]!));
  const frameMass = c[at.FRAME_MASS]!;
  const perMass = 1 / (frameMass + motorMass);
  const apart = c[at.MOTOR_CENTRE]! - c[at.FRAME_BALANCE]!;
  const balance = c[at.FRAME_BALANCE]! + motorMass * perMass * apart;
  const inertia =
    c[at.FRAME_INERTIA]! + motorMass * c[at.MOTOR_GYRATION]! + frameMass * motorMass * perMass * apart * apart;

  const air = w.air;
  const airPlace = z > 0 ? z * c[at.INVERSE_AIR_STEP]! : 0;
  let cell = cellOf(airPlace, w.lastAirCell);
  let part = airPlace - cell;
  cell *= 2;
  const density = air[cell]! + part * (air[cell + 2]! - air[cell]!);
  const perSound = air[cell + 1]! + part * (air[cell + 3]! - air[cell + 1]!);

  const wind = w.wind;
  const windPlace =
    z > 0 ? (z < c[at.WIND_TOP]! ? Math.sqrt(Math.sqrt(z)) * c[at.WIND_SCALE]! : w.lastWindCell + 1) : 0;
  cell = cellOf(windPlace, w.lastWindCell);
  part = windPlace - cell;
  cell *= 2;
  const ux = vx - (wind[cell]! + part * (wind[cell + 2]! - wind[cell]!));
  const uy = vy - (wind[cell + 1]! + part * (wind[cell + 3]! - wind[cell + 1]!));
  const uz = vz;

  const speed2 = ux * ux + uy * uy + uz * uz;
  const along = ux * ax + uy * ay + uz * az;
  const tx = ux - along * ax;
  const ty = uy - along * ay;
  const tz = uz - along * az;
  const across2 = tx * tx + ty * ty + tz * tz;
  const mixed = 2 * (tx * dx + ty * dy + tz * dz);
  const turn2 = dx * dx + dy * dy + dz * dz;
  const along2 = along * along;
  const pressureArea = 0.5 * density * speed2 * c[at.AREA]!;

  const machPlace = Math.sqrt(speed2) * perSound * c[at.INVERSE_MACH_STEP]!;
  const machCell = cellOf(machPlace, w.lastMachCell);
  const machPart = machPlace - machCell;
  const axial = halfDragArea(w, z, machCell, machPart) * density * speed2;
  const aero = w.aero;
  const stride = w.aeroStride;
  let node = machCell * stride + 3;
  let s0: f64 = 0;
  let s1: f64 = 0;
  let s2: f64 = 0;
  for (let i = 0; i < w.partCount; i++) {
    const slope = aero[node]! + machPart * (aero[node + stride]! - aero[node]!);
    const arm = balance - (aero[node + 1]! + machPart * (aero[node + stride + 1]! - aero[node + 1]!));
    const strength = slope / Math.sqrt(across2 + arm * (mixed + arm * turn2) + along2);
    s0 += strength;
    s1 += strength * arm;
    s2 += strength * arm * arm;
    node += 2;
  }
  const crossFlow = c[at.CROSS_FLOW]!;
  if (crossFlow > 0) {
    const arm = balance - c[at.CROSS_FLOW_AT]!;
    const here2 = across2 + arm * (mixed + arm * turn2);
    const strength = (crossFlow * Math.sqrt(Math.max(here2, 0))) / (here2 + along2);
    s0 += strength;
    s1 += strength * arm;
    s2 += strength * arm * arm;
  }

  const push = (c[at.THRUST]! + dt * c[at.THRUST_SLOPE]! - (along > 0 ? axial : -axial)) * perMass;
  const side = -pressureArea * perMass;
  k[row] = vz;
  k[row + 1] = push * ax + side * (s0 * tx + s1 * dx);
  k[row + 2] = push * ay + side * (s0 * ty + s1 * dy);
  k[row + 3] = push * az + side * (s0 * tz + s1 * dz) - (c[at.GRAVITY0]! + z * (c[at.GRAVITY1]! + z * c[at.GRAVITY2]!));
  k[row + 4] = dx;
  k[row + 5] = dy;
  k[row + 6] = dz;
  const jetArm = c[at.MOTOR_AFT]! - balance;
  const flow = c[at.PROPELLANT]! * (c[at.SPENT1]! + 2 * dt * c[at.SPENT2]!);
  const turnBack = (-pressureArea * s1) / inertia;
  const damp = -(pressureArea * s2 + flow * jetArm * jetArm) / inertia;
  k[row + 7] = turnBack * tx + damp * dx - turn2 * ax;
  k[row + 8] = turnBack * ty + damp * dy - turn2 * ay;
  k[row + 9] = turnBack * tz + damp * dz - turn2 * az;
}

/** Half the drag area [m²] at a height and a place in the Mach table. */
export function halfDragArea(w: FastWork, z: f64, machCell: i32, machPart: f64): f64 {
  const c = w.slots;
  const table = c[at.THRUSTING]! > 0 ? w.thrusting : w.coasting;
  if (w.lastDragRow < 0)
    return c[at.HALF_DRAG_AREA]! * (table[machCell]! + machPart * (table[machCell + 1]! - table[machCell]!));
  const place = z > 0 ? z * c[at.INVERSE_DRAG_HEIGHT]! : 0;
  const row = cellOf(place, w.lastDragRow);
  const rowPart = place - row;
  const near = row * w.machCount + machCell;
  const far = near + w.machCount;
  const low = table[near]! + machPart * (table[near + 1]! - table[near]!);
  const high = table[far]! + machPart * (table[far + 1]! - table[far]!);
  return c[at.HALF_DRAG_AREA]! * (low + rowPart * (high - low));
}

/** Height and velocity of the settled or aligned body: four numbers. */
export function alignedRates(w: FastWork, t: f64, y: Doubles, k: Doubles, row: i32): void {
  const c = w.slots;
  const z = y[0]!;
  const vz = y[3]!;
  const dt = t - c[at.STRETCH_FROM]!;
  const motorMass =
    c[at.MOTOR_LOADED]! - c[at.PROPELLANT]! * (c[at.SPENT0]! + dt * (c[at.SPENT1]! + dt * c[at.SPENT2]!));
  const perMass = 1 / (c[at.FRAME_MASS]! + motorMass);

  const air = w.air;
  const airPlace = z > 0 ? z * c[at.INVERSE_AIR_STEP]! : 0;
  let cell = cellOf(airPlace, w.lastAirCell);
  let part = airPlace - cell;
  cell *= 2;
  const density = air[cell]! + part * (air[cell + 2]! - air[cell]!);
  const perSound = air[cell + 1]! + part * (air[cell + 3]! - air[cell + 1]!);

  const wind = w.wind;
  let shearEast: f64 = 0;
  let shearNorth: f64 = 0;
  let windEast: f64;
  let windNorth: f64;
  if (z < c[at.WIND_TOP]!) {
    const windPlace = z > 0 ? Math.sqrt(Math.sqrt(z)) * c[at.WIND_SCALE]! : 0;
    cell = cellOf(windPlace, w.lastWindCell);
    part = windPlace - cell;
    cell *= 2;
    const riseEast = wind[cell + 2]! - wind[cell]!;
    const riseNorth = wind[cell + 3]! - wind[cell + 1]!;
    windEast = wind[cell]! + part * riseEast;
    windNorth = wind[cell + 1]! + part * riseNorth;
    if (z > lowestShear) {
      const perHeight = windPlace / (4 * z);
      shearEast = riseEast * perHeight;
      shearNorth = riseNorth * perHeight;
    } else {
      shearEast = c[at.LOW_SHEAR_EAST]!;
      shearNorth = c[at.LOW_SHEAR_NORTH]!;
    }
  } else {
    cell = 2 * (w.lastWindCell + 1);
    windEast = wind[cell]!;
    windNorth = wind[cell + 1]!;
  }
  const ux = y[1]! - windEast;
  const uy = y[2]! - windNorth;
  const speed2 = ux * ux + uy * uy + vz * vz;
  const speed = Math.sqrt(speed2);
  const perSpeed = speed > 1e-9 ? 1 / speed : 0;

  const machPlace = speed * perSound * c[at.INVERSE_MACH_STEP]!;
  const machCell = cellOf(machPlace, w.lastMachCell);
  const machPart = machPlace - machCell;
  const thrust = c[at.THRUST]! + dt * c[at.THRUST_SLOPE]!;
  const push = (thrust * perSpeed - halfDragArea(w, z, machCell, machPart) * density * speed) * perMass;
  const gravity = c[at.GRAVITY0]! + z * (c[at.GRAVITY1]! + z * c[at.GRAVITY2]!);
  let east = push * ux;
  let north = push * uy;
  let up = push * vz - gravity;

  if (w.settled && speed > 1e-6) {
    const aero = w.aero;
    const stride = w.aeroStride;
    const node = machCell * stride;
    const slope = aero[node]! + machPart * (aero[node + stride]! - aero[node]!);
    const first = aero[node + 1]! + machPart * (aero[node + stride + 1]! - aero[node + 1]!);
    const second = aero[node + 2]! + machPart * (aero[node + stride + 2]! - aero[node + 2]!);
    const apart = c[at.MOTOR_CENTRE]! - c[at.FRAME_BALANCE]!;
    const balance = c[at.FRAME_BALANCE]! + motorMass * perMass * apart;
    const moment = first - slope * balance;
    if (moment > 0) {
      const halfArea = 0.5 * density * c[at.AREA]!;
      const perInertia =
        1 / (c[at.FRAME_INERTIA]! + motorMass * (c[at.MOTOR_GYRATION]! + c[at.FRAME_MASS]! * perMass * apart * apart));
      const jetArm = c[at.MOTOR_AFT]! - balance;
      const jet = c[at.PROPELLANT]! * (c[at.SPENT1]! + 2 * dt * c[at.SPENT2]!) * jetArm * jetArm;
      const damping = halfArea * speed * (second - balance * (2 * first - balance * slope)) + jet;
      const growth = (2 * gravity * vz * perSpeed - push * speed) * perSpeed;
      const answer = damping * perInertia + Math.max(growth, 0);
      const lag = answer / (halfArea * speed2 * moment * perInertia + (growth > 0 ? growth * answer : 0));
      // resistance over airspeed
      const ratio = (thrust * lag * perSpeed + halfArea * (speed * slope * lag - moment)) * perMass;
      const slow = ratio / (1 + ratio);
      const gx = -shearEast * vz;
      const gy = -shearNorth * vz;
      const alongPath = (gx * ux + gy * uy - gravity * vz) * perSpeed * perSpeed;
      east -= slow * (gx - alongPath * ux);
      north -= slow * (gy - alongPath * uy);
      up += slow * (gravity + alongPath * vz);
    }
  }
  k[row] = vz;
  k[row + 1] = east;
  k[row + 2] = north;
  k[row + 3] = up;
}

/**
 * The same after the thrust curve's last point: no thrust, no jet, a mass that stays. Written out again because most of a
 * flight's time is spent here, and what stays the same need not be worked out at every call: some 6 % more flights a second. Its judge is
 * `alignedRates`, in the test.
 */
export function coastRates(w: FastWork, y: Doubles, k: Doubles, row: i32): void {
  const c = w.slots;
  const z = y[0]!;
  const vz = y[3]!;
  const air = w.air;
  const airPlace = z > 0 ? z * c[at.INVERSE_AIR_STEP]! : 0;
  const airCell = cellOf(airPlace, w.lastAirCell);
  const airPart = airPlace - airCell;
  const airNode = 2 * airCell;
  const density = air[airNode]! + airPart * (air[airNode + 2]! - air[airNode]!);
  const perSound = air[airNode + 1]! + airPart * (air[airNode + 3]! - air[airNode + 1]!);

  const wind = w.wind;
  let shearEast: f64 = 0;
  let shearNorth: f64 = 0;
  let windEast: f64;
  let windNorth: f64;
  if (z < c[at.WIND_TOP]!) {
    const place = z > 0 ? Math.sqrt(Math.sqrt(z)) * c[at.WIND_SCALE]! : 0;
    const cell = cellOf(place, w.lastWindCell);
    const part = place - cell;
    const node = 2 * cell;
    const riseEast = wind[node + 2]! - wind[node]!;
    const riseNorth = wind[node + 3]! - wind[node + 1]!;
    windEast = wind[node]! + part * riseEast;
    windNorth = wind[node + 1]! + part * riseNorth;
    if (z > lowestShear) {
      const perHeight = place / (4 * z);
      shearEast = riseEast * perHeight;
      shearNorth = riseNorth * perHeight;
    } else {
      shearEast = c[at.LOW_SHEAR_EAST]!;
      shearNorth = c[at.LOW_SHEAR_NORTH]!;
    }
  } else {
    const node = 2 * (w.lastWindCell + 1);
    windEast = wind[node]!;
    windNorth = wind[node + 1]!;
  }
  const ux = y[1]! - windEast;
  const uy = y[2]! - windNorth;
  const speed2 = ux * ux + uy * uy + vz * vz;
  const speed = Math.sqrt(speed2);
  const machPlace = speed * perSound * c[at.INVERSE_MACH_STEP]!;
  const machCell = cellOf(machPlace, w.lastMachCell);
  const machPart = machPlace - machCell;
  const perMass = c[at.EMPTY_PER_MASS]!;
  const slowing = halfDragArea(w, z, machCell, machPart) * density * speed * perMass;
  const gravity = c[at.GRAVITY0]! + z * (c[at.GRAVITY1]! + z * c[at.GRAVITY2]!);
  let east = -slowing * ux;
  let north = -slowing * uy;
  let up = -slowing * vz - gravity;

  if (w.settled && speed > 1e-6) {
    const aero = w.aero;
    const stride = w.aeroStride;
    const node = machCell * stride;
    const slope = aero[node]! + machPart * (aero[node + stride]! - aero[node]!);
    const first = aero[node + 1]! + machPart * (aero[node + stride + 1]! - aero[node + 1]!);
    const second = aero[node + 2]! + machPart * (aero[node + stride + 2]! - aero[node + 2]!);
    const balance = c[at.EMPTY_BALANCE]!;
    const moment = first - slope * balance;
    if (moment > 0) {
      const halfArea = 0.5 * density * c[at.AREA]!;
      const perInertia = c[at.EMPTY_PER_INERTIA]!;
      const perSpeed = 1 / speed;
      const damping = halfArea * speed * (second - balance * (2 * first - balance * slope)) * perInertia;
      const turning = 2 * gravity * vz * perSpeed * perSpeed + slowing;
      const growth = Math.max(turning, 0);
      const answer = damping + growth;
      const lag = answer / (halfArea * speed2 * moment * perInertia + growth * answer);
      const ratio = halfArea * (speed * slope * lag - moment) * perMass;
      const slow = ratio / (1 + ratio);
      const gx = -shearEast * vz;
      const gy = -shearNorth * vz;
      const alongPath = (gx * ux + gy * uy - gravity * vz) * perSpeed * perSpeed;
      east -= slow * (gx - alongPath * ux);
      north -= slow * (gy - alongPath * uy);
      up += slow * (gravity + alongPath * vz);
    }
  }
  k[row] = vz;
  k[row + 1] = east;
  k[row + 2] = north;
  k[row + 3] = up;
}

/** Way along the guide and speed. */
export function guideRates(w: FastWork, t: f64, y: Doubles, k: Doubles, row: i32): void {
  const c = w.slots;
  const speed = y[1]!;
  const z = y[0]! * c[at.GUIDE_UP]!;
  const dt = t - c[at.STRETCH_FROM]!;
  const spent = c[at.SPENT0]! + dt * (c[at.SPENT1]! + dt * c[at.SPENT2]!);
  const mass = c[at.FRAME_MASS]! + c[at.MOTOR_LOADED]! - c[at.PROPELLANT]! * spent;
  const density = w.air[0]!;
  const machPlace = Math.abs(speed) * w.air[1]! * c[at.INVERSE_MACH_STEP]!;
  const machCell = cellOf(machPlace, w.lastMachCell);
  const drag = halfDragArea(w, z, machCell, machPlace - machCell) * density * speed * Math.abs(speed);
  k[row] = speed;
  k[row + 1] = (c[at.THRUST]! + dt * c[at.THRUST_SLOPE]! - drag) / mass - c[at.GRAVITY0]! * c[at.GUIDE_UP]!;
}
