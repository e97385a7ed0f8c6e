import type { Descent, FlightResult, Kinematics } from "@delaywright/engine";

/** Speed over ground [m/s]. */
export function speedOf({ velocity }: Kinematics): number {
  return Math.hypot(velocity[0], velocity[1], velocity[2]);
}

const speedAt = (at: Kinematics | null) => at && { time: at.time, speed: speedOf(at) };
const heightAt = (at: Kinematics | null) => at && { time: at.time, height: at.position[2], speed: speedOf(at) };
const placeAt = (at: Kinematics | null) =>
  at && { ...heightAt(at), airspeed: at.airspeed, east: at.position[0], north: at.position[1] };

/** Events and extremes of a flight; an event that never came is null. */
export function flightJson({ events, ended, peaks }: FlightResult) {
  const { fastest, hardest } = peaks();
  return {
    ended,
    liftOff: events.liftOff && { time: events.liftOff.time },
    guideExit: speedAt(events.guideExit),
    burnout: heightAt(events.burnout),
    handOver: events.handOver && { time: events.handOver.time },
    apogee: placeAt(events.apogee),
    landing: placeAt(events.landing),
    fastest: { time: fastest.time, speed: fastest.speed, mach: fastest.mach },
    hardest: { time: hardest.time, acceleration: hardest.acceleration },
  };
}

/** The way down under canopies. */
export function descentJson(descent: Descent | null) {
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
