import type { DrawnValues } from "../flight/fast/draw.js";
import { type DrawnInput, flightInputsDrawn } from "./draws.js";
import type { Spread } from "./spread.js";

const place = Object.fromEntries(flightInputsDrawn.map((name, i) => [name, i])) as Readonly<Record<DrawnInput, number>>;

/** Nothing varies: one flight decides. */
export const noSpread: Spread = Object.freeze({
  dragScale: 0,
  totalImpulse: 0,
  burnTime: 0,
  mass: 0,
  inertia: 0,
  balance: 0,
  guideTilt: 0,
  windSpeed: 0,
  windFrom: 0,
  windExponent: 0,
  windFloor: 0,
  temperature: 0,
  delay: Object.freeze({ seconds: 0, fraction: 0 }),
  cutDepth: 0,
});

/** Does any input of the flight or the delay vary? */
export function varies(spread: Spread): boolean {
  const { delay, cutDepth, dragWithImpulse: _, ...flight } = spread;
  return [delay.seconds, delay.fraction, cutDepth ?? 0, ...Object.values(flight)].some((sd) => sd > 0);
}

/**
 * Turns standard normal values into what one flight flies with.
 *
 * Factors are exp(σz), additions σz; a correlated thrust follows the drag's z, and its own as far as it is not told by it. A flight whose drawn mass, inertia or burn time would be absurd cannot occur: factors
 * are positive.
 *
 * @param z standard normal values in the order of `flightInputsDrawn`
 * @param out filled and returned
 */
export function drawnValues(spread: Spread, z: Float64Array, out: DrawnValues): DrawnValues {
  out.dragScale = Math.exp(spread.dragScale * z[place.dragScale]!);
  const { dragWithImpulse = 0 } = spread;
  const own = z[place.totalImpulse]!;
  const thrust =
    dragWithImpulse === 0
      ? own
      : dragWithImpulse * z[place.dragScale]! + Math.sqrt(Math.max(0, 1 - dragWithImpulse ** 2)) * own;
  out.totalImpulse = Math.exp(spread.totalImpulse * thrust);
  out.burnTime = Math.exp(spread.burnTime * z[place.burnTime]!);
  out.mass = Math.exp(spread.mass * z[place.mass]!);
  out.inertia = Math.exp(spread.inertia * z[place.inertia]!);
  out.balance = spread.balance * z[place.balance]!;
  out.tiltEast = spread.guideTilt * z[place.guideTiltEast]!;
  out.tiltNorth = spread.guideTilt * z[place.guideTiltNorth]!;
  out.windSpeed = Math.exp(spread.windSpeed * z[place.windSpeed]!);
  out.windFrom = spread.windFrom * z[place.windFrom]!;
  out.windExponent = spread.windExponent * z[place.windExponent]!;
  out.windEast = spread.windFloor * z[place.windFloorEast]!;
  out.windNorth = spread.windFloor * z[place.windFloorNorth]!;
  out.temperature = spread.temperature * z[place.temperature]!;
  return out;
}
