import type { FastOutcome } from "../flight/fast/outcome.js";
import { recorded } from "../flight/fast/records.js";
import { mostRecords, recordSize } from "../flight/fast/sizes.js";
import type { FastWork } from "../flight/fast/work.js";
import { normalCdf, normalQuantile } from "../math/normal.js";
import { studentTable } from "../math/student-table.js";
import { airspeed2, noteNodes, recordAt, SpeedNodes, speedCrossings } from "./crossings.js";
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
  type OpeningSpec,
  sampleSize,
} from "./opening-spec.js";

const mostCrossings = 8;
const mostEdges = 2 * mostCrossings + 5;

/** Memory for judging, made once a worker. A class for the same reason as `FastWork`. */
export class JudgeWork {
  readonly spec: OpeningSpec;
  readonly nodes: SpeedNodes;
  readonly limitCrossings = new Float64Array(mostCrossings);
  readonly strengthCrossings = new Float64Array(mostCrossings);
  readonly edges = new Float64Array(mostEdges);
  /** Class of each stretch between edges, and whether it holds. */
  readonly classes = new Int32Array(mostEdges + 1);
  readonly holding = new Int32Array(mostEdges + 1);
  edgeCount = 0;
  /** Of the delay's scatter, in its standard deviations. */
  readonly cdf: (z: number) => number;
  readonly quantile: (p: number) => number;

  /** @param records most steps of a flight that is judged: those that its work holds */
  constructor(spec: OpeningSpec, records = mostRecords) {
    this.spec = spec;
    this.nodes = new SpeedNodes(records + 64);
    const { cdf, quantile } = scatterShape(spec.degrees);
    this.cdf = cdf;
    this.quantile = quantile;
  }
}

/** The distribution of a delay's scatter, scaled to a standard deviation of 1. */
function scatterShape(degrees: number | undefined): Pick<JudgeWork, "cdf" | "quantile"> {
  if (degrees === undefined) return { cdf: normalCdf, quantile: normalQuantile };
  const table = studentTable(degrees);
  const scale = Math.sqrt((degrees - 2) / degrees);
  return { cdf: (z) => table.cdf(z / scale), quantile: (p) => scale * table.quantile(p) };
}

/** Is the airspeed below the level at a time, given where it crosses and how it starts? */
function isBelow(time: number, startsBelow: boolean, crossings: Float64Array, count: number): boolean {
  let below = startsBelow;
  for (let i = 0; i < count && crossings[i]! <= time; i++) below = !below;
  return below;
}

