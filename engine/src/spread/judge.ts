import type { FastOutcome } from "../flight/fast/outcome.js";
import { recorded } from "../flight/fast/records.js";
import { recordSize } from "../flight/fast/sizes.js";
import type { FastWork } from "../flight/fast/work.js";
import { type Doubles, type f64, type i32, whole } from "../math/doubles.js";
import { airspeed2, noteNodes, recordAt, speedCrossings } from "./crossings.js";
import type { JudgeWork } from "./judge-work.js";
import {
  CLEAN,
  EARLY_FAST,
  FIRES_FIRST,
  GROUNDED,
  HOLDS,
  judgedSize,
  LATE_FAST,
  LEAN_FAST,
  LOW,
  sampleSize,
} from "./outcomes.js";
import { cdf, quantile } from "./scatter.js";

/** Is the airspeed below the level at a time, given where it crosses and how it starts? */
function isBelow(time: f64, startsBelow: boolean, crossings: Doubles, count: i32): boolean {
  let below = startsBelow;
  for (let i = 0; i < count && crossings[i]! <= time; i++) below = !below;
  return below;
}

/** First time from which the opening is high enough, −Infinity where it is from burnout on; Infinity where never. */
function floorRise(w: FastWork, flight: FastOutcome, floor: f64): f64 {
  const records = w.records;
  if (flight.apogeeHeight < floor) return Number.POSITIVE_INFINITY;
  if (records[4]! >= floor) return Number.NEGATIVE_INFINITY;
  for (let r = 0; r < flight.recordCount; r++) {
    const offset = r * recordSize;
    if (recorded(records, offset, 0, 1) < floor) continue;
    let low: f64 = 0;
    let high: f64 = 1;
    // the top may lie inside this very step: the rise is before it
    if (records[offset]! + records[offset + 1]! > flight.apogeeTime)
      high = (flight.apogeeTime - records[offset]!) / records[offset + 1]!;
    for (let i = 0; i < 40; i++) {
      const middle = 0.5 * (low + high);
      if (recorded(records, offset, 0, middle) < floor) low = middle;
      else high = middle;
    }
    return records[offset]! + high * records[offset + 1]!;
  }
  return flight.apogeeTime;
}

/**
 * How far an opening is above what it needs: the floor, and half of it once the canopy is full.
 *
 * The canopy fills while the rocket covers its filling distance; its own braking is left out, so the height lost is an upper bound.
 */
function spare(w: FastWork, offset: i32, share: f64, j: JudgeWork): f64 {
  const height = recorded(w.records, offset, 0, share);
  const above = height - j.floor;
  if (j.fillDistance <= 0.5 * j.floor) return above;
  const speed = Math.sqrt(airspeed2(w, offset, share));
  const gravity = 9.80665;
  const fill = (Math.sqrt(speed * speed + 2 * gravity * j.fillDistance) - speed) / gravity;
  const full = height + fill * (recorded(w.records, offset, 3, share) - 0.5 * gravity * fill);
  return Math.min(above, full - 0.5 * j.floor);
}

/** Last time at which an opening is high enough; −Infinity where never. */
function floorFall(w: FastWork, flight: FastOutcome, j: JudgeWork): f64 {
  const records = w.records;
  for (let r = recordAt(records, flight.recordCount, flight.apogeeTime); r < flight.recordCount; r++) {
    const offset = r * recordSize;
    if (spare(w, offset, 1, j) >= 0) continue;
    const start: f64 =
      records[offset]! < flight.apogeeTime ? (flight.apogeeTime - records[offset]!) / records[offset + 1]! : 0;
    if (spare(w, offset, start, j) < 0) return r === 0 || start > 0 ? Number.NEGATIVE_INFINITY : records[offset]!;
    let low = start;
    let high: f64 = 1;
    for (let i = 0; i < 40; i++) {
      const middle = 0.5 * (low + high);
      if (spare(w, offset, middle, j) < 0) high = middle;
      else low = middle;
    }
    return records[offset]! + low * records[offset + 1]!;
  }
  return flight.landingTime;
}

/** Puts an edge among the others in order: nothing opens before the line stretch of a charge that fires at burnout. */
function addEdge(j: JudgeWork, time: f64, from: f64, to: f64): void {
  if (!(time > from && time < to)) return;
  const edges = j.edges;
  let i = j.edgeCount;
  for (; i > 0 && edges[i - 1]! > time; i--) edges[i] = edges[i - 1]!;
  edges[i] = time;
  j.edgeCount += 1;
}

