import { cellOf, type f64, type i32 } from "../../math/doubles.js";
import { leanAfter, leanRateAfter } from "../lean.js";
import { halfDragArea } from "./rates.js";
import { rowSize } from "./sizes.js";
import * as at from "./slots.js";
import type { FastWork } from "./work.js";

/**
 * Turns the guide's state into that of the free body: after a way along it, along it, not turning.
 *
 * @param travel [m]
 * @param speed [m/s]
 */
export function leaveGuide(w: FastWork, travel: f64, speed: f64): void {
  const c = w.slots;
  const y = w.y;
  const place = w.place;
  const east = c[at.GUIDE_EAST]!;
  const north = c[at.GUIDE_NORTH]!;
  const up = c[at.GUIDE_UP]!;
  place[0] = travel * east;
  place[1] = travel * north;
  y[0] = travel * up;
  y[1] = speed * east;
  y[2] = speed * north;
  y[3] = speed * up;
  y[4] = east;
  y[5] = north;
  y[6] = up;
  y[7] = 0;
  y[8] = 0;
  y[9] = 0;
}

/** Cubic through both ends of a guide step: share at which a way is reached, by Newton's method from the chord. */
export function guideShare(w: FastWork, h: f64, travel: f64): f64 {
  const y = w.y;
  const next = w.next;
  let share = (travel - y[0]!) / (next[0]! - y[0]!);
  for (let i = 0; i < 6; i++) {
    const off = guideWay(w, h, share) - travel;
    const speed = guideSpeed(w, h, share);
    if (!(speed > 0) || Math.abs(off) < 1e-12) break;
    share = Math.min(1, Math.max(0, share - off / (h * speed)));
  }
  return share;
}

function guideWay(w: FastWork, h: f64, s: f64): f64 {
  const y = w.y;
  const next = w.next;
  const r = 1 - s;
  return r * r * ((1 + 2 * s) * y[0]! + s * h * y[1]!) + s * s * ((1 + 2 * r) * next[0]! - r * h * next[1]!);
}

export function guideSpeed(w: FastWork, h: f64, s: f64): f64 {
  const y = w.y;
  const next = w.next;
  const k = w.k;
  const r = 1 - s;
  const end = 6 * rowSize;
  return r * r * ((1 + 2 * s) * y[1]! + s * h * k[1]!) + s * s * ((1 + 2 * r) * next[1]! - r * h * k[end + 1]!);
}

/**
 * Leans and turns the body by what its swing about the aft fitting left: the same closed form as `tipOff` of the plain flight, from
 * the tables.
 *
 * @param from when the forward fitting left [s]
 * @param to when the aft one leaves [s]
 */
