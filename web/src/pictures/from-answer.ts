import type { PictureData, PlanFacts, Told } from "../compute/told.js";
import type { HeightOverTimeProps } from "./height-over-time.js";
import type { LandingProps } from "./landing.js";
import type { MapLandings } from "./map-words.js";
import type { OutlineProps } from "./outline-props.js";
import type { ThrustCurveProps } from "./thrust-curve.js";

/** Landings of the sampled flights as a map draws them. */
export function landingsOf({ sample, ellipses, shares }: PictureData, which: "opened" | "unopened"): MapLandings {
  const { east, north } = sample[which];
  const { half, most } = ellipses[which];
  return { east, north, ellipse50: half, ellipse95: most, ...shares[which] };
}

/** What a map shows of an answer; without `pictures` the field alone. */
export function landingProps(
  { zones, wind }: PlanFacts,
  pictures: PictureData | null,
): Omit<LandingProps, "units" | "state"> {
  return {
    opened: pictures && pictures.delay !== null ? landingsOf(pictures, "opened") : null,
    unopened: pictures && landingsOf(pictures, "unopened"),
    zones,
    wind,
  };
}

/** What the height over time shows of an answer. */
export function heightProps(
  { data, facts }: Told,
  pictures: PictureData,
): Omit<HeightOverTimeProps, "units" | "state"> {
  const { sample, fans, trajectory, unopenedTrajectory, delay } = pictures;
  const { burnout, apogee } = data.flight;
  const opens = delay !== null;
  return {
    climb: opens ? fans.climb : fans.unopened,
    descent: opens ? fans.descent : null,
    openings: opens ? { ...sample.opening, outcome: sample.outcome } : { time: [], height: [], outcome: [] },
    nominal: trajectory,
    unopened: unopenedTrajectory,
    burnout,
    top: apogee && { ...data.apogeeHeight, time: apogee.time },
    ceiling: facts.ceiling,
    floor: facts.limits.openingHeight,
  };
}

/** What the outline shows of an answer. */
export function outlineProps({ data, facts }: Told): Omit<OutlineProps, "units"> {
  return {
    outline: facts.outline,
    length: facts.length,
    diameter: facts.diameter,
    motorAftAt: null,
    balanceWithoutMotor: facts.balanceWithoutMotor,
    balanceReady: facts.readyBalance,
    cp: data.stability.cp,
  };
}

/** What the thrust curve shows of an answer. */
export function thrustProps({
  thrust,
  averageThrust,
  burnEnd,
  totalImpulse,
}: PlanFacts): Omit<ThrustCurveProps, "units"> {
  return { ...thrust, averageThrust, burnEnd, totalImpulse };
}
