import { guideShare, guideSpeed, leaveGuide, tipOff } from "./leaving.js";
import { handOver } from "./settle.js";
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
import { type FastWork, mostRecords, recordSize } from "./work.js";

/** What one drawn flight came to; the steps after burnout stand in the work's records. A class for the same reason as `FastWork`. */
export class FastOutcome {
  /** It left the guide and came down within the records. */
  flew = false;
  liftOff = 0;
  burnout = 0;
  guideExitSpeed = 0;
  apogeeTime = 0;
  apogeeHeight = 0;
  landingTime = 0;
  landingEast = 0;
  landingNorth = 0;
  /** Records in use. */
  recordCount = 0;
  /** Right-hand sides called. */
  calls = 0;
}

const mostSteps = 20_000;

/** Loads one stretch of the thrust curve, stretched in time and scaled in thrust. */
function setStretch(w: FastWork, index: number, impulse: number, time: number): void {
  const c = w.slots;
  const { stretches, totalImpulse } = w.tables.model;
  const s = stretches[index]!;
  c[at.STRETCH_FROM] = s.from * time;
  c[at.STRETCH_TO] = index === stretches.length - 1 ? s.to : s.to * time;
  c[at.THRUST] = (s.thrust * impulse) / time;
  c[at.THRUST_SLOPE] = (s.slope * impulse) / (time * time);
  c[at.SPENT0] = s.impulse / totalImpulse;
  c[at.SPENT1] = s.thrust / (totalImpulse * time);
  c[at.SPENT2] = (0.5 * s.slope) / (totalImpulse * time * time);
  c[at.THRUSTING] = s.thrusting ? 1 : 0;
  if (s.thrusting) return;
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

/** Value of a recorded component (0 height, 1 to 3 velocity) at a share of its step. */
export function recorded(records: Float64Array, offset: number, component: number, share: number): number {
  const o = offset + 4 + 5 * component;
  const rest = 1 - share;
  return (
    records[o]! +
    share * (records[o + 1]! + rest * (records[o + 2]! + share * (records[o + 3]! + rest * records[o + 4]!)))
  );
}

/** Share of a step at which a recorded component falls through a level: its ends lie on either side. */
export function recordedFall(records: Float64Array, offset: number, component: number, level: number): number {
  let low = 0;
  let high = 1;
  let valueLow = recorded(records, offset, component, 0) - level;
  let valueHigh = recorded(records, offset, component, 1) - level;
  for (let i = 0; i < 60 && high - low > 1e-9; i++) {
    const guess = i % 3 === 2 ? 0.5 * (low + high) : low + ((high - low) * valueLow) / (valueLow - valueHigh);
    const share = guess > low && guess < high ? guess : 0.5 * (low + high);
    const value = recorded(records, offset, component, share) - level;
    if (value === 0) return share;
    if (value > 0) {
      low = share;
      valueLow = value;
      if (i % 3 === 0) valueHigh *= 0.5;
    } else {
      high = share;
      valueHigh = value;
    }
  }
  return 0.5 * (low + high);
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
export function fastFlight(
  w: FastWork,
  impulse: number,
  time: number,
  tolerance: number,
  out: FastOutcome,
): FastOutcome {
  const { slots: c, y, place, records, tables } = w;
  const { stretches, burn, options } = tables.model;
  const stretchCount = stretches.length;
  out.flew = false;
  out.recordCount = 0;
  out.burnout = burn.end * time;
  out.calls = 0;

  let index = liftOff(w, impulse, time, out);
  if (index === stretchCount) return out;

  let t = out.liftOff;
  let phase: FastPhase = GUIDE;
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
  let leftAt = -1;
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
        phase = options.model === "pitching" && !(options.handOver && handOver(w, t)) ? PITCHING : alignedPhase(w);
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
      if (phase === PITCHING && (pastApogee || (options.handOver && handOver(w, t)))) phase = alignedPhase(w);
      else if (phase === ALIGNED) phase = alignedPhase(w);
      rates(w, phase, t, y, 0);
    } else if (phase === PITCHING && (turned || (options.handOver && handOver(w, t)))) {
      phase = alignedPhase(w);
      rates(w, phase, t, y, 0);
    }
  }
  out.recordCount = recordCount;
  out.calls = tries * 6;
  return out;
}

/** Loads the stretch in which the thrust first carries the weight, and notes the moment; the number of stretches where none does. */
function liftOff(w: FastWork, impulse: number, time: number, out: FastOutcome): number {
  const c = w.slots;
  const { stretches } = w.tables.model;
  const frameMass = c[at.FRAME_MASS]!;
  const pull = (dt: number): number => {
    const spent = c[at.SPENT0]! + dt * (c[at.SPENT1]! + dt * c[at.SPENT2]!);
    const weight = (frameMass + c[at.MOTOR_LOADED]! - c[at.PROPELLANT]! * spent) * c[at.GRAVITY0]! * c[at.GUIDE_UP]!;
    return c[at.THRUST]! + dt * c[at.THRUST_SLOPE]! - weight;
  };
  for (let index = 0; index < stretches.length; index++) {
    setStretch(w, index, impulse, time);
    const from = c[at.STRETCH_FROM]!;
    let low = 0;
    let high = c[at.STRETCH_TO]! - from;
    if (pull(low) > 0) high = low;
    else if (!(pull(high) > 0)) continue;
    for (let i = 0; i < 40 && high > low; i++) {
      const middle = 0.5 * (low + high);
      if (pull(middle) > 0) high = middle;
      else low = middle;
    }
    out.liftOff = from + high;
    return index;
  }
  return stretches.length;
}

/** Place over ground at a share of a recorded step: three-point Gauss over the recorded velocity, exact for it. */
function placeAt(records: Float64Array, offset: number, axis: 0 | 1, share: number): number {
  const half = 0.5 * share;
  const reach = half * Math.sqrt(0.6);
  const sum =
    (5 * recorded(records, offset, 1 + axis, half - reach) +
      8 * recorded(records, offset, 1 + axis, half) +
      5 * recorded(records, offset, 1 + axis, half + reach)) /
    18;
  return records[offset + 2 + axis]! + sum * share * records[offset + 1]!;
}

function noteApogee(w: FastWork, index: number, out: FastOutcome): void {
  const { records } = w;
  const offset = index * recordSize;
  const share = recorded(records, offset, 3, 0) > 0 ? recordedFall(records, offset, 3, 0) : 0;
  out.apogeeTime = records[offset]! + share * records[offset + 1]!;
  out.apogeeHeight = recorded(records, offset, 0, share);
}
