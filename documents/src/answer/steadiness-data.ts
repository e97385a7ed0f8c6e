import { type FlightResult, type MarginOverMach, marginOverMach, type TurningModel } from "@delaywright/engine";
import { type StabilityData, stabilityData } from "./stability-data.js";

/** The largest angle of attack within a stretch of time. */
export interface LargestSwing {
  /** Stretch, and when the angle was largest, from ignition [s]. */
  readonly from: number;
  readonly to: number;
  readonly time: number;
  /** [rad] */
  readonly angle: number;
  /** What is left of it at the end of the stretch: the largest angle in its last fifth [rad]. */
  readonly left: number;
}

/** How one flight swung on the way up: SI units. */
export interface SwingData {
  readonly model: TurningModel;
  readonly ended: FlightResult["ended"];
  /** From burnout to the top [s]; null where there is no top. */
  readonly coast: number | null;
  readonly top: { readonly time: number; readonly height: number; readonly airspeed: number } | null;
  /** From here on it flies nose-first, without angle [s]; null: never before the top. */
  readonly handOver: number | null;
  /** Columns of one length up to there: from ignition [s], angle of attack [rad]. */
  readonly time: readonly number[];
  readonly angleOfAttack: readonly number[];
  readonly afterExit: LargestSwing | null;
  readonly aroundBurnout: LargestSwing | null;
}

/** One plan flown three times: by the quick model of the odds, as a rigid body in the mean wind, and as one in turbulence. */
export interface SteadinessData {
  readonly quick: SwingData;
  readonly rigid: SwingData;
  readonly rough: SwingData;
  /** Of the turbulence. */
  readonly seed: number;
  /** No wind, no turbulence: both rigid flights are the same. */
  readonly calm: boolean;
  /** Of the rigid flight in the mean wind. */
  readonly stability: StabilityData;
  readonly overMach: MarginOverMach;
}

/** Rows of the margin and of the angles from the guide's end to the top, closer at the beginning: a dozen and more for every swing. */
const MARGIN_ROWS = 300;
const SWING_ROWS = 900;

/** How long the first swings are looked at [s]. */
const AFTER_EXIT = 2;

/** How far around burnout is looked at: in swings, but no less and no more than so long [s]. */
const AROUND_BURNOUT = { swings: 1.5, least: 0.5, most: 2 };

/** Mach numbers of the margin lie this far apart, up to a little beyond the fastest. */
const MACH_STEP = 0.05;

/** What three flights of one plan tell of its steadiness. */
export interface SteadinessFlights {
  readonly quick: FlightResult;
  readonly rigid: FlightResult;
  readonly rough: FlightResult;
  /** Of the rough flight's turbulence. */
  readonly seed: number;
  /** The margin that is asked for [calibres], null for none; left out: what is usual. */
  readonly leastMargin?: number | null;
}

/**
 * How steadily a plan flies, as plain data.
 *
 * @param flights of one plan
 * @example
 * steadinessData({ quick, rigid, rough: fly(inputs, { model: "rigid", turbulence: 1 }), seed: 1 }).stability.findings; // []
 */
export function steadinessData({ quick, rigid, rough, seed, leastMargin }: SteadinessFlights): SteadinessData {
  const stability = stabilityData(rigid, {
    rows: MARGIN_ROWS,
    ...(leastMargin === undefined ? {} : { least: leastMargin }),
  });
  const { highestMach } = rigid.peaks();
  const steps = Math.ceil(highestMach / MACH_STEP) + 1;
  const machs = Array.from({ length: steps + 1 }, (_, i) => i * MACH_STEP);
  const around = aroundBurnout(stability);
  return {
    quick: swingData(quick, around),
    rigid: swingData(rigid, around),
    rough: swingData(rough, around),
    seed,
    calm: (stability.guideExitAngle?.gust ?? 0) === 0,
    stability,
    overMach: marginOverMach(rigid.model, machs),
  };
}

/** How far around burnout some swings reach [s]. */
function aroundBurnout({ moments }: StabilityData): number {
  const { swings, least, most } = AROUND_BURNOUT;
  const { frequency } = moments.find(({ which }) => which === "burnout") ?? { frequency: 0 };
  return frequency > 0 ? Math.min(most, Math.max(least, (swings * 2 * Math.PI) / frequency)) : most;
}

function swingData(flight: FlightResult, around: number): SwingData {
  const { guideExit, apogee, burnout, handOver } = flight.events;
  const rows = guideExit === null || apogee === null ? [] : anglesOf(flight, guideExit.time, apogee.time);
  return {
    model: flight.options.model,
    ended: flight.ended,
    coast: apogee === null || burnout === null ? null : apogee.time - burnout.time,
    top: apogee && { time: apogee.time, height: apogee.position[2], airspeed: apogee.airspeed },
    handOver: handOver === null || handOver.time >= (apogee?.time ?? 0) ? null : handOver.time,
    time: rows.map(([time]) => time),
    angleOfAttack: rows.map(([, angle]) => angle),
    afterExit: guideExit === null ? null : largestSwing(rows, guideExit.time, guideExit.time + AFTER_EXIT),
    aroundBurnout: burnout === null ? null : largestSwing(rows, burnout.time - around, burnout.time + around),
  };
}

type Angle = readonly [time: number, angle: number];

/** Angles of attack from when the guide lets it turn to the top, as long as it does not fly nose-first. */
function anglesOf({ at, events }: FlightResult, from: number, to: number): Angle[] {
  const end = events.handOver?.time ?? to;
  return Array.from({ length: SWING_ROWS }, (_, i) => from + ((i + 1) / SWING_ROWS) ** 2 * (to - from))
    .filter((time) => time <= end)
    .map(at)
    .filter(({ phase }) => phase !== "guide")
    .map(({ time, angleOfAttack }) => [time, angleOfAttack]);
}

function largestSwing(rows: readonly Angle[], from: number, to: number): LargestSwing | null {
  const within = rows.filter(([time]) => time >= from && time <= to);
  const [first] = within;
  if (first === undefined) return null;
  const [time, angle] = within.reduce((most, row) => (row[1] > most[1] ? row : most), first);
  const late = within.filter(([at]) => at >= to - (to - from) / 5).map(([, each]) => each);
  return { from: Math.max(from, first[0]), to, time, angle, left: late.length === 0 ? 0 : Math.max(...late) };
}
