import { warmedField } from "../air/at-field.js";
import { DrawnValues } from "../flight/fast/draw.js";
import type { FlightInputs } from "../flight/inputs.js";
import { drawnValues } from "./drawn-values.js";
import { drawNormals, drawSize, flightInputsDrawn } from "./draws.js";
import type { Spread } from "./spread.js";

/**
 * The inputs of one draw, for the plain `fly`: what the fast flight flies from its tables.
 *
 * @param draw number of the draw, ≥ 0
 * @example
 * fly(drawnInputs(inputs, spread, 1, 17));
 */
export function drawnInputs(inputs: FlightInputs, spread: Spread, seed: number, draw: number): FlightInputs {
  return inputsWith(inputs, spread, drawNormals(seed, draw, new Float64Array(drawSize)));
}

/** Standard normal values that one flight takes. */
export const uncertainInputCount = flightInputsDrawn.length;

/**
 * Inputs moved by standard normal values in the order of `flightInputsDrawn`.
 *
 * @param z length at least `uncertainInputCount`
 */
export function inputsWith(inputs: FlightInputs, spread: Spread, z: Float64Array): FlightInputs {
  return inputsOfDraw(inputs, drawnValues(spread, z, new DrawnValues()));
}

/** Inputs moved by what one draw changes. */
export function inputsOfDraw(inputs: FlightInputs, drawn: DrawnValues): FlightInputs {
  const { rocket, motor, guide, wind, air } = inputs;
  const { times, thrusts } = motor.thrust;
  const east = Math.sin(guide.tilt) * Math.sin(guide.toward) + Math.sin(drawn.tiltEast);
  const north = Math.sin(guide.tilt) * Math.cos(guide.toward) + Math.sin(drawn.tiltNorth);
  const cosine = drawn.windSpeed * Math.cos(drawn.windFrom);
  const sine = drawn.windSpeed * Math.sin(drawn.windFrom);
  const turn = (e: number, n: number) => ({
    east: e * cosine + n * sine + drawn.windEast,
    north: n * cosine - e * sine + drawn.windNorth,
  });
  const turned =
    wind.kind === "power"
      ? [turn(wind.east, wind.north)]
      : wind.heights.map((_, i) => turn(wind.east[i]!, wind.north[i]!));
  return {
    ...inputs,
    air: drawn.temperature === 0 ? air : warmedField(air, drawn.temperature),
    wind:
      wind.kind === "power"
        ? { ...wind, ...turned[0]!, exponent: Math.max(0, wind.exponent + drawn.windExponent) }
        : { ...wind, east: turned.map((w) => w.east), north: turned.map((w) => w.north) },
    rocket: {
      ...rocket,
      mass: rocket.mass * drawn.mass,
      balance: rocket.balance + drawn.balance,
      inertia: rocket.inertia * drawn.inertia,
      drag: { ...rocket.drag, scale: rocket.drag.scale * drawn.dragScale },
    },
    motor: {
      ...motor,
      thrust: {
        times: times.map((t) => t * drawn.burnTime),
        thrusts: thrusts.map((f) => (f * drawn.totalImpulse) / drawn.burnTime),
      },
    },
    guide: {
      ...guide,
      tilt: Math.asin(Math.min(Math.hypot(east, north), Math.sqrt(0.99))),
      toward: Math.atan2(east, north),
    },
  };
}
