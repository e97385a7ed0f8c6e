import { burnOf } from "../../motor/burn.js";
import type { ThrustCurve } from "../../motor/motor.js";

/** Half waves over the burn by which a thrust may be of another shape. */
export const thrustWaves = [1, 2] as const;

/**
 * A thrust of another shape at the same total impulse.
 *
 * @param wave half waves over the whole curve
 * @param size of the wave, as a share of the thrust
 */
export function wavedThrust(thrust: ThrustCurve, wave: number, size: number): ThrustCurve {
  const { times } = thrust;
  const length = times[times.length - 1]!;
  const waved = thrust.thrusts.map((f, i) => f * (1 + size * Math.cos((wave * Math.PI * times[i]!) / length)));
  const level = burnOf(thrust).totalImpulse / burnOf({ times, thrusts: waved }).totalImpulse;
  return { ...thrust, thrusts: waved.map((f) => f * level) };
}
