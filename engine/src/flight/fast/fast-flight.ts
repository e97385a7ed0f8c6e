import type { f64, i32 } from "../../math/doubles.js";
import { guideShare, guideSpeed, leaveGuide, tipOff } from "./leaving.js";
import type { FastOutcome } from "./outcome.js";
import { placeAt, recorded, recordedFall } from "./records.js";
import { handOver } from "./settle.js";
import { mostRecords, recordSize, stretchSize } from "./sizes.js";
import * as at from "./slots.js";
import {
  ALIGNED,
  accept,
  COASTING,
  carryPlace,
  type FastPhase,
  GUIDE,
  PITCHING,
  rates,
  record,
  tryStep,
} from "./step.js";
import { allowedError, longestStep, stepFactor } from "./step-control.js";
import type { FastWork } from "./work.js";

const mostSteps: i32 = 20_000;

/** Loads one stretch of the thrust curve, stretched in time and scaled in thrust. */
function setStretch(w: FastWork, index: i32, impulse: f64, time: f64): void {
  const c = w.slots;
  const stretches = w.stretches;
  const totalImpulse = c[at.TOTAL_IMPULSE]!;
  const o = index * stretchSize;
  const thrust = stretches[o + 2]!;
  const slope = stretches[o + 3]!;
  c[at.STRETCH_FROM] = stretches[o]! * time;
  c[at.STRETCH_TO] = index === w.stretchCount - 1 ? stretches[o + 1]! : stretches[o + 1]! * time;
  c[at.THRUST] = (thrust * impulse) / time;
  c[at.THRUST_SLOPE] = (slope * impulse) / (time * time);
  c[at.SPENT0] = stretches[o + 4]! / totalImpulse;
  c[at.SPENT1] = thrust / (totalImpulse * time);
  c[at.SPENT2] = (0.5 * slope) / (totalImpulse * time * time);
  c[at.THRUSTING] = stretches[o + 5]!;
  if (stretches[o + 5]! > 0) return;
  const empty = c[at.MOTOR_LOADED]! - c[at.PROPELLANT]!;
  const frame = c[at.FRAME_MASS]!;
  const perMass = 1 / (frame + empty);
  const apart = c[at.MOTOR_CENTRE]! - c[at.FRAME_BALANCE]!;
  c[at.EMPTY_PER_MASS] = perMass;
  c[at.EMPTY_BALANCE] = c[at.FRAME_BALANCE]! + empty * perMass * apart;
  c[at.EMPTY_PER_INERTIA] =
    1 / (c[at.FRAME_INERTIA]! + empty * (c[at.MOTOR_GYRATION]! + frame * perMass * apart * apart));
}

/** The nose-first phase that fits the stretch: coasting once the motor is empty. */
function alignedPhase(w: FastWork): FastPhase {
  return w.slots[at.THRUSTING]! > 0 ? ALIGNED : COASTING;
}

/**
 * Flies one draw, unopened, from ignition to the ground, at a loose tolerance; the plain `fly` is its judge in the tests.
 *
 * @param w memory set up by `setDraw`
 * @param impulse factor on thrust
 * @param time factor on the burn's times
 * @param tolerance relative tolerance of each step
 * @param out filled and returned
 */