export function tipOff(w: FastWork, from: f64, to: f64, speedFrom: f64, speedTo: f64): void {
  const c = w.slots;
  const y = w.y;
  const place = w.place;
  const air = w.air;
  const aero = w.aero;
  const stride = w.aeroStride;
  const de = c[at.GUIDE_EAST]!;
  const dn = c[at.GUIDE_NORTH]!;
  const du = c[at.GUIDE_UP]!;
  const z = (c[at.TRAVEL]! + 0.5 * c[at.PIVOT_WAY]!) * du;
  const speed = 0.5 * (speedFrom + speedTo);
  const dt = 0.5 * (from + to) - c[at.STRETCH_FROM]!;
  const spent = c[at.SPENT0]! + dt * (c[at.SPENT1]! + dt * c[at.SPENT2]!);
  const motorMass = c[at.MOTOR_LOADED]! - c[at.PROPELLANT]! * spent;
  const frameMass = c[at.FRAME_MASS]!;
  const mass = frameMass + motorMass;
  const apart = c[at.MOTOR_CENTRE]! - c[at.FRAME_BALANCE]!;
  const balance = c[at.FRAME_BALANCE]! + (motorMass / mass) * apart;
  const ahead = c[at.PIVOT_AT]! - balance;
  const inertia =
    c[at.FRAME_INERTIA]! +
    motorMass * c[at.MOTOR_GYRATION]! +
    ((frameMass * motorMass) / mass) * apart * apart +
    mass * ahead * ahead;

  const airPlace = z * c[at.INVERSE_AIR_STEP]!;
  const airCell = cellOf(airPlace, w.lastAirCell);
  const airPart = airPlace - airCell;
  const density = air[2 * airCell]! + airPart * (air[2 * airCell + 2]! - air[2 * airCell]!);
  const perSound = air[2 * airCell + 1]! + airPart * (air[2 * airCell + 3]! - air[2 * airCell + 1]!);
  const windEast = windPart(w, z, 0);
  const windNorth = windPart(w, z, 1);
  const windAlong = windEast * de + windNorth * dn;
  const airspeed = lengthOf(speed * de - windEast, speed * dn - windNorth, speed * du);
  const perSpeed = 0.5 * density * airspeed * c[at.AREA]!;
  const machPlace = airspeed * perSound * c[at.INVERSE_MACH_STEP]!;
  const machCell = cellOf(machPlace, w.lastMachCell);
  const machPart = machPlace - machCell;
  const drag = halfDragArea(w, z, machCell, machPart) * density * airspeed * airspeed;
  const jetArm = c[at.MOTOR_AFT]! - balance;
  const gravity = c[at.GRAVITY0]! + z * (c[at.GRAVITY1]! + z * c[at.GRAVITY2]!);
  const weight = mass * ahead * gravity;
  let east = weight * du * de;
  let north = weight * du * dn;
  let up = weight * (du * du - 1);
  let growth = ahead * (c[at.THRUST]! + dt * c[at.THRUST_SLOPE]! - drag);
  let damping = c[at.PROPELLANT]! * (c[at.SPENT1]! + 2 * dt * c[at.SPENT2]!) * jetArm * jetArm;
  let node = machCell * stride + 3;
  for (let i = 0; i <= w.partCount; i++) {
    const isPart = i < w.partCount;
    const x = isPart ? aero[node + 1]! + machPart * (aero[node + stride + 1]! - aero[node + 1]!) : c[at.CROSS_FLOW_AT]!;
    const arm = c[at.PIVOT_AT]! - x;
    const thereEast = windPart(w, z + (balance - x) * du, 0);
    const thereNorth = windPart(w, z + (balance - x) * du, 1);
    const along = thereEast * de + thereNorth * dn;
    const we = thereEast - along * de;
    const wn = thereNorth - along * dn;
    const wu = -along * du;
    const strength =
      arm *
      (isPart
        ? perSpeed * (aero[node]! + machPart * (aero[node + stride]! - aero[node]!))
        : 0.5 * density * c[at.AREA]! * c[at.CROSS_FLOW]! * lengthOf(we, wn, wu));
    east += strength * we;
    north += strength * wn;
    up += strength * wu;
    growth += strength * (speed - windAlong);
    damping += strength * arm;
    node += 2;
  }
  const lean = leanAfter(to - from, damping / inertia, growth / inertia) / inertia;
  const rate = leanRateAfter(to - from, damping / inertia, growth / inertia) / inertia;
  place[0] = place[0]! + ahead * lean * east;
  place[1] = place[1]! + ahead * lean * north;
  y[0] = y[0]! + ahead * lean * up;
  y[1] = y[1]! + ahead * rate * east;
  y[2] = y[2]! + ahead * rate * north;
  y[3] = y[3]! + ahead * rate * up;
  const long = lengthOf(de + lean * east, dn + lean * north, du + lean * up);
  const ax = (de + lean * east) / long;
  const ay = (dn + lean * north) / long;
  const az = (du + lean * up) / long;
  const inward = rate * (ax * east + ay * north + az * up);
  y[4] = ax;
  y[5] = ay;
  y[6] = az;
  y[7] = rate * east - inward * ax;
  y[8] = rate * north - inward * ay;
  y[9] = rate * up - inward * az;
}

/** The wind eastward (0) or northward (1) at a height. */
function windPart(w: FastWork, z: f64, part: i32): f64 {
  const c = w.slots;
  const wind = w.wind;
  const place = z > 0 ? (z < c[at.WIND_TOP]! ? Math.sqrt(Math.sqrt(z)) * c[at.WIND_SCALE]! : w.lastWindCell + 1) : 0;
  const cell = cellOf(place, w.lastWindCell);
  const node = 2 * cell + part;
  return wind[node]! + (place - cell) * (wind[node + 2]! - wind[node]!);
}

/** Length of a vector. */
function lengthOf(x: f64, y: f64, z: f64): f64 {
  return Math.sqrt(x * x + y * y + z * z);
}
