import type { Descent, FlightResult, Kinematics } from "@delaywright/engine";

interface Speeding {
  /** From ignition [s]. */
  readonly time: number;
  /** Over ground [m/s]. */
  readonly speed: number;
}

interface Rising extends Speeding {
  /** Above the pad [m]. */
  readonly height: number;
}

interface Standing extends Rising {
  /** Through the air [m/s]. */
  readonly airspeed: number;
  /** Of the pad [m]. */
  readonly east: number;
  readonly north: number;
}

/** Events and extremes of a flight in SI units; an event that never came is null. */
export interface FlightData {
  readonly ended: FlightResult["ended"];
  readonly liftOff: { readonly time: number } | null;
  readonly guideExit: Speeding | null;
  /** The aft fitting leaves the guide, where it does so later than the forward one. */
  readonly lastFitting: { readonly time: number; readonly angleOfAttack: number } | null;
  readonly burnout: Rising | null;
  readonly handOver: { readonly time: number } | null;
  readonly apogee: Standing | null;
  readonly landing: Standing | null;
  readonly fastest: { readonly time: number; readonly speed: number; readonly mach: number };
  readonly hardest: { readonly time: number; readonly acceleration: number };
}

/** The way down under canopies in SI units. */
export interface DescentData {
  readonly openings: readonly {
    readonly which: Descent["openings"][number]["which"];
    readonly time: number;
    readonly height: number;
    readonly airspeed: number;
    /** Time until the canopy is full [s]. */
    readonly fill: number;
  }[];
  readonly landing: {
    readonly time: number;
    readonly east: number;
    readonly north: number;
    readonly descentSpeed: number;
    /** Downward and sideways together. */
    readonly groundSpeed: number;
    /** [J] */
    readonly energy: number;
  } | null;
}

/** Speed over ground [m/s]. */
export function speedOf({ velocity }: Pick<Kinematics, "velocity">): number {
  return Math.hypot(velocity[0], velocity[1], velocity[2]);
}

const speedAt = (at: Kinematics | null): Speeding | null => at && { time: at.time, speed: speedOf(at) };
const rising = (at: Kinematics): Rising => ({ time: at.time, height: at.position[2], speed: speedOf(at) });
const placeAt = (at: Kinematics | null): Standing | null =>
  at && { ...rising(at), airspeed: at.airspeed, east: at.position[0], north: at.position[1] };

/**
 * The events and extremes of a flight as plain data.
 *
 * @param flight as the engine flew it
 * @returns SI units: time from ignition, height above the pad, speed over ground, airspeed through the air
 * @example
 * flightData(fly(inputs)).apogee?.height; // 614.2
 */
export function flightData({ events, ended, peaks }: FlightResult): FlightData {
  const { fastest, hardest } = peaks();
  return {
    ended,
    liftOff: events.liftOff && { time: events.liftOff.time },
    guideExit: speedAt(events.guideExit),
    lastFitting: events.lastFitting && {
      time: events.lastFitting.time,
      angleOfAttack: events.lastFitting.angleOfAttack,
    },
    burnout: events.burnout && rising(events.burnout),
    handOver: events.handOver && { time: events.handOver.time },
    apogee: placeAt(events.apogee),
    landing: placeAt(events.landing),
    fastest: { time: fastest.time, speed: fastest.speed, mach: fastest.mach },
    hardest: { time: hardest.time, acceleration: hardest.acceleration },
  };
}

/** The way down under canopies as plain data; null where nothing opens. */
export function descentData(descent: Descent | null): DescentData | null {
  return (
    descent && {
      openings: descent.openings.map(({ which, time, height, airspeed, fill }) => ({
        which,
        time,
        height,
        airspeed,
        fill,
      })),
      landing: descent.landing && {
        time: descent.landing.time,
        east: descent.landing.position[0],
        north: descent.landing.position[1],
        descentSpeed: descent.landing.descentSpeed,
        groundSpeed: descent.landing.groundSpeed,
        energy: descent.landing.energy,
      },
    }
  );
}