export function fastFlight(w: FastWork, impulse: f64, time: f64, tolerance: f64, out: FastOutcome): FastOutcome {
  const c = w.slots;
  const y = w.y;
  const place = w.place;
  const records = w.records;
  const stretchCount = w.stretchCount;
  out.clear();
  out.burnout = c[at.BURN_END]! * time;

  let index = liftOff(w, impulse, time, out);
  if (index === stretchCount) return out;

  let t = out.liftOff;
  let phase = GUIDE;
  let pastApogee = false;
  let recordCount = 0;
  y[0] = 0;
  y[1] = 0;
  place[0] = 0;
  place[1] = 0;
  rates(w, phase, t, y, 0);
  let h = 0.02;
  let tries = 0;
  let recording = false;
  let toTop = false;
  let leftAt: f64 = -1;
  for (let steps = 0; steps < mostSteps; steps++) {
    const to = c[at.STRETCH_TO]!;
    const rest = to - t;
    if (!toTop) h = Math.min(h, longestStep(w, phase));
    const last = h * 1.01 >= rest;
    // two equal steps rather than a long one and a stub
    const length = last ? rest : h * 2 > rest && !toTop ? 0.5 * rest : h;
    const error = tryStep(w, phase, t, length, tolerance) / (pastApogee ? allowedError(w) : 1);
    tries += 1;
    const nextH = length * stepFactor(error);
    if (!(error <= 1)) {
      h = nextH;
      toTop = false;
      if (h < 1e-13) break;
      continue;
    }
    if (phase === GUIDE) {
      const travel = c[at.TRAVEL]!;
      if (leftAt < 0 && w.next[0]! >= travel) {
        const share = guideShare(w, length, travel);
        leftAt = t + share * length;
        out.guideExitSpeed = guideSpeed(w, length, share);
      }
      const way = travel + c[at.PIVOT_WAY]!;
      if (w.next[0]! >= way) {
        const share = guideShare(w, length, way);
        const speed = guideSpeed(w, length, share);
        t += share * length;
        leaveGuide(w, way, speed);
        if (way > travel) tipOff(w, leftAt, t, out.guideExitSpeed, speed);
        phase = w.pitches && !(w.handsOver && handOver(w, t)) ? PITCHING : alignedPhase(w);
        h = Math.min(0.03, Math.max(1e-4, to - t));
        if (to - t < 1e-12) {
          index += 1;
          setStretch(w, index, impulse, time);
        }
        rates(w, phase, t, y, 0);
        continue;
      }
      if (w.next[1]! < 0) break;
    } else {
      if (phase === PITCHING && !pastApogee && !toTop && w.next[3]! < 0 && recordCount < mostRecords) {
        // a body that still swings is laid into the airflow at the top itself: the step is made to end there
        record(w, recordCount, t, length);
        h = length * recordedFall(records, recordCount * recordSize, 3, 0);
        toTop = true;
        continue;
      }
      if (recording) {
        if (recordCount >= mostRecords) break;
        record(w, recordCount, t, length);
        recordCount += 1;
      }
      if (w.next[0]! < 0) {
        if (!recording) break;
        const offset = (recordCount - 1) * recordSize;
        const share = recordedFall(records, offset, 0, 0);
        out.landingTime = t + share * length;
        out.landingEast = placeAt(records, offset, 0, share);
        out.landingNorth = placeAt(records, offset, 1, share);
        out.flew = true;
        if (!pastApogee) noteApogee(w, recordCount - 1, out);
        break;
      }
      carryPlace(w, length);
    }
    const turned = !pastApogee && phase !== GUIDE && (toTop || w.next[3]! < 0);
    toTop = false;
    if (turned) {
      pastApogee = true;
      if (recording) noteApogee(w, recordCount - 1, out);
      else {
        out.apogeeTime = t + length;
        out.apogeeHeight = w.next[0]!;
      }
    }
    t = last ? to : t + length;
    accept(w, phase);
    h = nextH;
    if (last) {
      index += 1;
      if (index >= stretchCount) break;
      setStretch(w, index, impulse, time);
      recording = recording || t >= out.burnout - 1e-12;
      h = Math.min(nextH, Math.max(h, 1e-3));
      if (phase === PITCHING && (pastApogee || (w.handsOver && handOver(w, t)))) phase = alignedPhase(w);
      else if (phase === ALIGNED) phase = alignedPhase(w);
      rates(w, phase, t, y, 0);
    } else if (phase === PITCHING && (turned || (w.handsOver && handOver(w, t)))) {
      phase = alignedPhase(w);
      rates(w, phase, t, y, 0);
    }
  }
  out.recordCount = recordCount;
  out.calls = tries * 6;
  return out;
}

/** Thrust beyond what the weight takes along the guide, a time into the loaded stretch [N]. */
function pull(w: FastWork, dt: f64): f64 {
  const c = w.slots;
  const spent = c[at.SPENT0]! + dt * (c[at.SPENT1]! + dt * c[at.SPENT2]!);
  const mass = c[at.FRAME_MASS]! + c[at.MOTOR_LOADED]! - c[at.PROPELLANT]! * spent;
  return c[at.THRUST]! + dt * c[at.THRUST_SLOPE]! - mass * c[at.GRAVITY0]! * c[at.GUIDE_UP]!;
}

/** Loads the stretch in which the thrust first carries the weight, and notes the moment; the number of stretches where none does. */
function liftOff(w: FastWork, impulse: f64, time: f64, out: FastOutcome): i32 {
  const c = w.slots;
  for (let index = 0; index < w.stretchCount; index++) {
    setStretch(w, index, impulse, time);
    const from = c[at.STRETCH_FROM]!;
    let low: f64 = 0;
    let high = c[at.STRETCH_TO]! - from;
    if (pull(w, low) > 0) high = low;
    else if (!(pull(w, high) > 0)) continue;
    for (let i = 0; i < 40 && high > low; i++) {
      const middle = 0.5 * (low + high);
      if (pull(w, middle) > 0) high = middle;
      else low = middle;
    }
    out.liftOff = from + high;
    return index;
  }
  return w.stretchCount;
}

function noteApogee(w: FastWork, index: i32, out: FastOutcome): void {
  const records = w.records;
  const offset = index * recordSize;
  const share: f64 = recorded(records, offset, 3, 0) > 0 ? recordedFall(records, offset, 3, 0) : 0;
  out.apogeeTime = records[offset]! + share * records[offset + 1]!;
  out.apogeeHeight = recorded(records, offset, 0, share);
}