/** Cuts a flight's time after burnout into stretches of one outcome each. */
function cutIntoClasses(j: JudgeWork, w: FastWork, flight: FastOutcome): void {
  const nodes = j.nodes;
  noteNodes(w, flight, nodes);
  const start = flight.burnout + j.lineStretch;
  const limitCount = speedCrossings(w, nodes, j.speedLimit, j.limitCrossings);
  const strengthCount = speedCrossings(w, nodes, j.strengthSpeed, j.strengthCrossings);
  const slowAtFirst = nodes.squares[0]! < j.speedLimit * j.speedLimit;
  const boreAtFirst = nodes.squares[0]! < j.strengthSpeed * j.strengthSpeed;
  const rise = floorRise(w, flight, j.floor);
  const fall = rise === Number.POSITIVE_INFINITY ? Number.NEGATIVE_INFINITY : floorFall(w, flight, j);

  j.edgeCount = 0;
  for (let i = 0; i < limitCount; i++) addEdge(j, j.limitCrossings[i]!, start, flight.landingTime);
  for (let i = 0; i < strengthCount; i++) addEdge(j, j.strengthCrossings[i]!, start, flight.landingTime);
  addEdge(j, rise, start, flight.landingTime);
  addEdge(j, fall, start, flight.landingTime);
  addEdge(j, flight.apogeeTime, start, flight.landingTime);
  const edges = j.edges;
  const n = j.edgeCount;
  edges[n] = flight.landingTime;
  j.edgeCount = n + 1;

  let everSlow = false;
  for (let i = 0; i <= n; i++) {
    const from = i === 0 ? start : edges[i - 1]!;
    if (isBelow(0.5 * (from + edges[i]!), slowAtFirst, j.limitCrossings, limitCount)) everSlow = true;
  }
  for (let i = 0; i <= n; i++) {
    const middle = 0.5 * ((i === 0 ? start : edges[i - 1]!) + edges[i]!);
    const high = middle > rise && middle < fall;
    let outcome: i32 = LOW;
    if (high) {
      if (isBelow(middle, slowAtFirst, j.limitCrossings, limitCount)) outcome = CLEAN;
      else if (!everSlow) outcome = LEAN_FAST;
      else outcome = middle < flight.apogeeTime ? EARLY_FAST : LATE_FAST;
    }
    j.classes[i] = outcome;
    j.holding[i] = high && isBelow(middle, boreAtFirst, j.strengthCrossings, strengthCount) ? 1 : 0;
  }
  j.classes[n + 1] = GROUNDED;
  j.holding[n + 1] = 0;
}

/** Mean time of the opening at a setting. */
function openingTime(j: JudgeWork, flight: FastOutcome, nominalBurnout: f64, delay: f64): f64 {
  return (j.fromBurnout ? flight.burnout : nominalBurnout) + delay + j.lineStretch;
}

/**
 * Judges every setting on one flight: odds of each outcome with the delay's scatter integrated, and sampled openings.
 *
 * For one flight the outcome is piecewise constant in the time of opening, so the integral over the delay is a sum of normal
 * (where flights have taught it, Student-t) probabilities between the edges: exact, and the six outcomes sum to 1.
 *
 * @param nominalBurnout burnout of the nominal flight [s], for a delay that counts from ignition
 * @param strata uniform number that shifts the sampled quantiles of the delay
 * @param judged filled from `judgedAt`: `judgedSize` numbers a setting
 * @param samples filled from `samplesAt`: `sampleSize` numbers a sample, samples within settings
 */
export function judgeFlight(
  j: JudgeWork,
  w: FastWork,
  flight: FastOutcome,
  nominalBurnout: f64,
  strata: f64,
  judged: Doubles,
  judgedAt: i32,
  samples: Doubles,
  samplesAt: i32,
): void {
  const settingCount = j.settingCount;
  if (settingCount === 0) return;
  for (let i = 0; i < settingCount * judgedSize; i++) judged[judgedAt + i] = 0;
  if (!flight.flew) {
    for (let s = 0; s < settingCount; s++) judged[judgedAt + s * judgedSize + GROUNDED] = 1;
    for (let i = 0; i < settingCount * j.samples * sampleSize; i++) samples[samplesAt + i] = Number.NaN;
    return;
  }
  cutIntoClasses(j, w, flight);
  for (let s = 0; s < settingCount; s++) {
    const mean = openingTime(j, flight, nominalBurnout, j.delays[s]!);
    const perSd = 1 / Math.max(j.deviations[s]!, 1e-9);
    const o = judgedAt + s * judgedSize;
    let before: f64 = 0;
    for (let i = 0; i <= j.edgeCount; i++) {
      const upTo: f64 = i === j.edgeCount ? 1 : cdf(j, (j.edges[i]! - mean) * perSd);
      const share = upTo - before;
      before = upTo;
      const at = o + whole(j.classes[i]!);
      judged[at] = judged[at]! + share;
      if (j.holding[i]! > 0) judged[o + HOLDS] = judged[o + HOLDS]! + share;
    }
    if (j.hasElectronics) {
      const opened = flight.apogeeTime + j.electronicsDelay + j.lineStretch;
      judged[o + FIRES_FIRST] = cdf(j, (opened - mean + j.lineStretch) * perSd);
    }
  }
  sampleOpenings(j, w, flight, nominalBurnout, strata, samples, samplesAt);
}

function sampleOpenings(
  j: JudgeWork,
  w: FastWork,
  flight: FastOutcome,
  nominalBurnout: f64,
  strata: f64,
  samples: Doubles,
  samplesAt: i32,
): void {
  const settingCount = j.settingCount;
  const start = flight.burnout + j.lineStretch;
  for (let k = 0; k < j.samples; k++) {
    const z = quantile(j, (k + strata) / j.samples);
    for (let s = 0; s < settingCount; s++) {
      const time = Math.max(start, openingTime(j, flight, nominalBurnout, j.delays[s]!) + j.deviations[s]! * z);
      const o = samplesAt + (s * j.samples + k) * sampleSize;
      if (time >= flight.landingTime) {
        samples[o] = Number.NaN;
        samples[o + 1] = Number.NaN;
        samples[o + 2] = Number.NaN;
        continue;
      }
      const offset = recordAt(w.records, flight.recordCount, time) * recordSize;
      const share = (time - w.records[offset]!) / w.records[offset + 1]!;
      samples[o] = Math.sqrt(airspeed2(w, offset, share));
      samples[o + 1] = recorded(w.records, offset, 0, share);
      samples[o + 2] = time - flight.apogeeTime;
    }
  }
}

/** Airspeed at the top of a flight [m/s]. */
export function apogeeAirspeed(w: FastWork, flight: FastOutcome): f64 {
  const offset = recordAt(w.records, flight.recordCount, flight.apogeeTime) * recordSize;
  return Math.sqrt(airspeed2(w, offset, (flight.apogeeTime - w.records[offset]!) / w.records[offset + 1]!));
}
