import {
  drydenScales,
  type FlightResult,
  type Kinematics,
  leastDamping,
  leastMargin,
  mostMargin,
  type StabilityFinding,
  stabilityOverFlight,
} from "@delaywright/engine";

/** When a figure of the stability is told. */
export type StabilityWhich = "guide-exit" | "fastest" | "burnout" | "top";

/** Stability at one moment: SI units. */
export interface StabilityMoment {
  readonly which: StabilityWhich;
  /** From ignition [s]. */
  readonly time: number;
  readonly mach: number;
  /** [kg] */
  readonly mass: number;
  /** Static margin [calibres]. */
  readonly margin: number;
  /** Of the swing, undamped [rad/s]; 0 where the body is not stable. */
  readonly frequency: number;
  /** 0 where the body is not stable. */
  readonly dampingRatio: number;
  /** [rad]; null once the model flies nose-first, without angle. */
  readonly angleOfAttack: number | null;
}

/** Columns of one length, from the guide's end to the top: SI units as in `StabilityMoment`, lengths from the nose tip [m]. */
export interface StabilityColumns {
  readonly time: readonly number[];
  readonly mach: readonly number[];
  readonly mass: readonly number[];
  readonly balance: readonly number[];
  readonly cp: readonly number[];
  readonly margin: readonly number[];
  readonly frequency: readonly number[];
  readonly dampingRatio: readonly number[];
  readonly angleOfAttack: readonly number[];
}

/** Stability of one flight as plain data: SI units. */
export interface StabilityData {
  /** In the order of time; none where it never left the guide. */
  readonly moments: readonly StabilityMoment[];
  /** Between airflow and guide as it leaves [rad], in the mean wind and with a gust [m/s] square across; null where it never left. */
  readonly guideExitAngle: { readonly mean: number; readonly highest: number; readonly gust: number } | null;
  readonly findings: readonly StabilityFinding[];
  /** Least and most margin [calibres] and least damping ratio that are usual; a club may ask for another least margin, or null: none. */
  readonly limits: { readonly leastMargin: number | null; readonly mostMargin: number; readonly leastDamping: number };
  readonly columns: StabilityColumns;
}

/** Height at which the specification of the turbulence reads the wind, 20 ft [m]. */
const READING_HEIGHT = 6.096;

/** A gust counts as high that the turbulence surpasses once in some twenty times: so many of its intensities. */
const HIGH = 2;

/** A high gust across the mean wind as the rocket leaves the guide [m/s]; 0 in a calm. */
function gustOf({ events, model }: FlightResult): number {
  if (events.guideExit === null) return 0;
  const [east, north] = model.windAt(READING_HEIGHT);
  return HIGH * drydenScales(events.guideExit.position[2], Math.hypot(east, north), "8785C").intensities.across;
}

/**
 * Stability of a flight from the guide's end to the top, as plain data.
 *
 * @param options rows of the columns, ≥ 2; the least margin that is asked for [calibres], null for none
 * @source gust: two intensities of MIL-F-8785C (1980), 3.7.3.4, at the day's wind
 * @example
 * stabilityData(fly(inputs, { model: "rigid" })).findings; // []
 */
export function stabilityData(
  flight: FlightResult,
  { rows = 96, least = leastMargin }: { readonly rows?: number; readonly least?: number | null } = {},
): StabilityData {
  const gust = gustOf(flight);
  const { guideExitAngle, findings, ...columns } = stabilityOverFlight(flight, { gust, rows, least });
  return {
    moments: momentsOf(flight, columns),
    guideExitAngle: guideExitAngle && { ...guideExitAngle, gust },
    findings,
    limits: { leastMargin: least, mostMargin, leastDamping },
    columns: {
      time: [...columns.time],
      mach: [...columns.mach],
      mass: [...columns.mass],
      balance: [...columns.balance],
      cp: [...columns.cp],
      margin: [...columns.margin],
      frequency: [...columns.frequency],
      dampingRatio: [...columns.dampingRatio],
      angleOfAttack: [...columns.angleOfAttack],
    },
  };
}

/** So long after the guide's end it has just let the rocket go [s]: on it there is no angle. */
const JUST_OFF = 1e-6;

/** The rocket as it is let go: by the aft fitting where the model holds it as long. */
function justOff({ at, events }: FlightResult, exit: number): Kinematics {
  const soon = at(exit + JUST_OFF);
  return soon.phase === "guide" && events.lastFitting !== null ? at(events.lastFitting.time + JUST_OFF) : soon;
}

type Columns = Omit<ReturnType<typeof stabilityOverFlight>, "guideExitAngle" | "findings">;

function momentsOf(flight: FlightResult, columns: Columns): StabilityMoment[] {
  const { guideExit, burnout, apogee } = flight.events;
  if (columns.time.length === 0) return [];
  const times: readonly (readonly [StabilityWhich, number | undefined])[] = [
    ["guide-exit", guideExit?.time],
    ["fastest", flight.peaks().fastest.time],
    ["burnout", burnout?.time],
    ["top", apogee?.time],
  ];
  return times
    .flatMap(([which, time]) => (time === undefined ? [] : [momentAt(flight, columns, which, time)]))
    .sort((a, b) => a.time - b.time);
}

function momentAt(flight: FlightResult, columns: Columns, which: StabilityWhich, time: number): StabilityMoment {
  const { mach } = flight.at(time);
  const { angleOfAttack, phase } = which === "guide-exit" ? justOff(flight, time) : flight.at(time);
  const { time: times, mass, margin, frequency, dampingRatio } = columns;
  const after = times.findIndex((each) => each >= time);
  const high = after < 0 ? times.length - 1 : after;
  const low = Math.max(0, high - 1);
  const [from = 0, to = 0] = [times[low], times[high]];
  const share = to > from ? Math.min(1, Math.max(0, (time - from) / (to - from))) : 1;
  const between = (column: ArrayLike<number>): number =>
    (column[low] ?? 0) + share * ((column[high] ?? 0) - (column[low] ?? 0));
  return {
    which,
    time,
    mach,
    mass: between(mass),
    margin: between(margin),
    frequency: between(frequency),
    dampingRatio: between(dampingRatio),
    angleOfAttack: phase === "aligned" ? null : angleOfAttack,
  };
}