/** First time from which the opening is high enough, −Infinity where it is from burnout on; Infinity where never. */
function floorRise(w: FastWork, flight: FastOutcome, floor: number): number {
  const { records } = w;
  if (flight.apogeeHeight < floor) return Number.POSITIVE_INFINITY;
  if (records[4]! >= floor) return Number.NEGATIVE_INFINITY;
  for (let r = 0; r < flight.recordCount; r++) {
    const offset = r * recordSize;
    if (recorded(records, offset, 0, 1) < floor) continue;
    let low = 0;
    let high = 1;
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
function spare(w: FastWork, offset: number, share: number, spec: OpeningSpec): number {
  const height = recorded(w.records, offset, 0, share);
  const above = height - spec.floor;
  if (spec.fillDistance <= 0.5 * spec.floor) return above;
  const speed = Math.sqrt(airspeed2(w, offset, share));
  const gravity = 9.80665;
  const fill = (Math.sqrt(speed * speed + 2 * gravity * spec.fillDistance) - speed) / gravity;
  const full = height + fill * (recorded(w.records, offset, 3, share) - 0.5 * gravity * fill);
  return Math.min(above, full - 0.5 * spec.floor);
}

/** Last time at which an opening is high enough; −Infinity where never. */
function floorFall(w: FastWork, flight: FastOutcome, spec: OpeningSpec): number {
  const { records } = w;
  for (let r = recordAt(records, flight.recordCount, flight.apogeeTime); r < flight.recordCount; r++) {
    const offset = r * recordSize;
    if (spare(w, offset, 1, spec) >= 0) continue;
    const start =
      records[offset]! < flight.apogeeTime ? (flight.apogeeTime - records[offset]!) / records[offset + 1]! : 0;
    if (spare(w, offset, start, spec) < 0) return r === 0 || start > 0 ? Number.NEGATIVE_INFINITY : records[offset]!;
    let low = start;
    let high = 1;
    for (let i = 0; i < 40; i++) {
      const middle = 0.5 * (low + high);
      if (spare(w, offset, middle, spec) < 0) high = middle;
      else low = middle;
    }
    return records[offset]! + low * records[offset + 1]!;
  }
  return flight.landingTime;
}

/** Cuts a flight's time after burnout into stretches of one outcome each. */
function cutIntoClasses(j: JudgeWork, w: FastWork, flight: FastOutcome): void {
  const { spec, nodes, edges } = j;
  noteNodes(w, flight, nodes);
  const start = flight.burnout + spec.lineStretch;
  const limitCount = speedCrossings(w, nodes, spec.speedLimit, j.limitCrossings);
  const strengthCount = speedCrossings(w, nodes, spec.strengthSpeed, j.strengthCrossings);
  const slowAtFirst = nodes.squares[0]! < spec.speedLimit ** 2;
  const boreAtFirst = nodes.squares[0]! < spec.strengthSpeed ** 2;
  const rise = floorRise(w, flight, spec.floor);
  const fall = rise === Number.POSITIVE_INFINITY ? Number.NEGATIVE_INFINITY : floorFall(w, flight, spec);

  let n = 0;
  const add = (time: number): void => {
    // nothing opens before the line stretch of a charge that fires at burnout
    if (!(time > start && time < flight.landingTime)) return;
    let i = n;
    for (; i > 0 && edges[i - 1]! > time; i--) edges[i] = edges[i - 1]!;
    edges[i] = time;
    n += 1;
  };
  for (let i = 0; i < limitCount; i++) add(j.limitCrossings[i]!);
  for (let i = 0; i < strengthCount; i++) add(j.strengthCrossings[i]!);
  add(rise);
  add(fall);
  add(flight.apogeeTime);
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
    let outcome = LOW;
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
function openingTime(spec: OpeningSpec, flight: FastOutcome, nominalBurnout: number, delay: number): number {
  return (spec.clock === "burnout" ? flight.burnout : nominalBurnout) + delay + spec.lineStretch;
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
  nominalBurnout: number,
  strata: number,
  judged: Float64Array,
  judgedAt: number,
  samples: Float64Array,
  samplesAt: number,
): void {
  const { spec, cdf } = j;
  const { settings } = spec;
  if (settings.length === 0) return;
  judged.fill(0, judgedAt, judgedAt + settings.length * judgedSize);
  if (!flight.flew) {
    for (let s = 0; s < settings.length; s++) judged[judgedAt + s * judgedSize + GROUNDED] = 1;
    samples.fill(Number.NaN, samplesAt, samplesAt + settings.length * spec.samples * sampleSize);
    return;
  }
  cutIntoClasses(j, w, flight);
  for (let s = 0; s < settings.length; s++) {
    const { delay, sd } = settings[s]!;
    const mean = openingTime(spec, flight, nominalBurnout, delay);
    const perSd = 1 / Math.max(sd, 1e-9);
    const o = judgedAt + s * judgedSize;
    let before = 0;
    for (let i = 0; i <= j.edgeCount; i++) {
      const upTo = i === j.edgeCount ? 1 : cdf((j.edges[i]! - mean) * perSd);
      const share = upTo - before;
      before = upTo;
      judged[o + j.classes[i]!]! += share;
      if (j.holding[i]! === 1) judged[o + HOLDS]! += share;
    }
    if (spec.electronicsDelay !== null) {
      const opened = flight.apogeeTime + spec.electronicsDelay + spec.lineStretch;
      judged[o + FIRES_FIRST] = cdf((opened - mean + spec.lineStretch) * perSd);
    }
  }
  sampleOpenings(j, w, flight, nominalBurnout, strata, samples, samplesAt);
}

function sampleOpenings(
  { spec, quantile }: JudgeWork,
  w: FastWork,
  flight: FastOutcome,
  nominalBurnout: number,
  strata: number,
  samples: Float64Array,
  samplesAt: number,
): void {
  const { settings } = spec;
  const start = flight.burnout + spec.lineStretch;
  for (let k = 0; k < spec.samples; k++) {
    const z = quantile((k + strata) / spec.samples);
    for (let s = 0; s < settings.length; s++) {
      const { delay, sd } = settings[s]!;
      const time = Math.max(start, openingTime(spec, flight, nominalBurnout, delay) + sd * z);
      const o = samplesAt + (s * spec.samples + k) * sampleSize;
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
export function apogeeAirspeed(w: FastWork, flight: FastOutcome): number {
  const offset = recordAt(w.records, flight.recordCount, flight.apogeeTime) * recordSize;
  return Math.sqrt(airspeed2(w, offset, (flight.apogeeTime - w.records[offset]!) / w.records[offset + 1]!));
}
